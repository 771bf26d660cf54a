using CsCheck;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>The shop rule for a target in a range; the expected figures are own computation, no published source.</summary>
public class TargetChooserTests
{
    [Fact]
    public void A_stud_range_of_60_to_95_jammed_at_90_gives_73()
    {
        var choice = Assert.IsType<TargetChoice.Safe>(TargetChooser.Choose(Stud(jam: 90)));

        Assert.Equal("73 N·m", choice.Target.ToString());
        Assert.Equal(choice.Target, choice.Setting);
        Assert.Equal(62.5m, choice.Low.NewtonMetres);
        Assert.Equal(83.1m, Math.Round(choice.High.NewtonMetres, 1));
        Assert.Contains(choice.Limits, l => l.StartsWith("not below 62.5 N·m: the least permitted, 60 N·m", StringComparison.Ordinal));
        Assert.Contains(choice.Limits, l => l.StartsWith("not above 83.07 N·m: the jam torque, 90 N·m", StringComparison.Ordinal));
    }

    [Fact]
    public void A_jam_of_64_leaves_no_safe_target_and_says_why()
    {
        var none = Assert.IsType<TargetChoice.None>(TargetChooser.Choose(Stud(jam: 64)));

        Assert.Contains(none.Reasons, r => r.StartsWith("not below 62.5 N·m", StringComparison.Ordinal));
        Assert.Contains(none.Reasons, r => r.StartsWith("not above 59.07 N·m: the jam torque, 64 N·m", StringComparison.Ordinal));
        Assert.Contains(none.Reasons, r => r.Contains("raise the jam torque", StringComparison.Ordinal));
    }

    [Fact]
    public void The_range_of_the_tool_counts() => Assert.Equal("78 N·m", Assert.IsType<TargetChoice.Safe>(
        TargetChooser.Choose(Stud(jam: null) with { ToolBottom = Nm(65), ToolTop = Nm(500) })).Target.ToString());

    [Fact]
    public void No_graduation_inside_the_room_is_said()
    {
        var question = new TargetQuestion { Permitted = new(Nm(41), Nm(46)), DeviationPercent = 4, Graduation = Nm(5) };

        var none = Assert.IsType<TargetChoice.None>(TargetChooser.Choose(question));
        Assert.Contains(none.Reasons, r => r.Contains("steps of 5 N·m", StringComparison.Ordinal));
    }

    [Fact]
    public void With_an_adapter_the_setting_lies_on_the_graduation_and_the_target_at_the_fastener()
    {
        var question = new TargetQuestion
        {
            Permitted = new(Nm(14), Nm(18)),
            DeviationPercent = 4,
            Graduation = Nm(0.2m),
            SettingRatio = 320m / 350m,
        };

        var choice = Assert.IsType<TargetChoice.Safe>(TargetChooser.Choose(question));
        Assert.Equal(0, choice.Setting.Value % 0.2m);
        Assert.Equal((double)(choice.Setting.Value * 350 / 320), (double)choice.Target.Value, 0.005);
    }

    [Fact]
    public void A_target_in_the_tools_own_unit() => Assert.Equal("54 lbf·ft", Assert.IsType<TargetChoice.Safe>(
        TargetChooser.Choose(Stud(jam: 90) with { Graduation = new EnteredTorque(1, TorqueUnit.PoundForceFoot) })).Target.ToString());

    [Fact]
    public void A_chosen_target_is_inside_every_hard_limit() => Questions.Sample(
        q =>
        {
            if (TargetChooser.Choose(q) is not TargetChoice.Safe { Target.NewtonMetres: var t, Setting: var setting })
            {
                return true;
            }

            var w = q.DeviationPercent / 100;
            return t * (1 - w) >= q.Permitted.Minimum.NewtonMetres
                && t * (1 + w) <= q.Permitted.Maximum.NewtonMetres
                && (q.Jam is not { } jam || t * (1 + w) <= jam.NewtonMetres * (1 - (q.JamDeviationPercent / 100)))
                && setting.NewtonMetres >= q.ToolBottom!.Value.NewtonMetres
                && setting.NewtonMetres <= q.ToolTop!.Value.NewtonMetres
                && setting.Value % q.Graduation.Value == 0
                && Math.Abs((setting.NewtonMetres / q.SettingRatio) - t) <= (0.005m * q.Graduation.Unit.NewtonMetresPerUnit()) + 1e-20m;
        },
        iter: 20_000);

    [Fact]
    public void No_mark_of_the_tool_is_safe_when_none_is_chosen() => Questions.Sample(
        q =>
        {
            if (TargetChooser.Choose(q) is not TargetChoice.None)
            {
                return true;
            }

            var w = q.DeviationPercent / 100;
            for (var setting = q.Graduation.Value; setting <= 400; setting += q.Graduation.Value)
            {
                var s = new EnteredTorque(setting, q.Graduation.Unit).NewtonMetres;
                var t = s / q.SettingRatio;
                if (t * (1 - w) > q.Permitted.Minimum.NewtonMetres
                    && t * (1 + w) < q.Permitted.Maximum.NewtonMetres
                    && (q.Jam is not { } jam || t * (1 + w) < jam.NewtonMetres * (1 - (q.JamDeviationPercent / 100)))
                    && s >= q.ToolBottom!.Value.NewtonMetres && s <= q.ToolTop!.Value.NewtonMetres)
                {
                    return false;
                }
            }

            return true;
        },
        iter: 2_000);

    private static Gen<TargetQuestion> Questions =>
        from least in Gen.Decimal[5, 200]
        from width in Gen.Decimal[0, 60]
        from deviation in Gen.Decimal[0, 12]
        from graduation in Gen.OneOf(0.1m, 0.5m, 1m, 2m, 5m)
        from unit in Gen.Enum<TorqueUnit>()
        from jam in Gen.Decimal[5, 300]
        from paired in Gen.Bool
        from bottom in Gen.Decimal[1, 60]
        from top in Gen.Decimal[60, 400]
        from ratio in Gen.OneOf(1m, 320m / 350m, 1.2m, 0.7m)
        select new TargetQuestion
        {
            Permitted = new(Nm(least), Nm(least + width)),
            DeviationPercent = deviation,
            Graduation = new(graduation, unit),
            Jam = paired ? Nm(jam) : null,
            JamDeviationPercent = 4,
            ToolBottom = Nm(bottom),
            ToolTop = Nm(top),
            SettingRatio = ratio,
        };

    private static TargetQuestion Stud(decimal? jam) => new()
    {
        Permitted = new(Nm(60), Nm(95)),
        DeviationPercent = 4,
        Graduation = Nm(1),
        Jam = jam is { } value ? Nm(value) : null,
        JamDeviationPercent = 4,
    };

    private static EnteredTorque Nm(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
