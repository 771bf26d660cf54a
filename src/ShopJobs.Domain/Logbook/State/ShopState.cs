using System.Collections.Immutable;

namespace ShopJobs.Domain.Logbook;

/// <summary>One step of the clock: it went back or jumped.</summary>
/// <param name="Number">Entry that says so.</param>
/// <param name="At">Instant of that entry.</param>
/// <param name="Was">What the clock should have shown.</param>
/// <param name="Showed">What it showed instead.</param>
/// <param name="SignedBy">Entry by which the lead set the time again; 0 while he has not.</param>
public sealed record ClockStep(long Number, DateTime At, DateTime Was, DateTime Showed, long SignedBy = 0)
{
    /// <summary>By how much; below zero where it went back.</summary>
    public TimeSpan By => Showed - Was;

    /// <summary>True while the lead has not set the time again.</summary>
    public bool IsOpen => SignedBy == 0;

    /// <summary>True when the entry says this step.</summary>
    public bool Is(ClockStepped fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return Was == fact.Was && Showed == fact.Showed;
    }
}

/// <summary>
/// Everything the shop's own logbook says: how its clock went. An entry of any logbook keeps the number of the newest entry here
/// (<see cref="Entry.Clock"/>): what came before a step of the clock and what came after it are told apart by number, not by instant.
/// </summary>
public sealed record ShopState
{
    /// <summary>A shop whose clock nobody touched.</summary>
    public static readonly ShopState Empty = new();

    private ShopState()
    {
    }

    /// <summary>Number of the newest entry.</summary>
    public long Number { get; init; }

    /// <summary>Every step of the clock, oldest first.</summary>
    public ImmutableList<ClockStep> Steps { get; init; } = [];

    /// <summary>True from a step of the clock until the lead signs the time.</summary>
    public bool ClockInDoubt => Steps.Exists(step => step.IsOpen);

    /// <summary>When something began, by the clock as it goes now.</summary>
    /// <param name="at">Instant of its entry.</param>
    public DateTime OnThisClock(DateTime at, Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return at - (entry.Ahead ?? TimeSpan.Zero) + Moved(Since(entry));
    }

    /// <summary>
    /// True when so much time has certainly passed since an entry. What began in a doubt of the clock, or was not over before it, waits
    /// until the lead has signed the time.
    /// </summary>
    /// <param name="shows">What the clock shows.</param>
    public bool HasPassed(TimeSpan length, DateTime at, Entry entry, DateTime shows)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return Steps.Find(step => step.IsOpen) is { } doubt
            ? (entry.Clock ?? 0) < doubt.Number
                && at - (entry.Ahead ?? TimeSpan.Zero) + Moved(Since(entry).TakeWhile(step => step != doubt)) + length <= doubt.Was
            : shows - OnThisClock(at, entry) >= length;
    }

    /// <summary>True when so much time may have passed since an entry: of what came before a step of the clock nobody knows until the lead has signed the time.</summary>
    /// <param name="shows">What the clock shows.</param>
    public bool MayHavePassed(TimeSpan length, DateTime at, Entry entry, DateTime shows) =>
        Since(entry).Any(step => step.IsOpen) || shows - OnThisClock(at, entry) > length;

    /// <summary>The latest day that it may be: while the clock stands behind the newest entry, days may pass that it does not count.</summary>
    public DateOnly Latest(DateOnly today) => today.AddDays((int)Math.Ceiling(
        Steps.Where(step => step.IsOpen && step.By < TimeSpan.Zero).Sum(step => -step.By.TotalDays)));

    /// <summary>Pure and total over the known entries: the state after one more entry.</summary>
    public ShopState Apply(Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        var next = recorded.Entry switch
        {
            ClockStepped fact => this with { Steps = Steps.Add(new ClockStep(recorded.Number, recorded.At, fact.Was, fact.Showed)) },
            ClockSet fact => this with { Steps = [.. Steps.Select(step => fact.Steps.Contains(step.Number) ? step with { SignedBy = recorded.Number } : step)] },
            _ => throw new ArgumentException($"{recorded.Entry.GetType().Name} is not an entry of the shop's logbook.", nameof(recorded)),
        };
        return next with { Number = recorded.Number };
    }

    /// <summary>The entry as it is written now: it keeps how the clock went.</summary>
    /// <param name="ahead">By how much its instant is ahead of what the clock shows.</param>
    public Entry Stamped(Entry entry, TimeSpan ahead)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return Number == 0 ? entry : entry with { Clock = Number, Ahead = ahead > TimeSpan.Zero ? ahead : null };
    }

    private IEnumerable<ClockStep> Since(Entry entry) => Steps.Where(step => step.Number > (entry.Clock ?? 0));

    private static TimeSpan Moved(IEnumerable<ClockStep> steps) => steps.Aggregate(TimeSpan.Zero, (sum, step) => sum + step.By);
}
