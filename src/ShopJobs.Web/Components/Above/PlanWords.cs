using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Above;

/// <summary>What the drawing says to whoever does not see it, and the counts that stand beside it.</summary>
public static class PlanWords
{
    /// <summary>Fasteners by state, worst first; states that none is in are left out.</summary>
    public static IReadOnlyList<(PositionState State, int Count)> Counts(IEnumerable<JointSeen> joints) =>
        [.. joints.SelectMany(joint => joint.Fasteners).CountBy(fastener => fastener.State).OrderBy(count => count.Key).Select(count => (count.Key, count.Value))];

    /// <summary>"The car from above, 200 fasteners: 1 held, 7 staged, 192 as found."</summary>
    public static string Whole(IReadOnlyList<JointSeen> joints)
    {
        var counts = Counts(joints);
        return string.Create(CultureInfo.InvariantCulture, $"The car from above, {counts.Sum(count => count.Count)} fasteners: {string.Join(", ", counts.Select(count => Count(count.State, count.Count)))}.");
    }

    /// <summary>The same by place: "The car from above: front-left 5 staged; front-right 1 held, 4 hand-tight; 190 as found."</summary>
    public static string ByPlace(IReadOnlyList<JointSeen> joints)
    {
        var touched = joints.Where(joint => !joint.IsAsFound).GroupBy(joint => joint.Joint.Place).Select(place =>
            $"{place.Key} {string.Join(", ", Counts(place).Where(count => count.State != PositionState.AsFound).Select(count => Count(count.State, count.Count)))}");
        var asFound = Counts(joints).Where(count => count.State == PositionState.AsFound).Select(count => Count(count.State, count.Count));
        return $"The car from above: {string.Join("; ", touched.Concat(asFound))}.";
    }

    /// <summary>Joints that are not drawn, each with its worst state.</summary>
    public static IEnumerable<string> Elsewhere(IEnumerable<JointSeen> joints) =>
        joints.Select(joint => $"{joint.Name} {joint.Joint.Place}: {Count(joint.Shown.State, joint.Fasteners.Count(fastener => fastener.State == joint.Shown.State))}");

    private static string Count(PositionState state, int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {PositionWords.Of(state)}");
}
