namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Run-down torque of a self-locking nut: what the thread takes before the joint clamps at all. From its least to its greatest.
/// </summary>
public sealed record RunDownTorque
{
    /// <summary>Refuses a least above the greatest.</summary>
    public RunDownTorque(EnteredTorque least, EnteredTorque greatest)
    {
        if (least.NewtonMetres > greatest.NewtonMetres)
        {
            throw new ArgumentException($"The least run-down torque, {least}, is above the greatest, {greatest}.", nameof(least));
        }

        Least = least;
        Greatest = greatest;
    }

    /// <summary>Least run-down torque.</summary>
    public EnteredTorque Least { get; }

    /// <summary>Greatest run-down torque.</summary>
    public EnteredTorque Greatest { get; }

    /// <summary>
    /// What to set for a stated torque on a nut whose run-down torque was measured: <see cref="RunDown.Add"/> adds it (FAA AC 43.13-1B, 7-40),
    /// otherwise the stated torque is set as it is. In the stated unit, not rounded.
    /// </summary>
    public static EnteredTorque ToSet(EnteredTorque stated, RunDown rule, EnteredTorque measured) => rule == RunDown.Add
        ? stated with { Value = stated.Value + (measured.NewtonMetres / stated.Unit.NewtonMetresPerUnit()) }
        : stated;

    /// <summary>
    /// The torque that clamps, from least to greatest, when <paramref name="stated"/> is set by the rule. Includes: stated less the
    /// run-down torque (NASA-STD-5020B: least torque less the greatest run-down, greatest less the least). Add: the stated range itself.
    /// Not stated: both readings, from stated less the greatest run-down torque to the stated torque. Not below zero.
    /// </summary>
    public (EnteredTorque Least, EnteredTorque Greatest) Clamping(TorqueRange stated, RunDown rule)
    {
        ArgumentNullException.ThrowIfNull(stated);
        return rule switch
        {
            RunDown.Includes => (Less(stated.Minimum, Greatest), Less(stated.Maximum, Least)),
            RunDown.Add => (stated.Minimum, stated.Maximum),
            RunDown.NotStated => (Less(stated.Minimum, Greatest), stated.Maximum),
            _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Not a rule for run-down torque."),
        };
    }

    /// <summary>For example "2 to 8 N·m".</summary>
    public override string ToString() => new TorqueRange(Least, Greatest).ToString();

    private static EnteredTorque Less(EnteredTorque torque, EnteredTorque runDown) => torque with
    {
        Value = Math.Max(0, torque.Value - (runDown.NewtonMetres / torque.Unit.NewtonMetresPerUnit())),
    };
}
