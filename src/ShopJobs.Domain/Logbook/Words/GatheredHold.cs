using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One reason, said once for all fasteners of a joint that have it.</summary>
/// <param name="Joint">The joint, if it is about one.</param>
/// <param name="Numbers">The fasteners of that joint, in order; empty where it is about none.</param>
/// <param name="Words">What is wrong, in plain words.</param>
/// <param name="Next">What to do next.</param>
public sealed record GatheredHold(
    HoldReason Reason, JobId? Job, string? Step, Joint? Joint, IReadOnlyList<int> Numbers, string Words, string Next);

/// <summary>Gathers reasons for people who read the first three.</summary>
public static class GatheredHolds
{
    private static readonly HoldReason[] WorstFirst =
    [
        HoldReason.Held,
        HoldReason.ToolInDoubt,
        HoldReason.NothingCloses,
        HoldReason.NotAtStage,
        HoldReason.TemporaryFitted,
        HoldReason.NotWitnessed,
        HoldReason.OtherSpecification,
        HoldReason.ResultVoid,
        HoldReason.StepToReconfirm,
        HoldReason.StepNotSigned,
        HoldReason.JointNotMadeHere,
        HoldReason.ReTorqueDue,
    ];

    /// <summary>The same reason on several fasteners of one joint becomes one; worst reasons first, otherwise in their order.</summary>
    public static IReadOnlyList<GatheredHold> Gather(this Circumstances now, IEnumerable<HoldPoint> points)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(points);
        return
        [
            .. points.GroupBy(point => (point.Reason, point.Step, point.Position?.Joint, Tail: Tail(now, point), point.Next))
                .Select(same => Gathered(now, [.. same], same.Key.Tail))
                .OrderBy(gathered => Array.IndexOf(WorstFirst, gathered.Reason) is var rank && rank < 0 ? WorstFirst.Length : rank),
        ];
    }

    private static GatheredHold Gathered(Circumstances now, List<HoldPoint> same, string tail)
    {
        var first = same[0];
        var numbers = same.Select(point => point.Position?.Number).OfType<int>().Distinct().Order().ToList();
        var words = first.Position is { } position && numbers.Count > 1
            ? $"{now.Name(position.Joint)} {EntryNames.Numbers(numbers.Select(number => (long)number))}{tail}"
            : first.Words;
        return new GatheredHold(first.Reason, first.Job, first.Step, first.Position?.Joint, numbers, words, first.Next);
    }

    // What is said after the position's name; all of it where the name is not in front.
    private static string Tail(Circumstances now, HoldPoint point) =>
        point.Position is { } position && now.Name(position) is var name && point.Words.StartsWith(name, StringComparison.Ordinal)
            ? point.Words[name.Length..]
            : point.Words;
}
