using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

public class TorqueRangeTests
{
    private static readonly TorqueRange Range = new(Nm(105), Nm(115));

    [Theory]
    [InlineData("104.999999", true, false)]
    [InlineData("105", false, false)]
    [InlineData("115", false, false)]
    [InlineData("115.000001", false, true)]
    public void Both_ends_are_inside_and_nothing_is_rounded(string value, bool under, bool over)
    {
        var torque = EnteredTorque.Parse(value);

        Assert.Equal(under, Range.IsUnder(torque));
        Assert.Equal(over, Range.IsOver(torque));
        Assert.Equal(!under && !over, Range.Contains(torque));
    }

    [Fact]
    public void A_reading_in_another_unit_is_compared_by_the_exact_factor()
    {
        var range = new TorqueRange(Nm(0), new EnteredTorque(108.465435866512032m, TorqueUnit.NewtonMetre));

        Assert.True(range.Contains(new EnteredTorque(80, TorqueUnit.PoundForceFoot)));
        Assert.True(range.IsOver(new EnteredTorque(80.000001m, TorqueUnit.PoundForceFoot)));
    }

    [Fact]
    public void A_minimum_above_the_maximum_is_refused_in_words()
    {
        Assert.Throws<ArgumentException>(() => new TorqueRange(Nm(95), Nm(60)));
        Assert.False(TorqueRange.TryCreate(Nm(95), Nm(60), out var range, out var problem));
        Assert.Null(range);
        Assert.Contains("95 N·m, is above the greatest, 60 N·m", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void In_another_unit_it_is_rounded_inwards() =>
        Assert.Equal("77.5 to 84.8 lbf·ft", Range.ToUnit(TorqueUnit.PoundForceFoot)!.ToString());

    [Fact]
    public void One_value_has_no_room_in_another_unit() => Assert.Null(new TorqueRange(Nm(90), Nm(90)).ToUnit(TorqueUnit.PoundForceFoot));

    [Fact]
    public void Half_width_is_about_the_middle() => Assert.Equal(0.2258m, Math.Round(new TorqueRange(Nm(60), Nm(95)).HalfWidth, 4));

    private static EnteredTorque Nm(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
