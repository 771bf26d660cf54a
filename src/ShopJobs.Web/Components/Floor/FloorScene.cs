using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Floor;

/// <summary>Somebody on a car: on a job, or on one step of it.</summary>
public sealed record OnIt(PersonId Person, string Name, string Initials);

/// <summary>One car as it lies in the shop.</summary>
/// <param name="People">Who is on it.</param>
public sealed record FloorCar(Car Car, CarReading Reading, CarGlance Glance, IReadOnlyList<OnIt> People)
{
    /// <summary>True while it is here. Cars that left are shown where they are held or due, and not as standing in the shop.</summary>
    public bool IsHere { get; init; } = true;

    /// <summary>Its jobs that rest, were taken back and are not closed, each in words.</summary>
    public IReadOnlyList<string> Resting { get; init; } = [];

    /// <summary>The road or track release that is valid or only lapsed, the newest; null when there is none.</summary>
    public ReleaseStanding? Out => Driven.Where(standing => standing.Kind is ReleaseStandingKind.Stands or ReleaseStandingKind.Lapsed)
        .MaxBy(standing => standing.Release!.Number);

    /// <summary>The road or track release that is suspended, the newest; null when none is.</summary>
    public ReleaseStanding? Suspended => Driven.Where(standing => standing.Kind == ReleaseStandingKind.Suspended)
        .MaxBy(standing => standing.Release!.Number);

    /// <summary>The road test that it is out on, and not back from; null when it is on none.</summary>
    public ReleaseBook? RoadTest => Reading.State.RoadTest;

    /// <summary>True while nothing goes on: nothing on it was touched, no job runs, nobody is on it, nothing was released and it may be moved.</summary>
    public bool IsQuiet => Glance is { MayBeMoved: true, Next: null, Releases.Count: 0 } && Glance.Counts.Keys.All(kind => kind == GlanceCount.AsFound)
        && People.Count == 0 && !Reading.State.RunningJobs.Any() && Reading.State.ToLookOver.IsEmpty && Reading.Unreadable is null;

    private IEnumerable<ReleaseStanding> Driven =>
        Glance.Releases.Where(release => release.Key is Domain.Procedures.ReleaseKind.Road or Domain.Procedures.ReleaseKind.Track).Select(release => release.Value);
}

/// <summary>The shop at one moment.</summary>
/// <param name="Tools">The torque tools, those that need care first.</param>
/// <param name="At">When it was read, UTC.</param>
/// <param name="Today">The shop's date then.</param>
public sealed record FloorScene(IReadOnlyList<FloorCar> Cars, IReadOnlyList<ToolState> Tools, DateTime At, DateOnly Today)
{
    /// <summary>The places of the shop.</summary>
    public ShopPlaces Places { get; init; } = ShopPlaces.None;

    /// <summary>How each torque tool stands, in the order of <see cref="Tools"/>.</summary>
    public IReadOnlyList<ToolStanding> Standings => [.. Tools.Select(tool => tool.StandingOn(Today, Cars is [var car, ..] && tool.Tool!.Id is { } id ? car.Reading.Now.PullsWith(id) : 0))];
}
