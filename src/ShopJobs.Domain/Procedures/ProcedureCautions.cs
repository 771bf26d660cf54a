using System.Globalization;
using FluentValidation;
using FluentValidation.Results;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures;

/// <summary>The cautions that stand beside a group's torque. They rest on assumed friction and never move a stated number.</summary>
public static class ProcedureCautions
{
    private static readonly string[] OfThePair = ["pair-creep", "creep-not-computed", "stud-between-nuts"];

    private static readonly TorqueSpecificationValidator Validator = new();

    /// <summary>
    /// What the technician should know of a group before the pull, computed again each time. A group of jam nuts also has the
    /// cautions about the nut pair of the studs that it drives.
    /// </summary>
    public static IReadOnlyList<string> For(Procedure procedure, JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(procedure);
        ArgumentNullException.ThrowIfNull(group);
        var ofDriven = procedure.Groups.Where(driven => driven.Jam?.Group == group.Id)
            .SelectMany(driven => Judge(driven).Where(found => OfThePair.Contains(found.ErrorCode)));
        return
        [
            .. Judge(group).Where(found => found.Severity == Severity.Warning).Concat(ofDriven).Select(found => found.ErrorMessage)
                .Concat(OfDocument(group).Select(advice => advice.ToString())),
        ];
    }

    /// <summary>
    /// Those of <see cref="For"/> that stand beside the torque at the pull: without the ones before the pull, and without what the
    /// picture of the clamp-load band says itself.
    /// </summary>
    public static IReadOnlyList<string> BesideTheBand(Procedure procedure, JointGroup group)
    {
        var before = OfThePairOn(procedure, group);
        var ofTheBand = Judge(group).Where(found => found.ErrorCode == BandCautions.NotComputed).Select(found => found.ErrorMessage);
        return [.. For(procedure, group).Except(before).Except(ofTheBand)];
    }

    /// <summary>Those of <see cref="For"/> about two nuts that drive a stud: they stand before the pull, not beside it.</summary>
    public static IReadOnlyList<string> OfThePairOn(Procedure procedure, JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(procedure);
        ArgumentNullException.ThrowIfNull(group);
        return
        [
            .. procedure.Groups.Where(driven => driven.Id == group.Id || driven.Jam?.Group == group.Id)
                .SelectMany(driven => Judge(driven).Where(found => OfThePair.Contains(found.ErrorCode))).Select(found => found.ErrorMessage),
        ];
    }

    /// <summary>Everything the specification validator says of a group, errors and cautions.</summary>
    /// <remarks>A torque that only snugs the joint is low on purpose.</remarks>
    internal static IEnumerable<ValidationFailure> Judge(JointGroup group) =>
        Validator.Validate(group.Specification()).Errors.Where(found => !group.IsTurned || found.ErrorCode != "utilisation-low");

    /// <summary>Cautions that do not follow from the specification of the final stage alone.</summary>
    internal static IEnumerable<Advice> OfDocument(JointGroup group)
    {
        if (group.ReTorque is { IsAsked: true } && group.Condition is ThreadCondition.Locker or ThreadCondition.PreAppliedLocker)
        {
            yield return new Advice(
                "Re-torque: turning a joint whose thread-locker has cured breaks the locker",
                "ask the maker; the usual way is to take it apart, clean it and do it again");
        }

        if (group.IsTurned)
        {
            var (low, high) = TighteningFactor.Usual(TighteningMethod.YieldOrAngle);
            var scatter = string.Create(
                CultureInfo.InvariantCulture,
                $"Turned by an angle: {group.Final.Value} only snugs the joint, and the angle may carry the bolt to about its yield. Where it does, the clamp load scatters by about ±{TighteningFactor.ScatterOf(low) * 100:0} to {TighteningFactor.ScatterOf(high) * 100:0} % (tightening factor {low:0.0} to {high:0.0}, VDI 2230 table A8, from memory)");
            yield return new Advice(scatter, "never pull it to a torque again");
            if (group.Hardware.Reuse == HardwareReuse.Allowed)
            {
                yield return new Advice(
                    "Bolts for angle tightening are commonly for one use (common practice, no source): the maker says",
                    "write “reuse: single-use” unless the maker's instruction lets them be used again");
            }
        }

        foreach (var stage in group.Stages.Where(stage => stage.Turn is null && stage.Permitted.IsOneValue && stage.Evidence != Evidence.Setting))
        {
            yield return new Advice(
                $"Stage {stage.Number}: only {stage.Permitted.Minimum} exactly is permitted, and a reading is hardly ever exact",
                "ask for “evidence: setting”, or write the range that the maker allows");
        }
    }
}
