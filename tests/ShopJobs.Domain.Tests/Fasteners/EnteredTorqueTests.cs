using System.Globalization;
using CsCheck;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public class EnteredTorqueTests
{
    [Theory]
    [InlineData("110", "110", TorqueUnit.NewtonMetre)]
    [InlineData(" 110 ", "110", TorqueUnit.NewtonMetre)]
    [InlineData("1,5", "1.5", TorqueUnit.NewtonMetre)]
    [InlineData("1.50", "1.50", TorqueUnit.NewtonMetre)]
    [InlineData("1,10", "1.10", TorqueUnit.NewtonMetre)]
    [InlineData("110 Nm", "110", TorqueUnit.NewtonMetre)]
    [InlineData("110N·m", "110", TorqueUnit.NewtonMetre)]
    [InlineData("110 N.m", "110", TorqueUnit.NewtonMetre)]
    [InlineData("110 N⋅m", "110", TorqueUnit.NewtonMetre)]
    [InlineData("81 lbf·ft", "81", TorqueUnit.PoundForceFoot)]
    [InlineData("81 ft-lb", "81", TorqueUnit.PoundForceFoot)]
    [InlineData("81 FT.LBS", "81", TorqueUnit.PoundForceFoot)]
    [InlineData("81lb-ft", "81", TorqueUnit.PoundForceFoot)]
    [InlineData("81 ftlb", "81", TorqueUnit.PoundForceFoot)]
    [InlineData("250 inlb", "250", TorqueUnit.PoundForceInch)]
    [InlineData("250 in-lb", "250", TorqueUnit.PoundForceInch)]
    [InlineData("11 kgm", "11", TorqueUnit.KilogramForceMetre)]
    [InlineData("11,5 kgf·m", "11.5", TorqueUnit.KilogramForceMetre)]
    public void What_people_write_is_read_with_its_digits_and_unit(string text, string digits, TorqueUnit unit)
    {
        var torque = EnteredTorque.Parse(text);

        Assert.Equal(unit, torque.Unit);
        Assert.Equal($"{digits} {unit.Symbol()}", torque.ToString());
    }

    [Fact]
    public void A_number_without_unit_takes_the_assumed_one() =>
        Assert.Equal(new EnteredTorque(81, TorqueUnit.PoundForceFoot), EnteredTorque.Parse("81", TorqueUnit.PoundForceFoot));

    [Theory]
    [InlineData(null, "Nothing entered")]
    [InlineData("  ", "Nothing entered")]
    [InlineData("1.100,5", "a comma and a point")]
    [InlineData("1,100.5", "a comma and a point")]
    [InlineData("1.100.5", "more than one decimal mark")]
    [InlineData("-5", "sign")]
    [InlineData("−5", "sign")]
    [InlineData("+5", "sign")]
    [InlineData("1234567890", "more than 9 digits")]
    [InlineData("1.234567890", "more than 9 digits")]
    [InlineData("NaN", "does not start with a number")]
    [InlineData("∞", "does not start with a number")]
    [InlineData("٣٤", "does not start with a number")]
    [InlineData("1e3", "exponent")]
    [InlineData("1E+3", "exponent")]
    [InlineData("1 100", "space inside the number")]
    [InlineData("11.", "digits before and after")]
    [InlineData(",5", "digits before and after")]
    [InlineData("80 lb", "no unit known here")]
    [InlineData("80 kN.m", "no unit known here")]
    [InlineData("80 N/m", "no unit known here")]
    public void Anything_that_is_not_one_clear_number_is_refused_in_words(string? text, string words)
    {
        Assert.False(EnteredTorque.TryParse(text, TorqueUnit.NewtonMetre, out var value, out var problem));
        Assert.Contains(words, problem, StringComparison.Ordinal);
        Assert.Equal(default, value);
        Assert.Throws<FormatException>(() => EnteredTorque.Parse(text));
    }

    [Fact]
    public void A_torque_is_never_below_zero_or_beyond_reason()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new EnteredTorque(-0.1m, TorqueUnit.NewtonMetre));
        Assert.Throws<ArgumentOutOfRangeException>(() => new EnteredTorque(1_000_000_000_001m, TorqueUnit.NewtonMetre));
    }

    [Fact]
    public void The_largest_torque_that_can_be_typed_has_a_value_in_every_unit()
    {
        var largest = EnteredTorque.Parse("999999999 kgm");

        Assert.All(Enum.GetValues<TorqueUnit>(), unit => Assert.True(largest.ToUnit(unit, LimitRounding.Down).NewtonMetres <= largest.NewtonMetres));
    }

    [Fact]
    public void Text_reads_back_to_the_same_digits_and_unit_in_any_culture() => Gen.Select(Digits, Unit).Sample((value, unit) =>
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var torque = new EnteredTorque(value, unit);
            var read = EnteredTorque.Parse(torque.ToString());
            return read == torque && read.ToString() == torque.ToString();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    });

    [Fact]
    public void A_limit_shown_in_another_unit_never_permits_more_than_the_limit() =>
        Gen.Select(Digits, Unit, Unit, Gen.Int[0, 3]).Sample((value, unit, other, decimals) =>
        {
            var limit = new EnteredTorque(value, unit);
            var up = limit.ToUnit(other, LimitRounding.Up, decimals);
            var down = limit.ToUnit(other, LimitRounding.Down, decimals);
            var step = (decimal)Math.Pow(10, -decimals) * other.NewtonMetresPerUnit();
            return up.NewtonMetres >= limit.NewtonMetres && up.NewtonMetres - limit.NewtonMetres <= step
                && down.NewtonMetres <= limit.NewtonMetres && limit.NewtonMetres - down.NewtonMetres <= step;
        });

    /// <summary>Own arithmetic on the exact factors (NIST SP 811, appendix B), rounded to 0.1.</summary>
    [Theory]
    [InlineData(50, 67.8)]
    [InlineData(65, 88.1)]
    [InlineData(70, 94.9)]
    [InlineData(80, 108.5)]
    public void Pound_force_feet_in_newton_metres(int pounds, double newtonMetres) => Assert.Equal(
        (decimal)newtonMetres, Math.Round(new EnteredTorque(pounds, TorqueUnit.PoundForceFoot).NewtonMetres, 1));

    [Fact]
    public void As_a_quantity_it_is_the_same_torque() => Assert.Equal(
        108.46543586651203, new EnteredTorque(80, TorqueUnit.PoundForceFoot).ToTorque().NewtonMeters, 1e-12);

    private static Gen<decimal> Digits => Gen.Select(Gen.Int[0, 9_999_999], Gen.Int[0, 3], (n, d) => new decimal(n, 0, 0, false, (byte)d));

    private static Gen<TorqueUnit> Unit => Gen.Enum<TorqueUnit>();
}
