using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>
/// What went wrong by the shop's own hand, in words that hide nothing and accuse nobody. A figure is named only where the fastener was
/// done again, or stays so by a decision: before that it would stand on the page as if it were the torque.
/// </summary>
internal static class Mistakes
{
    /// <summary>Told together where the same happened to several fasteners of a joint.</summary>
    /// <param name="found">Findings that are the shop's own doing.</param>
    public static IReadOnlyList<Mistake> Of(SummarySubject car, IEnumerable<OwnFinding> found) =>
    [
        .. from one in found
           let right = IsRight(car, one)
           group one by (one.Position.Joint, What(car, one, right), Then(car, one, right, many: false), right) into same
           let numbers = same.Select(one => one.Position.Number).Distinct().ToList()
           let what = same.Key.Item2
           select new Mistake(
               $"{what.Before} {Name(car, same.Key.Joint, numbers)}{what.After}. {Then(car, same.First(), same.Key.right, numbers.Count > 1)}",
               same.Key.right),
    ];

    private static bool IsRight(SummarySubject car, OwnFinding one)
    {
        var book = car.State.Of(one.Position);
        return one.Disposition is Disposition.Rework or Disposition.Replace && book.OpenedBy > one.Number && car.IsTight(book);
    }

    private static (string Before, string After) What(SummarySubject car, OwnFinding one, bool right) => one.Entry switch
    {
        TorqueRecorded fact when fact.Position != one.Position => ("By the same pull we overloaded", ""),
        TorqueRecorded { Problems: [HoldReason.OverRange, ..], Value: { } value } fact
            when (right || one is { Disposition: Disposition.UseAsIs, Stands: true }) && !one.Corrected && MayBeTold(car, fact) => (
            "We tightened",
            $" to {Said(fact.AtFastener ?? value)} at a step that allowed {Said(new EnteredTorque(fact.Spec.Maximum, TorqueUnit.NewtonMetre))} at most"),
        TorqueRecorded { Problems: [HoldReason.OverRange, ..] } => ("We tightened", " over the permitted maximum"),
        TorqueRecorded { Problems: [HoldReason.TurnOutside, ..] } => ("We turned", " by another angle than permitted"),
        TorqueRecorded { Problems: [HoldReason.UnderRange, ..] } => ("We tightened", " below the permitted range"),
        TorqueRecorded { Problems: [HoldReason.SecondPull, ..] } => ("We pulled", " once more when that was already done"),
        TorqueRecorded { Problems: [HoldReason.SettingNotInstructed, ..] } => ("We tightened", " at another setting than instructed"),
        TorqueRecorded
        {
            Problems: [HoldReason.ToolUnknown or HoldReason.ToolOverdue or HoldReason.ToolAtItsLimit or HoldReason.ToolQuarantined
            or HoldReason.ToolOutOfRange or HoldReason.EvidenceNotAllowed, ..]
        } => ("We tightened", " with a tool that does not count for it"),
        TorqueRecorded { Problems: [HoldReason.HardwareNotNew, ..] } => ("We tightened", " without a record of the new part that was asked for"),
        TorqueRecorded => ("We tightened", " out of the order or the condition that our procedure asks for"),
        Witnessed => ("The second person did not accept our work on", ""),
        _ => ("The tool we used on", " was found doubtful afterwards"),
    };

    private static string Then(SummarySubject car, OwnFinding one, bool right, bool many)
    {
        var (it, was, stays) = many ? ("They", "were", "stay as they are") : ("It", "was", "stays as it is");
        return one switch
        {
            { Disposition: null } => "That is not decided yet.",
            { Disposition: Disposition.UseAsIs, Stands: false } => $"{it} {was} used like that, and loosened again since.",
            { Disposition: Disposition.UseAsIs, Accepted: true } => $"{it} {stays}, with a written acceptance by the maker or a named engineer.",
            { Disposition: Disposition.UseAsIs } => $"{it} {stays}.",
            _ when !right => "That is not put right yet.",
            { Disposition: Disposition.Replace } => $"{it} {was} replaced by new parts and tightened.{Final(car, one)}",
            _ => $"{Loosened(car, one) ?? $"{it} {was}"} loosened and tightened again.{Final(car, one)}",
        };
    }

    private static string? Loosened(SummarySubject car, OwnFinding one)
    {
        var all = car.Joints.First(joint => joint.Key == one.Position.Joint).ToList();
        return all.Count > 1 && all.TrueForAll(book => book.OpenedBy > one.Number)
            ? string.Create(CultureInfo.InvariantCulture, $"All {all.Count} {CustomerNames.Plural(car.KindName(one.Position.Key), all.Count)} there were")
            : null;
    }

    private static string Final(SummarySubject car, OwnFinding one) =>
        SummarySubject.FinalPulls(car.State.Of(one.Position)) is [.., { AtFastener: { } torque } pull] && MayBeTold(car, pull.Fact)
            ? $" The final torque is {Said(torque)}."
            : "";

    /// <summary>No figure of what an angle, locker or the maker's rule forbids anybody to pull again.</summary>
    private static bool MayBeTold(SummarySubject car, TorqueRecorded fact) =>
        fact.Spec is { Turn: null, ReTorque: not { Forbidden: true } }
        && car.Now.Placed(car.State.Jobs[fact.Job]).Procedure.Group(fact.Group).Condition is not (ThreadCondition.Locker or ThreadCondition.PreAppliedLocker);

    private static string Said(EnteredTorque torque) => string.Create(CultureInfo.InvariantCulture, $"{torque.Value:0.##} {torque.Unit.Symbol()}");

    private static string Name(SummarySubject car, Joint joint, List<int> numbers)
    {
        var alone = car.Joints.FirstOrDefault(other => other.Key == joint)?.Count() == 1;
        return $"the {CustomerNames.Place(joint.Place)} {CustomerNames.Plural(car.KindName(joint.Key), numbers.Count)}{(alone ? "" : $" {CustomerNames.Numbers(numbers)}")}";
    }
}

/// <summary>A finding that is the shop's own doing.</summary>
/// <param name="Number">Number of the decision, or of the entry where none was made.</param>
/// <param name="Entry">What holds it.</param>
/// <param name="Disposition">How it was decided; null while it was not.</param>
/// <param name="Stands">It was not opened since the decision.</param>
/// <param name="Accepted">With a written acceptance.</param>
/// <param name="Corrected">The figure was corrected afterwards: it is not told.</param>
internal sealed record OwnFinding(
    JointPosition Position, long Number, Entry Entry, Disposition? Disposition, bool Stands, bool Accepted, bool Corrected);
