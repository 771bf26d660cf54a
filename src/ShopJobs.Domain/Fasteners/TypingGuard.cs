namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Which typed numbers are asked for again before a pull is sent: far from the target, or the target's number in another unit.
/// It guards against slips of the hand and judges nothing. The figures are common practice, no source.
/// </summary>
/// <param name="Unit">The unit beside the field: the tool's.</param>
/// <param name="Least">Below this number, 30 % of the target, it is asked for again.</param>
/// <param name="Most">Above this number, 150 % of the target, it is asked for again.</param>
/// <param name="Alike">The target's number in each other unit; within 3 % of one it is asked for again.</param>
public sealed record TypingGuard(TorqueUnit Unit, decimal Least, decimal Most, IReadOnlyList<EnteredTorque> Alike)
{
    /// <summary>A typed number this near to a number of <see cref="Alike"/>, as a fraction, is taken for it.</summary>
    public const decimal Near = 0.03m;

    /// <summary>The guard for a target typed in a tool's unit.</summary>
    public static TypingGuard For(EnteredTorque target, TorqueUnit unit)
    {
        var inUnit = target.NewtonMetres / unit.NewtonMetresPerUnit();
        return new TypingGuard(
            unit,
            Math.Round(inUnit * 0.3m, 3),
            Math.Round(inUnit * 1.5m, 3),
            [
                .. Enum.GetValues<TorqueUnit>().Where(other => other != unit)
                    .Select(other => new EnteredTorque(Math.Round(target.NewtonMetres / other.NewtonMetresPerUnit(), 3), other)),
            ]);
    }

    /// <summary>The target as the typed number would read in another unit; null when it is not near one.</summary>
    public EnteredTorque? TakenFor(decimal typed) =>
        Alike.Where(other => Math.Abs(typed - other.Value) <= other.Value * Near)
            .Cast<EnteredTorque?>().FirstOrDefault();

    /// <summary>True when the number is far from the target.</summary>
    public bool IsFar(decimal typed) => typed < Least || typed > Most;
}
