using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Who acts, when, and what is known beside the car's own logbook.</summary>
/// <param name="Person">The actor: for a signature, the verified signer.</param>
/// <param name="Rights">Rights of the actor on this day.</param>
/// <param name="At">The server's instant, UTC.</param>
/// <param name="Today">The shop's date at that instant.</param>
/// <param name="Register">The shop's joint register, as it is for this car where <see cref="For"/> was asked.</param>
/// <param name="Placed">The placed procedure of a job.</param>
/// <param name="Tool">The state of a tool; <see cref="ToolState.Empty"/> when unknown.</param>
public sealed record Circumstances(
    PersonId Person,
    IReadOnlySet<Right> Rights,
    DateTime At,
    DateOnly Today,
    JointRegister Register,
    Func<JobBook, PlacedProcedure> Placed,
    Func<ToolId, ToolState> Tool)
{
    /// <summary>An instant (UTC) as the shop's clock shows it; UTC itself where no shop is known. For words, and for the day of what was written while the clock was wrong.</summary>
    public Func<DateTime, DateTime> OnTheWall { get; init; } = static at => at;

    /// <summary>What a person is called now; "Somebody" where no names are at hand. For words.</summary>
    public Func<PersonId, string> PersonName { get; init; } = static _ => "Somebody";

    /// <summary>How the shop's clock went: what runs out by time asks it.</summary>
    public ShopState Shop { get; init; } = ShopState.Empty;

    /// <summary>By how much <see cref="At"/> is ahead of what the clock shows; zero where it is what the clock shows.</summary>
    public TimeSpan Ahead { get; init; }

    /// <summary>What the clock shows, UTC.</summary>
    public DateTime Shows => At - Ahead;

    /// <summary>Pulls made with a tool since its last good calibration, on every car; none where nobody counts.</summary>
    public Func<ToolId, int> PullsWith { get; init; } = static _ => 0;

    /// <summary>True when the tool has made as many pulls since its calibration as it may.</summary>
    public bool IsAtItsLimit(ToolState tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return tool is { Tool: { Id: { } id } entered, OutOfUseBy: 0 } && PullsWith(id) >= entered.CycleLimit;
    }

    /// <summary>The session of the tablet that is acted or looked at from; null where there is none.</summary>
    public SessionId? Session { get; init; }

    /// <summary>What the car's odometer counts in.</summary>
    public DistanceUnit Distance { get; init; }

    /// <summary>The places of the shop.</summary>
    public ShopPlaces Places { get; init; } = ShopPlaces.None;

    /// <summary>By the key of a place, the name of another car that stands there; null where none does.</summary>
    public Func<string, string?> StandsAt { get; init; } = static _ => null;

    /// <summary>People for whom the actor is no second person: they enrolled him, gave him his right or reset his PIN, and no third has confirmed him.</summary>
    public IReadOnlySet<PersonId> TiedTo { get; init; } = System.Collections.Frozen.FrozenSet<PersonId>.Empty;

    /// <summary>The name of another car that takes up a place; null where there is room. A lift holds one car, the other places several.</summary>
    public string? TakenBy(string place) => Places.Find(place)?.Kind == PlaceKind.Lift ? StandsAt(place) : null;

    /// <summary>True when the tool's calibration is in date, whatever the day is by a clock that may be right.</summary>
    public bool IsInDate(ToolState tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return tool.IsCalibratedOn(Today) && tool.IsCalibratedOn(Shop.Latest(Today));
    }

    /// <summary>The day that the clock shows; <see cref="Today"/> is never before that of the newest entry.</summary>
    public DateOnly DayShown => Ahead == TimeSpan.Zero ? Today : DateOnly.FromDateTime(OnTheWall(Shows));

    /// <summary>The shop's day of a release, by the clock as it goes now: days are counted from it to <see cref="DayShown"/>.</summary>
    public DateOnly DayOf(ReleaseBook release)
    {
        ArgumentNullException.ThrowIfNull(release);
        var at = Shop.OnThisClock(release.At, release.Fact);
        return at == release.At ? release.Day : DateOnly.FromDateTime(OnTheWall(at));
    }

    /// <summary>The shop's day on which a new interval was given, by the clock as it goes now.</summary>
    public DateOnly DayOf(IntervalBook interval)
    {
        ArgumentNullException.ThrowIfNull(interval);
        var at = Shop.OnThisClock(interval.At, interval.Fact);
        return at == interval.At ? interval.Fact.On : DateOnly.FromDateTime(OnTheWall(at));
    }

    /// <summary>The day on which a release lapses, by the clock as it goes now; null where it does not.</summary>
    public DateOnly? LapsesOn(ReleaseBook release)
    {
        ArgumentNullException.ThrowIfNull(release);
        var shown = release.At - (release.Fact.Ahead ?? TimeSpan.Zero);
        return Shop.OnThisClock(release.At, release.Fact) is var at && at == shown
            ? release.Fact.LapsesOn
            : release.Fact.LapsesOn?.AddDays(DateOnly.FromDateTime(OnTheWall(at)).DayNumber - DateOnly.FromDateTime(OnTheWall(shown)).DayNumber);
    }

    /// <summary>The same with the register as it is for this car.</summary>
    public Circumstances For(CarState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var own = Register.For(state.Joints);
        return ReferenceEquals(own, Register) ? this : this with { Register = own };
    }

    /// <summary>A kind of joint: of the register in force, or of the one that a running job was started with. Null where neither has it.</summary>
    public JointKind? KindOf(CarState state, string key)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Register.Kinds.GetValueOrDefault(key)
            ?? state.RunningJobs.Select(job => Placed(job).Register.Kinds.GetValueOrDefault(key)).FirstOrDefault(kind => kind is not null);
    }

    /// <summary>True where a report was made in another session than the one it comes from now; false where it names none.</summary>
    public bool IsEarlier(SessionId? madeIn) => madeIn is { } made && made != Session;

    /// <summary>True when the actor has the right.</summary>
    public bool May(Right right) => Rights.Contains(right);
}
