namespace ShopJobs.Domain.Tools;

/// <summary>What an instrument measures a car with.</summary>
public enum InstrumentKind
{
    /// <summary>A dial, depth or pressure gauge.</summary>
    Gauge,

    /// <summary>Scales under the wheels.</summary>
    Scales,

    /// <summary>An alignment rig.</summary>
    AlignmentRig,
}

/// <summary>An instrument of the shop that results are measured with. It is checked and doubted like a torque tool, and tightens nothing.</summary>
/// <param name="Name">The shop's short name for it, such as G2.</param>
/// <param name="Serial">Its number; empty where it has none.</param>
public sealed record Instrument(ToolId Id, string Name, string Serial, InstrumentKind Kind);

/// <summary>One check of an instrument against a reference.</summary>
/// <param name="Date">The day of the check.</param>
/// <param name="Due">Last day of validity, not before <paramref name="Date"/>.</param>
/// <param name="Certificate">Laboratory and number, or the shop's own master; no person.</param>
/// <param name="FoundGood">Within its limits before anybody adjusted it; null where that was not read.</param>
/// <param name="LeftGood">Within its limits as it went back to work.</param>
public sealed record InstrumentCheck(DateOnly Date, DateOnly Due, string Certificate, bool? FoundGood, bool LeftGood);
