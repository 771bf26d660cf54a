using FluentValidation;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Step;

/// <summary>Cautions computed for the groups of a step.</summary>
public static class StepCautions
{
    private static readonly TorqueSpecificationValidator Validator = new();

    /// <summary>What the arithmetic cautions against for one group. It stands beside the instruction and moves no number.</summary>
    public static IReadOnlyList<string> Computed(JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        var specification = new TorqueSpecification
        {
            Thread = group.Thread,
            Class = group.Class,
            ClassIsEquivalent = group.ClassNote is not null,
            Seat = group.Seat,
            Condition = group.Condition,
            Permitted = group.Final.Permitted,
            Target = group.Final.Value,
            Jam = group.Jam?.JamTorque,
            JamToolDeviationPercent = group.Jam?.JamToolDeviationPercent,
            RunDown = group.RunDown,
            Risk = group.Risk,
        };
        return
        [
            .. Validator.Validate(specification).Errors
                .Where(error => error.Severity == Severity.Warning && error.ErrorCode != "band-not-computed")
                .Select(error => error.ErrorMessage),
        ];
    }
}
