using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Tools;

public class TorqueToolTests
{
    private static readonly TorqueTool W7 =
        new(new ToolId(Guid.Parse("7a5b1c1e-0000-4000-8000-000000000007")), "W7", "NB-0007", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1);

    [Theory]
    [InlineData("39.9", false)]
    [InlineData("40", true)]
    [InlineData("200", true)]
    [InlineData("200.1", false)]
    [InlineData("29 ft-lb", false)]
    [InlineData("30 ft-lb", true)]
    public void The_range_starts_at_the_lowest_marked_value(string torque, bool inside) =>
        Assert.Equal(inside, W7.IsInRange(EnteredTorque.Parse(torque)));

    /// <summary>Class limits of ISO 6789, from memory.</summary>
    [Theory]
    [InlineData("8", 6)]
    [InlineData("10", 6)]
    [InlineData("10.1", 4)]
    [InlineData("110", 4)]
    public void Without_a_certificate_the_class_limit_counts(string torque, int percent) =>
        Assert.Equal(percent, W7.ToleranceFor(EnteredTorque.Parse(torque)));

    [Fact]
    public void A_stated_deviation_replaces_the_class_limit() =>
        Assert.Equal(2, (W7 with { ClassDeviationPercent = 2 }).ToleranceFor(EnteredTorque.Parse("110")));

    [Fact]
    public void A_certificate_worse_than_the_class_limit_counts()
    {
        var tool = W7 with { Calibration = Certificate(new(40, 40), new(120, 113), new(200, 199)) };

        Assert.Equal(7 / 113m * 100, tool.ToleranceFor(EnteredTorque.Parse("110")));
    }

    [Fact]
    public void A_tool_that_delivers_too_much_counts_by_what_it_delivers()
    {
        var tool = W7 with { Calibration = Certificate(new(40, 40), new(100, 106), new(200, 200)) };

        Assert.Equal(6, tool.ToleranceFor(EnteredTorque.Parse("110")));
    }

    [Fact]
    public void It_asks_for_a_target_with_its_own_limits()
    {
        var jamTool = W7 with { Name = "W9", Calibration = Certificate(new(40, 40), new(100, 95), new(200, 200)) };
        var question = W7.TargetQuestion(
            new(EnteredTorque.Parse("60"), EnteredTorque.Parse("95")), jam: EnteredTorque.Parse("90"), jamTool: jamTool);

        Assert.Equal(4, question.DeviationPercent);
        Assert.Equal(5 / 95m * 100, question.JamDeviationPercent);
        Assert.Equal("40 N·m", question.ToolBottom.ToString());
        Assert.Equal("1 N·m", question.Graduation.ToString());
        Assert.Equal("72 N·m", Assert.IsType<TargetChoice.Safe>(TargetChooser.Choose(question)).Target.ToString());
    }

    [Fact]
    public void An_adapter_enters_the_question()
    {
        var adapter = new AdapterSetting(Length.FromMillimeters(400), Length.FromMillimeters(50), Angle.Zero);

        Assert.Equal(adapter.Ratio, W7.TargetQuestion(new(EnteredTorque.Parse("60"), EnteredTorque.Parse("95")), adapter).SettingRatio);
    }

    [Fact]
    public void A_tool_without_a_range_or_graduation_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => W7 with { Graduation = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(
            () => new TorqueTool(null, "W0", "", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 40, 1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(3001)]
    public void A_length_that_no_hand_tool_has_is_refused(int length) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => W7 with { LengthMm = length });

    private static Calibration Certificate(params CalibrationPoint[] asLeft) =>
        new(new DateOnly(2026, 3, 2), new DateOnly(2027, 3, 1), "Certificate 26-0311", [], asLeft);
}
