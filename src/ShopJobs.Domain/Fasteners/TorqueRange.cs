using System.Diagnostics.CodeAnalysis;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// The torques an instruction permits, both ends inside. Compared in decimal N·m by the exact factors, with no rounding and
/// no tool tolerance: the guard band is spent when the target is chosen.
/// </summary>
public sealed record TorqueRange
{
    /// <summary>Refuses a minimum above the maximum.</summary>
    public TorqueRange(EnteredTorque minimum, EnteredTorque maximum)
    {
        if (ProblemOf(minimum, maximum) is { } problem)
        {
            throw new ArgumentException(problem.OneLine, nameof(minimum));
        }

        Minimum = minimum;
        Maximum = maximum;
    }

    /// <summary>Least torque permitted.</summary>
    public EnteredTorque Minimum { get; }

    /// <summary>Greatest torque permitted.</summary>
    public EnteredTorque Maximum { get; }

    /// <summary>True where the instruction states one value and not a range.</summary>
    public bool IsOneValue => Minimum.NewtonMetres == Maximum.NewtonMetres;

    /// <summary>Half the width over the middle, as a fraction: 60..95 is 0.226. 0 for 0..0.</summary>
    public decimal HalfWidth
    {
        get
        {
            var sum = Minimum.NewtonMetres + Maximum.NewtonMetres;
            return sum == 0 ? 0 : (Maximum.NewtonMetres - Minimum.NewtonMetres) / sum;
        }
    }

    /// <summary>The range, or the reason in words why the two values make none.</summary>
    public static bool TryCreate(
        EnteredTorque minimum, EnteredTorque maximum, [NotNullWhen(true)] out TorqueRange? range, [NotNullWhen(false)] out string? problem)
    {
        problem = ProblemOf(minimum, maximum)?.OneLine;
        range = problem is null ? new TorqueRange(minimum, maximum) : null;
        return range is not null;
    }

    /// <summary>Minimum &lt;= torque &lt;= maximum.</summary>
    public bool Contains(EnteredTorque torque) => !IsUnder(torque) && !IsOver(torque);

    /// <summary>Torque below the minimum.</summary>
    public bool IsUnder(EnteredTorque torque) => torque.NewtonMetres < Minimum.NewtonMetres;

    /// <summary>Torque above the maximum.</summary>
    public bool IsOver(EnteredTorque torque) => torque.NewtonMetres > Maximum.NewtonMetres;

    /// <summary>
    /// The range in another unit, both ends rounded inwards to <paramref name="decimals"/>; null where no such value is left
    /// inside, so that the original unit has to be shown.
    /// </summary>
    public TorqueRange? ToUnit(TorqueUnit unit, int decimals = 1)
    {
        var minimum = Minimum.ToUnit(unit, LimitRounding.Up, decimals);
        var maximum = Maximum.ToUnit(unit, LimitRounding.Down, decimals);
        return TryCreate(minimum, maximum, out var range, out _) ? range : null;
    }

    /// <summary>For example "60 to 95 N·m"; each end with its own unit where they differ.</summary>
    public override string ToString() => Minimum.Unit == Maximum.Unit
        ? FormattableString.Invariant($"{Minimum.Value} to {Maximum}")
        : $"{Minimum} to {Maximum}";

    /// <summary>Why the two values make no range; null where they do.</summary>
    internal static Advice? ProblemOf(EnteredTorque minimum, EnteredTorque maximum) =>
        minimum.NewtonMetres <= maximum.NewtonMetres
            ? null
            : new Advice($"The least permitted torque, {minimum}, is above the greatest, {maximum}", "read both again from the instruction");
}
