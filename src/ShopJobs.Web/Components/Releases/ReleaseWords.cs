using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Releases;

/// <summary>How the shop says what a car is released to.</summary>
public static class ReleaseWords
{
    /// <summary>"to move", "to road", "to track".</summary>
    public static string Words(this ReleaseKind kind) => kind switch
    {
        ReleaseKind.Move => "to move",
        ReleaseKind.RoadTest => "to a road test",
        ReleaseKind.Road => "to road",
        ReleaseKind.Track => "to track",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a release."),
    };
}
