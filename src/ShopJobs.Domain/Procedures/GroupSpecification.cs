using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures;

/// <summary>
/// What a group asks of one of its fasteners at the final stage, for everything that computes clamp load; where an angle is turned
/// after that, at the torque it is turned on from.
/// </summary>
public static class GroupSpecification
{
    /// <summary>The torque specification of the group's final stage.</summary>
    public static TorqueSpecification Specification(this JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return new TorqueSpecification
        {
            Thread = group.Thread,
            Class = group.Class,
            ClassIsEquivalent = group.Class is not null && group.ClassNote is not null,
            Seat = group.Seat,
            Condition = group.Condition,
            Permitted = group.Final.Permitted,
            Target = group.Final.Value,
            Jam = group.Jam?.JamTorque,
            JamToolDeviationPercent = group.Jam?.JamToolDeviationPercent,
            RunDown = group.RunDown,
            RunDownTorque = group.RunDownPermitted is { } permitted ? new RunDownTorque(permitted.Minimum, permitted.Maximum) : null,
            LimitedBy = group.LimitedBy,
            Nut = group.Nut,
            Engaged = group.Engaged?.Length,
            PartTensile = group.Engaged?.Tensile,
            BearingLimit = group.BearingLimit,
            Risk = group.Risk,
        };
    }

    /// <summary>The same for one of its stages: that stage's value and permitted range.</summary>
    public static TorqueSpecification Specification(this JointGroup group, Stage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return group.Specification() with { Permitted = stage.Permitted, Target = stage.Value };
    }
}
