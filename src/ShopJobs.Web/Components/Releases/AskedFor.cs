using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Releases;

/// <summary>Jobs that were put on a car and not begun: no joint speaks for them, and whoever releases the car is told.</summary>
internal static class AskedFor
{
    /// <summary>All of them in one short line, for example "Not begun: P4, P5"; null where there is none.</summary>
    public static string? InShort(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var codes = reading.State.RunningJobs.Where(job => !job.Begun).Select(job => job.Fact.Procedure).Distinct().ToList();
        return codes.Count == 0 ? null : $"Not begun: {string.Join(", ", codes)}";
    }

    /// <summary>For example "P4 Brakes front is not begun".</summary>
    public static IReadOnlyList<string> NotBegun(CarReading reading) =>
        [.. reading.State.RunningJobs.Where(job => !job.Begun).Select(job => $"{job.Fact.Procedure} {reading.Placed(job).Procedure.Title} is not begun")];
}
