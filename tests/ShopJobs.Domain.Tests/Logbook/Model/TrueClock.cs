using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>
/// What really happened to the shop's clock, beside the true time of every line. The rule speaks of what has certainly passed; here that is known.
/// </summary>
/// <param name="Off">By how much it is wrong now.</param>
/// <param name="Newest">What the clock would have to show to be past the newest entry.</param>
/// <param name="Doubt">Since when it is in doubt: the true time; null while it is trusted.</param>
internal sealed record TrueClock(TimeSpan Off, DateTime Newest, DateTime? Doubt)
{
    public static readonly TrueClock Trusted = new(TimeSpan.Zero, default, null);

    /// <summary>Newest line of the car when the doubt began.</summary>
    private long DoubtAfter { get; init; }

    /// <summary>Newest line of the car when the clock was last set.</summary>
    private long SetAfter { get; init; }

    /// <summary>How far it was set back since the doubt began.</summary>
    private TimeSpan Back { get; init; }

    public TrueClock Set(TimeSpan by, DateTime at, long newest) => by == TimeSpan.Zero ? this : this with
    {
        Off = Off + by,
        Doubt = Doubt ?? at,
        DoubtAfter = Doubt is null ? newest : DoubtAfter,
        SetAfter = newest,
        Back = by < TimeSpan.Zero ? Back - by : Back,
    };

    public HoldReason? Against(IReadOnlySet<Right> rights) =>
        !rights.Contains(ShopJobs.Domain.Logbook.Right.Lead) ? HoldReason.NoRight : Doubt is null ? HoldReason.ClockNotInDoubt : null;

    /// <summary>The lead has set it right and signed: his own entry is the newest now.</summary>
    public TrueClock Signed(DateTime at) => this with { Doubt = null, Back = default, Newest = at };

    public TrueClock Written(DateTime at) => this with { Newest = at + Off > Newest ? at + Off : Newest };

    /// <summary>The day as it is written: what the clock shows, never before the newest entry.</summary>
    public DateOnly Day(DateTime at) => DateOnly.FromDateTime(at + Off > Newest ? at + Off : Newest);

    /// <summary>What began in a doubt, or was not over before it, waits for the lead's signature.</summary>
    public bool HasPassed(Line since, TimeSpan length, DateTime at) => Doubt is { } doubt
        ? since.Number <= DoubtAfter && doubt - since.At >= length
        : at - since.At >= length;

    /// <summary>Of what came before the clock was set nobody knows its age.</summary>
    public bool MayHavePassed(Line since, TimeSpan length, DateTime at) => (Doubt is not null && since.Number <= SetAfter) || at - since.At > length;

    public DateOnly Latest(DateOnly day) => day.AddDays((int)Math.Ceiling(Back.TotalDays));
}
