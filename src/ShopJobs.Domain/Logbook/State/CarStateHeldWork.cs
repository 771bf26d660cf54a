using System.Collections.Immutable;

namespace ShopJobs.Domain.Logbook;

// Holds on steps, results and lots, and what their decisions do.
public sealed partial record CarState
{
    /// <summary>Holds on steps, results and lots by number, decided ones included.</summary>
    public ImmutableDictionary<long, WorkHold> WorkHolds { get; init; } = ImmutableDictionary<long, WorkHold>.Empty;

    private CarState WithWorkHold(Recorded recorded, WorkHeld fact)
    {
        var next = this with { WorkHolds = WorkHolds.Add(recorded.Number, new WorkHold(recorded.Number, recorded.At, recorded.Person, fact)) };
        if (fact.Lot is not { } lot)
        {
            return next.SuspendReleases(recorded.Number);
        }

        var fitted = next.FittedFrom(lot).Select(book => book.Position).ToList();
        return fitted.Count == 0 ? next : next.WithHolds(fitted, new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.LotHeld));
    }

    private CarState WithWorkDecision(Recorded recorded, WorkDecided fact)
    {
        var hold = WorkHolds[fact.Hold];
        var made = new DecisionMade(recorded.Number, recorded.At, recorded.Person, fact.Disposition);
        var next = this with
        {
            WorkHolds = WorkHolds.SetItem(fact.Hold, hold with { Decision = made }),
            Summaries = Superseded(recorded.Number),
        };
        return hold.Fact switch
        {
            { Lot: { } lot } => next.WithLotDecided(recorded, hold, lot, fact.Disposition),
            _ when fact.Disposition == Disposition.UseAsIs => next,
            { Job: { } job, Step: { } step } => next.WithStepRedone(recorded.Number, job, step),
            { Result: { } result } => next.WithResultRedone(recorded.Number, result),
            _ => next,
        };
    }

    // What was signed falls; its job runs until it is signed again.
    private CarState WithStepRedone(long by, JobId job, string step)
    {
        var next = Jobs.TryGetValue(job, out var book) && book.Finished.TryGetValue(step, out var finished) ? Fell(by, finished.Number) : this;
        return book is not null && book.SignOffs.TryGetValue(step, out var sign)
            ? next.Fell(by, sign.Number).RunAgain(by).SuspendReleases(by)
            : next;
    }

    private CarState WithResultRedone(long by, long number) =>
        Results.Values.FirstOrDefault(result => result.Number == number) is { } stands
            ? Undo(by, [Parse(stands.Fact.Name)]).RunAgain(by).SuspendReleases(by)
            : this;

    // Each fastener that carries the lot is held by the same entry: used as is they are free, else each gets new hardware.
    private CarState WithLotDecided(Recorded recorded, WorkHold decided, string lot, Disposition disposition)
    {
        var next = this;
        foreach (var book in Positions.Values.Where(book => book.Holds.Exists(hold => hold.Number == decided.Number && hold.Decision is null)).ToList())
        {
            var hold = book.Holds.Find(hold => hold.Number == decided.Number && hold.Decision is null)!;
            var gone = disposition == Disposition.UseAsIs || !HeldWork.IsSameLot(book.Lot, lot);
            next = next.Put(book with
            {
                NamedBy = recorded.Number,
                Holds = gone || book.OpenedBy > hold.Number || book.IsBare ? book.Holds.Remove(hold) : book.Holds.Replace(hold, hold with { Decision = disposition }),
                NewHardwareSince = gone ? book.NewHardwareSince : Math.Max(book.NewHardwareSince, recorded.Number),
                LastDecision = new DecisionMade(recorded.Number, recorded.At, recorded.Person, disposition),
            });
        }

        return next;
    }
}
