namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Chooses the target inside a permitted range: lo = max(Tmin/(1 - w), tool bottom), hi = min(Tmax/(1 + w),
/// Tjam (1 - w_jam)/(1 + w), tool top), then the middle on a graduation of the tool. The guard band is spent here, once;
/// a record is later compared with the permitted range itself. Shop rule, no published source. Decimal throughout.
/// </summary>
public static class TargetChooser
{
    /// <summary>The target; the one stated value, where nothing is chosen; or the reasons why none is safe.</summary>
    public static TargetChoice Choose(TargetQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.SettingRatio);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.Graduation.Value);
        var limits = TargetLimits.Of(question);
        if (question.Permitted.IsOneValue)
        {
            return Stated(question, limits);
        }

        var low = limits.Where(l => l.IsLower).MaxBy(l => l.NewtonMetres)!;
        var high = limits.Where(l => !l.IsLower).MinBy(l => l.NewtonMetres)!;
        if (low.NewtonMetres > high.NewtonMetres)
        {
            return new TargetChoice.None([
                low.ToString(), high.ToString(),
                "no torque meets both: use a tool with less deviation or more range, raise the jam torque as the maker allows, or call the lead"])
            { Widening = [low.Widening, high.Widening] };
        }

        return (TargetChoice?)OnAMark(question, limits, low, high) ?? new TargetChoice.None([
            low.ToString(), high.ToString(),
            $"no mark of the tool lies between: it is graduated in steps of {question.Graduation}; use a finer tool"])
        { Widening = ["a tool with finer steps would have a mark inside", low.Widening, high.Widening] };
    }

    /// <summary>The mark nearest to the middle that meets every limit, or its neighbour; null where neither does.</summary>
    private static TargetChoice.Safe? OnAMark(TargetQuestion question, IReadOnlyList<TargetLimit> limits, TargetLimit low, TargetLimit high)
    {
        var unit = question.Graduation.Unit;
        var factor = unit.NewtonMetresPerUnit() / question.SettingRatio;
        var middle = (low.NewtonMetres + high.NewtonMetres) / 2 / factor / question.Graduation.Value;
        var nearest = Math.Ceiling(middle - 0.5m);
        foreach (var marks in new[] { nearest, nearest <= middle ? nearest + 1 : nearest - 1 })
        {
            var setting = new EnteredTorque(marks * question.Graduation.Value, unit);
            var exact = setting.Value / question.SettingRatio;
            var rounded = question.SettingRatio == 1 ? exact : Math.Round(exact, 2);
            foreach (var target in new[] { new EnteredTorque(rounded, unit), new EnteredTorque(exact, unit) })
            {
                if (limits.All(l => l.IsMetBy(target, setting)))
                {
                    return new TargetChoice.Safe(
                        target, InNewtonMetres(low), InNewtonMetres(high), [.. limits.Select(l => l.ToString())])
                    {
                        Setting = setting,
                        Widening = [low.Widening, high.Widening],
                        Cautions = CautionsAt(question, target),
                    };
                }
            }
        }

        return null;
    }

    private static TargetChoice.Stated Stated(TargetQuestion question, IReadOnlyList<TargetLimit> limits)
    {
        var value = question.Permitted.Minimum;
        var setting = value with { Value = value.Value * question.SettingRatio };
        var conflicts = limits.Where(l => !l.IsOfPermitted && !l.IsMetBy(value, setting)).ToList();
        return new TargetChoice.Stated(value, setting, [.. conflicts.Select(l => l.ToString())])
        {
            Widening = [.. conflicts.Select(l => l.Widening)],
            Cautions = CautionsAt(question, value),
        };
    }

    private static IReadOnlyList<string> CautionsAt(TargetQuestion question, EnteredTorque target) =>
        [.. question.Computed.Where(limit => limit.MayBeReachedBy(target, question.DeviationPercent)).Select(limit => limit.Sentence)];

    private static EnteredTorque InNewtonMetres(TargetLimit limit) => new(limit.NewtonMetres, TorqueUnit.NewtonMetre);
}
