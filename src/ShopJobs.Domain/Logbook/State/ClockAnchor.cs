using System.Collections.Immutable;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// What the clock showed when it was last looked at, beside a count of time that nobody can set: where they part, the clock was set.
/// A step of the clock while the program is off can't be seen, but for one that puts it behind the newest entry.
/// </summary>
/// <param name="Showed">What the clock showed, UTC.</param>
/// <param name="Ran">The count of time at that moment.</param>
/// <param name="Said">Newest entry of the shop's logbook then.</param>
public sealed record ClockAnchor(DateTime Showed, TimeSpan Ran, long Said)
{
    /// <summary>A clock off by less than this was not set: it drifts, or is drawn slowly to the right time (our own choice).</summary>
    public static readonly TimeSpan Tolerance = TimeSpan.FromMinutes(2);

    /// <summary>Every step of the clock seen from here, said by the shop's logbook or not yet.</summary>
    public ImmutableList<ClockStepped> Seen { get; init; } = [];

    /// <summary>The first look of a program: the newest entry is all that is known.</summary>
    /// <param name="newest">Instant of the newest entry in any logbook; null in an empty shop.</param>
    /// <param name="shows">What the clock shows.</param>
    /// <param name="ran">The count of time now.</param>
    public static ClockAnchor First(ShopState shop, DateTime? newest, DateTime shows, TimeSpan ran)
    {
        ArgumentNullException.ThrowIfNull(shop);
        // Entries made while the clock was behind stand at the instant before it went back; what it showed then is in the step.
        var known = shop.Steps.FindLast(step => step.IsOpen) is { } back && back.By < TimeSpan.Zero && newest <= back.At ? back.Showed : newest;
        return new ClockAnchor(known > shows ? known.Value : shows, ran, shop.Number);
    }

    /// <summary>Looks at the clock.</summary>
    /// <param name="shows">What it shows.</param>
    /// <param name="ran">The count of time now.</param>
    public ClockAnchor Look(ShopState shop, DateTime shows, TimeSpan ran)
    {
        ArgumentNullException.ThrowIfNull(shop);
        // Steps that another program on this shop's book saw are no news here.
        var expected = shop.Steps.Where(step => step.Number > Said && !Seen.Exists(step.Is)).Aggregate(Showed + (ran - Ran), (at, step) => at + step.By);
        var next = this with { Showed = shows, Ran = ran, Said = Math.Max(Said, shop.Number) };
        return (shows - expected).Duration() < Tolerance ? next : next with { Seen = Seen.Add(new ClockStepped(expected, shows)) };
    }

    /// <summary>The steps seen that the shop's logbook does not say yet, oldest first.</summary>
    public IReadOnlyList<ClockStepped> Unsaid(ShopState shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var said = shop.Steps.Select(step => new ClockStepped(step.Was, step.Showed)).ToList();
        return Seen.IsEmpty ? [] : [.. Seen.Where(seen => !said.Remove(seen))];
    }
}
