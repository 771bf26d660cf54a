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
        HoldReason.MovedAnyway,
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

    /// <summary>Gathered, worst reasons first, otherwise in their order.</summary>
    public static IReadOnlyList<GatheredHold> Gather(this Circumstances now, IEnumerable<HoldPoint> points) =>
        [.. now.InOrder(points).OrderBy(gathered => Array.IndexOf(WorstFirst, gathered.Reason) is var rank && rank < 0 ? WorstFirst.Length : rank)];

    /// <summary>
    /// The same reason on several fasteners of one joint becomes one, in the order given. A fastener that waits for a decision is
    /// named as held and not once more for where it stands.
    /// </summary>
    public static IReadOnlyList<GatheredHold> InOrder(this Circumstances now, IEnumerable<HoldPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var names = HoldNames.Of(now);

        // Reasons are the same when they say the same of the joint as a whole. A fastener that several steps wait for is named once.
        return
        [
            .. points.Where(point => !(point.Because ?? point).IsUndecided).GroupBy(point => (point.Reason, point.Joint, Where: point.Position is null ? (point.Job, point.Step) : default, Said: HoldWords.Say(point, names, [])))
                .Select(same => Gathered(names, [.. same])),
        ];
    }

    private static GatheredHold Gathered(HoldNames names, List<HoldPoint> same)
    {
        var first = same[0];
        var numbers = same.Select(point => point.Position?.Number).OfType<int>().Distinct().Order().ToList();
        var (words, next) = HoldWords.Say(first, names, numbers);
        return new GatheredHold(first.Reason, first.Job, first.Step, first.Joint, numbers, words, next);
    }
}
