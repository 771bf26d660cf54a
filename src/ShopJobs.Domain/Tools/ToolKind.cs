namespace ShopJobs.Domain.Tools;

/// <summary>What a torque tool tells its user.</summary>
public enum ToolKind
{
    /// <summary>Set to a value, clicks when it is reached: confirms a setting, measures nothing.</summary>
    Click,

    /// <summary>Shows a reading.</summary>
    Indicating,

    /// <summary>Measures the angle turned as well as torque.</summary>
    Angle,
}
