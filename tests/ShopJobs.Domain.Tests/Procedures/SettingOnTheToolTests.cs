using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>What a document says of run-down torque and adapter, and what is set on the wrench by it.</summary>
public class SettingOnTheToolTests
{
    private const string Hardware = "hardware: {name: nut, reuse: allowed}";
    private const string Crowfoot = "adapter: {name: crowfoot, length: 30 mm, wrench: 320 mm, angle: 0 deg}";

    [Fact]
    public void An_adapter_lowers_the_setting_by_its_lever()
    {
        var nuts = Nuts(With(Crowfoot));
        // F7: 110 x 320/350.
        Assert.Equal(100.571m, Math.Round(nuts.SettingFor(nuts.Final, null).Value, 3));
        Assert.Equal(nuts.Source, nuts.Adapter!.Source);
    }

    [Fact]
    public void The_length_of_the_tool_in_hand_goes_before_the_stated_one()
    {
        var nuts = Nuts(With(Crowfoot));
        var tool = new TorqueTool(null, "W7", "", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1);
        // F7: 110 x 500/530 on the tool; 110 x 320/350 where its length is not entered.
        Assert.Equal(103.774m, Math.Round(nuts.SettingFor(nuts.Final, null, tool with { LengthMm = 500 }).Value, 3));
        Assert.Equal(100.571m, Math.Round(nuts.SettingFor(nuts.Final, null, tool).Value, 3));
        Assert.Equal((true, false), (nuts.KnowsSettingOf(tool with { LengthMm = 500 }), nuts.KnowsSettingOf(tool)));
    }

    [Fact]
    public void An_adapter_at_a_right_angle_leaves_the_setting_as_it_is()
    {
        var nuts = Nuts(With("adapter: {name: spanner, length: 75 mm, wrench: 400 mm, angle: 90 deg}"));
        Assert.Equal(110m, nuts.SettingFor(nuts.Final, null).Value);
    }

    [Fact]
    public void A_run_down_torque_is_added_before_the_adapter()
    {
        var nuts = Nuts(With($"run-down: add\n    run-down-permitted: 1..10 N·m\n    {Crowfoot}"));
        // (110 + 4) x 320/350.
        Assert.Equal(104.229m, Math.Round(nuts.SettingFor(nuts.Final, EnteredTorque.Parse("4 N·m")).Value, 3));
    }

    [Fact]
    public void A_run_down_torque_in_another_unit_is_added_by_the_exact_factor()
    {
        var nuts = Nuts(With("run-down: add\n    run-down-permitted: 1..10 N·m"));
        // 10 lbf·in = 1.1298 N·m (exact factor 0.1129848290276167).
        Assert.Equal(111.12985m, Math.Round(nuts.SettingFor(nuts.Final, EnteredTorque.Parse("10 lbf·in")).Value, 5));
    }

    [Fact]
    public void A_run_down_torque_that_is_in_the_stated_one_is_not_added()
    {
        var nuts = Nuts(With("run-down: includes"));
        Assert.Equal(110m, nuts.SettingFor(nuts.Final, EnteredTorque.Parse("4 N·m")).Value);
    }

    [Theory]
    [InlineData("run-down: add", "“run-down-permitted” is missing")]
    [InlineData("run-down-permitted: 1..10 N·m", "The run-down torque is not added here")]
    [InlineData("adapter: {name: crowfoot, length: 320 mm, wrench: 320 mm, angle: 180 deg}", "Wrench and adapter leave no lever")]
    [InlineData("adapter: {name: crowfoot, length: 30 mm, wrench: 320 mm}", "“angle” is missing")]
    [InlineData("adapter: {name: crowfoot, length: 30, wrench: 320 mm, angle: 0 deg}", "“30” is not a number of mm")]
    public void What_is_not_whole_is_refused(string lines, string said) =>
        Assert.Contains(With(lines).Errors, problem => problem.What.Contains(said, StringComparison.Ordinal));

    private static LoadedDocument<Procedure> With(string lines) => Written.With(Hardware, $"{Hardware}\n    {lines}");

    private static JointGroup Nuts(LoadedDocument<Procedure> loaded)
    {
        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        return loaded.Value!.Group("nuts");
    }
}
