using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Releases;

/// <summary>Jobs that were put on a car and not begun: no joint speaks for them, and whoever releases the car is told.</summary>
internal static class AskedFor
{
    /// <summary>For example "P4 Brakes front is not begun".</summary>
    public static IReadOnlyList<string> NotBegun(CarReading reading) =>
        [.. reading.State.RunningJobs.Where(job => !job.Begun).Select(job => $"{job.Fact.Procedure} {reading.Placed(job).Procedure.Title} is not begun")];
}
