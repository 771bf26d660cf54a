using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Specification.Closing;

/// <summary>How much of the closing check somebody has seen.</summary>
internal enum Seen
{
    All,
    AllButOne,
    Nothing,
}

/// <summary>A car against which nothing else speaks, that somebody asks to release.</summary>
/// <param name="Kind">What was asked last.</param>
/// <param name="Seen">What was seen of it before.</param>
/// <param name="Granted">It was granted.</param>
internal readonly record struct ClosedCar(ReleaseKind Kind, Seen Seen, bool Granted)
{
    public static readonly (ReleaseKind Kind, Seen Seen)[] Asked =
        [.. from kind in ReleaseKinds.All from seen in Enum.GetValues<Seen>() select (kind, seen)];

    public bool IsDriven => Kind != ReleaseKind.Move;

    public static ClosedCar Ask((ReleaseKind Kind, Seen Seen) asked) => new(asked.Kind, asked.Seen, asked.Kind == ReleaseKind.Move || asked.Seen == Seen.All);
}
