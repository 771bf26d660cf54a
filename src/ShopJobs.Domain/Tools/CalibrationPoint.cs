namespace ShopJobs.Domain.Tools;

/// <summary>
/// One pair of a calibration, both in the tool's unit and above zero: what was set or shown, and what the rig read.
/// Never a bare percent.
/// </summary>
public readonly record struct CalibrationPoint(decimal SetOrShown, decimal RigRead)
{
    /// <summary>What was set on a click tool, or shown by an indicating one.</summary>
    public decimal SetOrShown { get; init => field = AboveZero(value); } = AboveZero(SetOrShown);

    /// <summary>What the rig read: the torque delivered.</summary>
    public decimal RigRead { get; init => field = AboveZero(value); } = AboveZero(RigRead);

    /// <summary>
    /// Deviation by ISO 6789 (from memory): (indicated - reference)/reference, in percent. A tool that delivers too little has a
    /// positive deviation.
    /// </summary>
    public decimal DeviationPercent => (SetOrShown - RigRead) / RigRead * 100;

    /// <summary>What the tool delivers too much (above 0) or too little (below 0), in percent of what was set.</summary>
    public decimal DeliveredPercent => (RigRead - SetOrShown) / SetOrShown * 100;

    private static decimal AboveZero(decimal value)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        return value;
    }
}
