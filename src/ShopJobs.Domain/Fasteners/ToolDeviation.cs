namespace ShopJobs.Domain.Fasteners;

/// <summary>How far a torque tool may be off, in percent of its value, as a plus-minus limit.</summary>
public static class ToolDeviation
{
    /// <summary>
    /// Class limit of ISO 6789 for the usual hand tools: 6 % at or below 10 N·m, 4 % above (from memory of the standard).
    /// </summary>
    public static decimal ClassLimitPercent(EnteredTorque torque) => torque.NewtonMetres <= 10 ? 6 : 4;

    internal static void Check(decimal percent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(percent);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(percent, 100);
    }
}
