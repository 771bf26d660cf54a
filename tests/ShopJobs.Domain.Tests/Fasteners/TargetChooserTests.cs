using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

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

    [Fact]
    public void Where_the_maker_states_one_value_nothing_is_chosen()
    {
        var stated = Assert.IsType<TargetChoice.Stated>(TargetChooser.Choose(Stud(jam: null) with { Permitted = new(Nm(90), Nm(90)), ToolTop = Nm(100) }));

        Assert.Equal(("90 N·m", "90 N·m"), (stated.Value.ToString(), stated.Setting.ToString()));
        Assert.Empty(stated.Conflicts);
    }

    [Fact]
    public void A_stated_value_the_tool_or_the_jam_does_not_allow_is_said_and_kept()
    {
        var stated = Assert.IsType<TargetChoice.Stated>(TargetChooser.Choose(Stud(jam: 90) with { Permitted = new(Nm(90), Nm(90)), ToolTop = Nm(80) }));

        Assert.Equal("90 N·m", stated.Value.ToString());
        Assert.Contains(stated.Conflicts, c => c.StartsWith("not above 83.07 N·m: the jam torque", StringComparison.Ordinal));
        Assert.Contains(stated.Conflicts, c => c.StartsWith("not above 80 N·m: the tool ends at 80 N·m", StringComparison.Ordinal));
    }

    /// <summary>Own computation: with 2 % in place of 4 % the lower end is 60/0.98 = 61.23 N·m.</summary>
    [Fact]
    public void The_choice_says_what_would_widen_it()
    {
        var choice = TargetChooser.Choose(Stud(jam: 90));

        Assert.Equal(
            ["a tool with half the deviation would let it start at 61.23 N·m", "a higher jam torque, as the maker allows, or tools with less deviation would let it go higher"],
            choice.Widening);
        Assert.Contains(TargetChooser.Choose(Stud(jam: 64)).Widening, w => w.StartsWith("a higher jam torque", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_hard_limit_has_its_sentence() => Assert.Equal(
        5, Assert.IsType<TargetChoice.Safe>(TargetChooser.Choose(Stud(jam: 90) with { ToolBottom = Nm(20), ToolTop = Nm(100) })).Limits.Count);

    [Fact]
    public void Computed_limits_are_said_and_move_nothing() => Gen.Select(Questions, Gen.Double[1, 300], Gen.Double[0, 200]).Sample((q, earliest, more) =>
    {
        var limit = new ComputedLimit("proof load", Torque.FromNewtonMeters(earliest), Torque.FromNewtonMeters(earliest + more), "the proof load is reached");
        var (plain, drawn) = (TargetChooser.Choose(q), TargetChooser.Choose(q with { Computed = [limit] }));
        return (plain, drawn) switch
        {
            (TargetChoice.Safe a, TargetChoice.Safe b) => (a.Target, a.Setting, a.Low, a.High) == (b.Target, b.Setting, b.Low, b.High)
                && b.Cautions.Count == (limit.MayBeReachedBy(b.Target, q.DeviationPercent) ? 1 : 0),
            (TargetChoice.None, TargetChoice.None) => true,
            (TargetChoice.Stated a, TargetChoice.Stated b) => a.Value == b.Value,
            _ => false,
        };
    });

    [Fact]
    public void The_unit_a_range_is_written_in_does_not_change_the_choice() => Gen.Select(Questions, Gen.Enum<TorqueUnit>()).Sample((q, unit) =>
    {
        var written = new TorqueRange(In(q.Permitted.Minimum), In(q.Permitted.Maximum));
        var metric = new TorqueRange(Nm(written.Minimum.NewtonMetres), Nm(written.Maximum.NewtonMetres));
        return (TargetChooser.Choose(q with { Permitted = written }), TargetChooser.Choose(q with { Permitted = metric })) switch
        {
            (TargetChoice.Safe a, TargetChoice.Safe b) => (a.Target, a.Setting, a.Low, a.High) == (b.Target, b.Setting, b.Low, b.High),
            var (a, b) => a.GetType() == b.GetType(),
        };

        EnteredTorque In(EnteredTorque torque) => new(Math.Round(torque.NewtonMetres / unit.NewtonMetresPerUnit(), 2), unit);
    });

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
