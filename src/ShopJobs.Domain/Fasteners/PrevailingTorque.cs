using System.Collections.Frozen;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Least run-down torque a used self-locking nut must still have: FAA AC 43.13-1B (9/8/98) table 7-2, 7/16 in and larger (the rows
/// 7/16-20, 9/16-18, 5/8-18, 3/4-16, 1-14, 9/16-12 and 1 1/4-8 from memory, the others seen). Below it the nut no longer locks and
/// is discarded. A used nut that turns with the fingers is discarded whatever its size (AC 43.13-1A).
/// </summary>
public static class PrevailingTorque
{
    private static readonly FrozenDictionary<string, decimal> LeastInPoundInches = new (string Size, decimal Least)[]
    {
        ("7/16-20", 8), ("1/2-20", 10), ("9/16-18", 13), ("5/8-18", 18), ("3/4-16", 27), ("7/8-14", 40), ("1-14", 55),
        ("1 1/8-12", 73), ("1 1/4-12", 94),
        ("7/16-14", 8), ("1/2-13", 10), ("9/16-12", 14), ("5/8-11", 20), ("3/4-10", 27), ("7/8-9", 40), ("1-8", 51),
        ("1 1/8-8", 68), ("1 1/4-8", 88),
    }.ToFrozenDictionary(row => row.Size, row => row.Least);

    /// <summary>The published least torque of a used nut; null where the table has none for the size.</summary>
    public static EnteredTorque? LeastOfUsedNut(ThreadSize thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        var size = thread.ToString();
        var key = size.EndsWith(" UNC", StringComparison.Ordinal) || size.EndsWith(" UNF", StringComparison.Ordinal) ? size[..^4] : size;
        return LeastInPoundInches.TryGetValue(key, out var least) ? new EnteredTorque(least, TorqueUnit.PoundForceInch) : null;
    }

    /// <summary>
    /// Null where a used nut may stay by its measured run-down torque, else why not. Limits: what the maker states, else the table;
    /// without either only a nut that turns with the fingers (0) is refused.
    /// </summary>
    public static string? WhyDiscard(EnteredTorque measured, EnteredTorque? least, EnteredTorque? greatest = null)
    {
        if (measured.Value == 0)
        {
            return "The nut turns with the fingers: it no longer locks. Fit a new one.";
        }

        if (least is { } low && measured.NewtonMetres < low.NewtonMetres)
        {
            return $"Run-down torque {measured} is below the least, {low}: the nut no longer locks. Fit a new one.";
        }

        return greatest is { } high && measured.NewtonMetres > high.NewtonMetres
            ? $"Run-down torque {measured} is above the greatest, {high}: stop and look for damaged or crossed threads."
            : null;
    }
}
