using System.Collections.Immutable;

namespace ShopJobs.Domain.Logbook;

// What undoes a condition that was said, and new hardware that was reported, of the wrong corner. Both only take assurance away.
public sealed partial record CarState
{
    /// <summary>The positions of a report of new hardware, as they stood before it.</summary>
    public ImmutableDictionary<long, IReadOnlyList<PositionBook>> Fittings { get; init; } = ImmutableDictionary<long, IReadOnlyList<PositionBook>>.Empty;

    /// <summary>True where a second person's word makes a difference: a figure restated, a pull or an opening that never was.</summary>
    public bool GainsByASecond(CorrectionBook correction)
    {
        ArgumentNullException.ThrowIfNull(correction);
        return correction.Fact.Restated is not null || Correctables[correction.Fact.Target].Entry is TorqueRecorded or Opened or DeclaredFromPaper;
    }

    // It was not so: what is said next counts, and the pulls that rested on it fall.
    private CarState Unsay(long by, long number)
    {
        var next = this with { Conditions = Conditions.RemoveRange(Conditions.Where(said => said.Value.Number == number).Select(said => said.Key)) };
        return Correctables.All.Where(one => one.Value.Entry is TorqueRecorded { Conditions: { } conditions } && conditions.Contains(number))
            .Aggregate(next, (state, pull) => state.TakeBack(by, pull.Key));
    }

    // What is on it is not new, as it was not before; what was run down on it since is no longer valid, nor what was pulled on that.
    private CarState Unfit(long by, long number, FittedNew fact)
    {
        if (!Fittings.TryGetValue(number, out var fitted))
        {
            return this;
        }

        var before = fitted.ToDictionary(book => book.Position);
        var hands = fact.Positions.Select(Of).Where(book => book.Cycle == before[book.Position].Cycle && book.HandTightBy > number)
            .Select(book => book.HandTightBy).Distinct().ToList();
        var next = Put(before.Keys, book => Without(book, before[book.Position], number)) with
        {
            Fittings = Fittings.ToImmutableDictionary(
                other => other.Key,
                other => (IReadOnlyList<PositionBook>)[.. other.Value.Select(book => before.TryGetValue(book.Position, out var was) ? Without(book, was, number) : book)]),
        };
        return hands.Aggregate(next, (state, hand) => state.TakeBack(by, hand).Untighten(hand, (HandTightened)Correctables[hand].Entry));
    }

    private static PositionBook Without(PositionBook book, PositionBook before, long number) => book with
    {
        Fitting = book is { Fitting: Fitting.NewHardware } && book.FittedNewBy == number && book.Cycle == before.Cycle ? before.Fitting : book.Fitting,
        FittedNewBy = book.FittedNewBy == number ? before.FittedNewBy : book.FittedNewBy,
        On = book.On == number ? before.On : book.On,
        InForce = book.InForceBy == number ? before.InForce ?? (book.Pulls.IsEmpty ? null : book.Pulls[0].Fact.Job) : book.InForce,
        InForceBy = book.InForceBy == number ? before.InForceBy : book.InForceBy,
    };
}
