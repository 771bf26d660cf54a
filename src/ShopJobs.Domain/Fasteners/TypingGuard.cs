namespace ShopJobs.Domain.Fasteners;

/// <summary>The target's number in another unit, and the typed numbers that are taken for it.</summary>
public sealed record TargetInAnotherUnit(EnteredTorque Target, decimal Least, decimal Most);

/// <summary>
/// Which typed numbers are asked for again before a pull is sent: far from the target, or the target's number in another unit.
/// The keypad compares, with no line to the server, and judges nothing by it: it guards against slips of the hand. The figures
/// are common practice, no source.
/// </summary>
/// <param name="Least">Below this number it is asked for again: 30 % of a torque, 70 % of an angle.</param>
/// <param name="Most">Above this number it is asked for again: 150 % of a torque, 130 % of an angle.</param>
/// <param name="Alike">The target's number in each other unit, 3 % either way.</param>
public sealed record TypingGuard(decimal Least, decimal Most, IReadOnlyList<TargetInAnotherUnit> Alike)
{
    private const decimal Near = 0.03m;

    /// <summary>The guard for a target typed in a tool's unit.</summary>
    public static TypingGuard For(EnteredTorque target, TorqueUnit unit)
    {
        var inUnit = target.NewtonMetres / unit.NewtonMetresPerUnit();
        return new TypingGuard(
            Math.Round(inUnit * 0.3m, 3),
            Math.Round(inUnit * 1.5m, 3),
            [.. Enum.GetValues<TorqueUnit>().Where(other => other != unit).Select(other => InAnother(target, other))]);
    }

    /// <summary>The guard for an angle in degrees: closer, so that the torque of the stage below typed by habit is noticed.</summary>
    public static TypingGuard ForAngle(decimal degrees) => new(degrees * 0.7m, degrees * 1.3m, []);

    private static TargetInAnotherUnit InAnother(EnteredTorque target, TorqueUnit unit)
    {
        var value = target.NewtonMetres / unit.NewtonMetresPerUnit();
        return new TargetInAnotherUnit(
            new EnteredTorque(Math.Round(value, 1), unit), Math.Round(value * (1 - Near), 3), Math.Round(value * (1 + Near), 3));
    }
}
