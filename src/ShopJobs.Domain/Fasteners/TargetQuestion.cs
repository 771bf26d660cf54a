namespace ShopJobs.Domain.Fasteners;

/// <summary>What the choice of a target torque depends on.</summary>
public sealed record TargetQuestion
{
    /// <summary>The torques the instruction permits at the fastener.</summary>
    public required TorqueRange Permitted { get; init; }

    /// <summary>
    /// Deviation of the tool that drives, in percent, 0 to below 100: the larger of its class limit and its last certificate.
    /// </summary>
    public required decimal DeviationPercent { get; init => field = Checked(value); }

    /// <summary>The step in which the tool can be set, above zero, in the tool's own unit; the setting is a multiple of it.</summary>
    public required EnteredTorque Graduation { get; init; }

    /// <summary>Lowest marked value of the tool; null where no tool limits the choice.</summary>
    public EnteredTorque? ToolBottom { get; init; }

    /// <summary>Top of the tool; null where no tool limits the choice.</summary>
    public EnteredTorque? ToolTop { get; init; }

    /// <summary>Torque with which two nuts are jammed to drive a stud; null where there is no pair.</summary>
    public EnteredTorque? Jam { get; init; }

    /// <summary>Deviation of the tool that jams the nuts, in percent, 0 to below 100.</summary>
    public decimal JamDeviationPercent { get; init => field = Checked(value); }

    /// <summary>Setting over torque at the fastener, above zero: 1 without adapter, L/(L + E cos a) with one.</summary>
    public decimal SettingRatio { get; init; } = 1;

    /// <summary>Computed limits, drawn beside the room and said as cautions; they change neither the room nor the choice.</summary>
    public IReadOnlyList<ComputedLimit> Computed { get; init; } = [];

    private static decimal Checked(decimal percent)
    {
        ToolDeviation.Check(percent);
        return percent;
    }
}
