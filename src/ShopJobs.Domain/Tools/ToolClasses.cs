using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tools;

/// <summary>What ISO 6789-1:2017 permits a class of tools (from memory of the standard).</summary>
public static class ToolClasses
{
    /// <summary>Loads at maximum before a setting tool (type II) is tested.</summary>
    public const int SettingPreloads = 5;

    /// <summary>Preloads to maximum before an indicating tool (type I) is tested.</summary>
    public const int IndicatingPreloads = 1;

    /// <summary>
    /// Greatest permitted deviation, plus-minus percent: bars and screwdrivers 6 % throughout, the other wrenches 6 % up to and at
    /// 10 N·m and 4 % above.
    /// </summary>
    public static decimal PermittedPercent(this ToolClass toolClass, EnteredTorque torque) => toolClass switch
    {
        ToolClass.IndicatingBar or ToolClass.SettingBar or ToolClass.IndicatingScrewdriver or ToolClass.SettingScrewdriver => 6,
        _ when Enum.IsDefined(toolClass) => ToolDeviation.ClassLimitPercent(torque),
        _ => throw new ArgumentOutOfRangeException(nameof(toolClass), toolClass, "Not a class of ISO 6789."),
    };

    /// <summary>Least and greatest torque a tool of this deviation may deliver at a value, in its unit, not rounded.</summary>
    public static TorqueRange Permitted(EnteredTorque value, decimal deviationPercent) => new(
        value with { Value = value.Value * (1 - (deviationPercent / 100)) }, value with { Value = value.Value * (1 + (deviationPercent / 100)) });

    /// <summary>
    /// Coarsest step an electronic tool may show, and greatest uncertainty of the device it is read against: a quarter of the
    /// permitted deviation at that value.
    /// </summary>
    public static EnteredTorque QuarterOfDeviation(EnteredTorque value, decimal deviationPercent) =>
        value with { Value = value.Value * deviationPercent / 100 / 4 };
}
