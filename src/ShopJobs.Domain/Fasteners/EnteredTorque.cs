using System.Globalization;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A torque as it was entered or stated: the number with its digits and its own unit, never taken through another unit.
/// From 0 to 1e12; at most nine digits are read from text. Two are equal when number and unit are equal; to compare sizes use <see cref="NewtonMetres"/>.
/// The default value is 0 N·m.
/// </summary>
public readonly record struct EnteredTorque(decimal Value, TorqueUnit Unit)
{
    /// <summary>Largest number accepted, in any unit.</summary>
    public const decimal Largest = 1_000_000_000_000m;

    /// <summary>The number, in <see cref="Unit"/>.</summary>
    public decimal Value { get; init => field = InBounds(value); } = InBounds(Value);

    /// <summary>The same torque in N·m by the exact factor of its unit: what every comparison with a limit uses.</summary>
    public decimal NewtonMetres => Value * Unit.NewtonMetresPerUnit();

    /// <summary>The same torque as a physical quantity, for computations in double precision.</summary>
    public Torque ToTorque() => Torque.FromNewtonMeters((double)NewtonMetres);

    /// <summary>
    /// The value in <paramref name="unit"/> with at most <paramref name="decimals"/> (0 to 6) decimals, rounded inwards so that
    /// a limit shown never permits more than the limit itself. Unchanged when the unit is its own.
    /// </summary>
    public EnteredTorque ToUnit(TorqueUnit unit, LimitRounding rounding, int decimals = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, 6);
        if (unit == Unit)
        {
            return this;
        }

        var factor = unit.NewtonMetresPerUnit();
        var step = new decimal(1, 0, 0, false, (byte)decimals);
        var exact = NewtonMetres / factor;
        if (rounding == LimitRounding.Up)
        {
            var up = Math.Round(exact, decimals, MidpointRounding.ToPositiveInfinity);
            return new EnteredTorque(up * factor < NewtonMetres ? up + step : up, unit);
        }

        var down = Math.Round(exact, decimals, MidpointRounding.ToNegativeInfinity);
        return new EnteredTorque(down * factor > NewtonMetres ? down - step : down, unit);
    }

    /// <summary>
    /// Reads what people write: "110", "1,5", "81 lbf·ft", "81 ft-lb", "2 kgm". Comma and point are both decimal marks and
    /// never group thousands. <paramref name="assumed"/> counts where no unit is written.
    /// False with <paramref name="problem"/> in plain words for anything that is not one clear number.
    /// </summary>
    public static bool TryParse(string? text, TorqueUnit assumed, out EnteredTorque value, out string? problem)
    {
        problem = TorqueText.Read(text, assumed, out value)?.OneLine;
        return problem is null;
    }

    /// <summary>As <see cref="TryParse"/>; throws <see cref="FormatException"/> with the problem in plain words.</summary>
    public static EnteredTorque Parse(string? text, TorqueUnit assumed = TorqueUnit.NewtonMetre) =>
        TryParse(text, assumed, out var value, out var problem) ? value : throw new FormatException(problem);

    /// <summary>Number as entered and unit, for example "110 N·m"; always with a decimal point.</summary>
    public override string ToString() => $"{Value.ToString(CultureInfo.InvariantCulture)} {Unit.Symbol()}";

    private static decimal InBounds(decimal value) => value is >= 0 and <= Largest
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, $"A torque is from 0 to {Largest}.");
}
