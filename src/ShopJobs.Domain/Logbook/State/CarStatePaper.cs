namespace ShopJobs.Domain.Logbook;

// What was declared from paper changes no torque, and takes assurance away.
public sealed partial record CarState
{
    private CarState WithDeclared(Recorded recorded, DeclaredFromPaper fact)
    {
        IReadOnlyList<PersonId> workers = fact.DoneBy is { } doer ? [recorded.Person, doer] : [recorded.Person];
        var untouched = fact.Positions.Where(position => fact.Turned == true || Of(position).IsAsFound).ToList();
        var next = Begin(fact.Job).Remember(recorded).Put(fact.Positions, book => book with
        {
            On = recorded.Number,
            NamedBy = recorded.Number,
            DeclaredBy = fact.Stage > 0 ? recorded.Number : book.DeclaredBy,
            Workers = book.Workers.Union(workers),
        }).WitnessesWhoWorked(recorded.Number, fact.Positions, workers).SuspendReleases(recorded.Number);

        // Neither as found nor at torque, whatever the book said before; and no angle is turned twice.
        return untouched.Count > 0
            ? next.WithHolds(untouched, new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.DeclaredFromPaper))
            : next;
    }

    // A second person has said that nothing of it was done.
    private CarState NeverDone(long number) => Put(
        Positions.Values.Where(book => book.DeclaredBy == number).Select(book => book.Position).ToList(), book => book with { DeclaredBy = 0 });
}
