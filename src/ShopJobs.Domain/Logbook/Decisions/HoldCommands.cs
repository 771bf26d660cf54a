using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Stop a step, a result or a lot of parts: one of the three.</summary>
public sealed record HoldWork(ContentDigest Reason) : Report
{
    /// <summary>The job of the step, or at which the lot is in hand.</summary>
    public JobId? Job { get; init; }

    /// <summary>The step instance.</summary>
    public string? Step { get; init; }

    /// <summary>Number of the result's entry.</summary>
    public long? Result { get; init; }

    /// <summary>The lot or kit, as printed on the bag or box.</summary>
    public string? Lot { get; init; }

    /// <summary>The group for which the lot is in hand.</summary>
    public string? Group { get; init; }
}

/// <summary>Decide one hold on a step, a result or a lot.</summary>
/// <param name="Hold">Number of the entry that holds it.</param>
public sealed record DecideWork(
    long Hold, Disposition Disposition, ContentDigest Reason, Acceptance? Acceptance, string Shown) : SignedCommand(Shown);

/// <summary>Decide everything that holds several positions, all alike. Each gets its own entry; where one may not be decided so, none is.</summary>
public sealed record DecideRow(
    IReadOnlyList<JointPosition> Positions, Disposition Disposition, ContentDigest Reason, Acceptance? Acceptance, string Shown) : SignedCommand(Shown)
{
    /// <summary>The decision on one of them.</summary>
    public DecideHold On(JointPosition position) => new(position, Disposition, Reason, Acceptance, Shown);
}
