using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One visit of the car to the shop.</summary>
/// <param name="Number">The entry it began with; 0 for a car that was here before visits were kept.</param>
/// <param name="Arrived">How it came in; null for a car that was here before visits were kept.</param>
public sealed record VisitBook(long Number, DateTime? At, PersonId? Person, Arrived? Arrived)
{
    /// <summary>The entry it ended with; null while the car is here.</summary>
    public Recorded? End { get; init; }

    /// <summary>How it left; null while the car is here.</summary>
    public Left? Left => End?.Entry as Left;

    /// <summary>True while the car is here.</summary>
    public bool IsOpen => End is null;

    /// <summary>True for an entry of the logbook that was made during this visit.</summary>
    public bool Holds(long entry) => entry >= Number && entry <= (End?.Number ?? long.MaxValue);
}

/// <summary>A move, or a departure, that happened though its gate said no.</summary>
public sealed record MoveBook(long Number, DateTime At, PersonId Person, Entry Fact, IReadOnlyList<SpokenAgainst> Against);

/// <summary>A new interval that the lead gave a re-torque.</summary>
/// <param name="Pull">The final pull it belongs to.</param>
/// <param name="Drive">The release that the re-torque is reckoned from.</param>
public sealed record IntervalBook(long Number, DateTime At, long Pull, long Drive, ReTorqueExtended Fact);

// Visits, moves, and the odometer as it was last read.
public sealed partial record CarState
{
    /// <summary>The car's visits, oldest first.</summary>
    public ImmutableList<VisitBook> Visits { get; init; } = [];

    /// <summary>The newest visit; null for a car without any: one that was in the book before visits were kept counts as here.</summary>
    public VisitBook? Visit => Visits.IsEmpty ? null : Visits[^1];

    /// <summary>Moves and departures against the gate, after which nobody has looked the car over yet.</summary>
    public ImmutableList<MoveBook> ToLookOver { get; init; } = [];

    /// <summary>New intervals by position; each is good for the pull and the first drive it was given for.</summary>
    public ImmutableDictionary<JointPosition, IntervalBook> Intervals { get; init; } = ImmutableDictionary<JointPosition, IntervalBook>.Empty;

    /// <summary>The odometer as it was last read, in kilometres; null when it never was.</summary>
    public decimal? Odometer { get; init; }

    private CarState Read(decimal? km) => km is null ? this : this with { Odometer = km };

    private CarState WithArrival(Recorded recorded, Arrived fact) => Read(fact.Odometer?.Km) with
    {
        Visits = Visits.Add(new VisitBook(recorded.Number, recorded.At, recorded.Person, fact)),
        AsFound = ImmutableDictionary<string, AsFoundBook>.Empty,
        Unseen = ImmutableDictionary<string, long>.Empty,
        Photos = [],
    };

    private CarState WithDeparture(Recorded recorded, Left fact)
    {
        var visits = Visits.IsEmpty ? Visits.Add(new VisitBook(0, null, null, null)) : Visits;
        return Read(fact.Odometer?.Km).WithMove(recorded, fact.Against) with { Visits = visits.SetItem(visits.Count - 1, visits[^1] with { End = recorded }) };
    }

    // What happened against the gate is looked over before anybody drives: no release stands until then.
    private CarState WithMove(Recorded recorded, IReadOnlyList<SpokenAgainst> against) => against.Count == 0
        ? this
        : (this with { ToLookOver = ToLookOver.Add(new MoveBook(recorded.Number, recorded.At, recorded.Person, recorded.Entry, against)) }).SuspendReleases(recorded.Number);

    private CarState WithLook(LookedOver fact) => this with { ToLookOver = ToLookOver.RemoveAll(move => fact.Moves.Contains(move.Number)) };

    private CarState WithInterval(Recorded recorded, ReTorqueExtended fact) => Read(fact.Odometer.Km) with
    {
        Intervals = Intervals.SetItems(
            from position in fact.Positions
            let book = Of(position)
            where book.Last is not null && this.FirstDrive(book) is not null
            select KeyValuePair.Create(position, new IntervalBook(recorded.Number, recorded.At, book.Last!.Number, this.FirstDrive(book)!.Number, fact))),
        Summaries = Superseded(recorded.Number),
    };
}
