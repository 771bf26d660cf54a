namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Stages in which a group is brought to its final torque, so that one side does not seat before the other. The instruction's own
/// stages win; these are published patterns for where it gives none.
/// </summary>
/// <param name="Name">What it is called here.</param>
/// <param name="Percent">Each stage in percent of the final torque, rising, the last 100.</param>
/// <param name="Source">The document.</param>
public sealed record StagedTightening(string Name, IReadOnlyList<int> Percent, string Source)
{
    /// <summary>Torque above which the two-stage pattern is asked for: 30 lbf·ft (US Army TM 5-3805-248-23-1).</summary>
    public static readonly EnteredTorque TwoStagesAbove = new(30, TorqueUnit.PoundForceFoot);

    /// <summary>70 %, then 100 %.</summary>
    public static StagedTightening TwoStages { get; } = new("two stages", [70, 100], "US Army TM 5-3805-248-23-1, torque limits");

    /// <summary>30 %, 70 %, 100 % in a cross pattern, then circular passes.</summary>
    public static StagedTightening ThreeStages { get; } = new("three stages", [30, 70, 100], "ASME PCC-1, from memory");

    /// <summary>Stage torques of a final one, in its unit, rounded down to the graduation of the tool; the last is the final torque itself.</summary>
    public IReadOnlyList<EnteredTorque> StagesOf(EnteredTorque final, decimal graduation)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(graduation);
        return [.. Percent.Select(p => p == 100 ? final : final with { Value = Math.Floor(final.Value * p / 100 / graduation) * graduation })];
    }
}
