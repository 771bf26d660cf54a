using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tools;

/// <summary>
/// A torque tool: name on the shelf ("W7"), serial, range and graduation in its own unit, stated class deviation, and its last
/// calibration. Whether it is in doubt or quarantined is told by its logbook, not here.
/// </summary>
public sealed record TorqueTool(
    ToolId? Id,
    string Name,
    string Serial,
    ToolKind Kind,
    TorqueUnit Unit,
    decimal LowestMarked,
    decimal Top,
    decimal Graduation,
    decimal? ClassDeviationPercent = null,
    Calibration? Calibration = null)
{
    /// <summary>Lowest marked value, above zero: the range starts here (ISO 6789-1:2017).</summary>
    public decimal LowestMarked { get; } = AboveZero(LowestMarked);

    /// <summary>Greatest value, above the lowest marked one.</summary>
    public decimal Top { get; } = Top > LowestMarked
        ? Top
        : throw new ArgumentOutOfRangeException(nameof(Top), Top, "The top of a tool must be above its lowest marked value.");

    /// <summary>The step between marks, above zero.</summary>
    public decimal Graduation { get; init => field = AboveZero(value); } = AboveZero(Graduation);

    /// <summary>Longest hand tool that is taken for one, in mm: common practice, no source.</summary>
    public const decimal LongestMm = 3000;

    /// <summary>Effective length in mm, from the mark of the hand to the square drive; null where nobody entered it.</summary>
    public decimal? LengthMm
    {
        get;
        init => field = value is null or (> 0 and <= LongestMm)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(LengthMm), value, $"The length of a tool is above 0 and at most {LongestMm} mm.");
    }

    /// <summary>Pulls after which a tool is to be calibrated again where the shop does not ask sooner: 5000 (ISO 6789-1:2017, 5.3, from memory).</summary>
    public static int StandardCycles => RecalibrationInterval.Iso6789.Cycles;

    /// <summary>Pulls after which it is to be calibrated again, from 1 to <see cref="StandardCycles"/>.</summary>
    public int CycleLimit
    {
        get;
        init => field = value >= 1 && value <= StandardCycles
            ? value
            : throw new ArgumentOutOfRangeException(nameof(CycleLimit), value, $"A tool is calibrated again after 1 to {StandardCycles} pulls.");
    } = StandardCycles;

    /// <summary>True from the lowest marked value to the top, both inside, compared in decimal N·m.</summary>
    public bool IsInRange(EnteredTorque torque) =>
        torque.NewtonMetres >= InUnit(LowestMarked).NewtonMetres && torque.NewtonMetres <= InUnit(Top).NewtonMetres;

    /// <summary>
    /// Deviation in percent to reckon with at a torque: the larger of the stated class deviation (else the limit of ISO 6789) and
    /// the worst point as left of the last certificate, whether by its definition or by what is delivered.
    /// </summary>
    public decimal ToleranceFor(EnteredTorque torque)
    {
        var certificate = Calibration is { AsLeft: var points }
            ? Math.Max(points.WorstDeviationPercent() ?? 0, points.WorstDeliveredPercent() ?? 0)
            : 0;
        return Math.Max(ClassDeviationPercent ?? ToolDeviation.ClassLimitPercent(torque), certificate);
    }

    /// <summary>
    /// The question for <see cref="TargetChooser"/> with this tool driving: tolerance at the least permitted torque, range,
    /// graduation, adapter, and the jam torque with the tool that makes it.
    /// </summary>
    public TargetQuestion TargetQuestion(
        TorqueRange permitted, AdapterSetting? adapter = null, EnteredTorque? jam = null, TorqueTool? jamTool = null) => new()
        {
            Permitted = permitted,
            DeviationPercent = ToleranceFor(adapter?.SettingFor(permitted.Minimum) ?? permitted.Minimum),
            Graduation = InUnit(Graduation),
            ToolBottom = InUnit(LowestMarked),
            ToolTop = InUnit(Top),
            SettingRatio = adapter?.Ratio ?? 1,
            Jam = jam,
            JamDeviationPercent = jam is { } j ? jamTool?.ToleranceFor(j) ?? ToolDeviation.ClassLimitPercent(j) : 0,
        };

    private EnteredTorque InUnit(decimal value) => new(value, Unit);

    private static decimal AboveZero(decimal value)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        return value;
    }
}
