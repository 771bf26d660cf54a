namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// How often a fastener has been brought to torque and how often it may be. Each full tightening counts, also one that was undone
/// at once: a single-use bolt has been stretched by it.
/// </summary>
/// <param name="Used">Times at torque, not below zero.</param>
/// <param name="Allowed">Times allowed, at least 1; null where the maker sets no limit.</param>
/// <param name="Yielded">True when it was taken to yield or over its permitted torque: not used again.</param>
/// <param name="ThreadDamaged">True when thread or face is damaged: not used again.</param>
public sealed record FastenerUse(int Used, int? Allowed, bool Yielded = false, bool ThreadDamaged = false)
{
    /// <summary>Times at torque.</summary>
    public int Used { get; init => field = NotBelow(value, 0); } = NotBelow(Used, 0);

    /// <summary>Times allowed.</summary>
    public int? Allowed { get; init => field = value is { } v ? NotBelow(v, 1) : null; } = Allowed is { } a ? NotBelow(a, 1) : null;

    /// <summary>Uses left; null without a limit.</summary>
    public int? Left => Allowed is { } allowed ? Math.Max(0, allowed - Used) : null;

    /// <summary>Null where it may be used again, else why not and what to do.</summary>
    public string? WhyNot => (Yielded, ThreadDamaged, Left) switch
    {
        (true, _, _) => "It was taken to yield or over its permitted torque: fit a new one.",
        (_, true, _) => "Its thread or face is damaged: fit a new one.",
        (_, _, 0) when Allowed == 1 => "It is single-use and was at torque before: fit a new one.",
        (_, _, 0) => $"It was at torque {Used} times of {Allowed} allowed: fit a new one.",
        _ => null,
    };

    /// <summary>The same fastener after one more tightening.</summary>
    public FastenerUse AfterTightening() => this with { Used = Used + 1 };

    private static int NotBelow(int value, int least)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, least);
        return value;
    }
}
