namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Chooses the target inside a permitted range: lo = max(Tmin/(1 - w), tool bottom), hi = min(Tmax/(1 + w),
/// Tjam (1 - w_jam)/(1 + w), tool top), then the middle on a graduation of the tool. The guard band is spent here, once;
/// a record is later compared with the permitted range itself. Shop rule, no published source. Decimal throughout.
/// </summary>
public static class TargetChooser
{
    /// <summary>The target, or the reasons why none is safe. Where an instruction states one value nothing is chosen: do not ask.</summary>
    public static TargetChoice Choose(TargetQuestion question)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.SettingRatio);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(question.Graduation.Value);
        var limits = TargetLimits.Of(question);
        var low = limits.Where(l => l.IsLower).MaxBy(l => l.NewtonMetres)!;
        var high = limits.Where(l => !l.IsLower).MinBy(l => l.NewtonMetres)!;
        if (low.NewtonMetres > high.NewtonMetres)
        {
            return new TargetChoice.None([
                low.ToString(), high.ToString(),
                "no torque meets both: use a tool with less deviation or more range, raise the jam torque as the maker allows, or call the lead"]);
        }

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
                    { Setting = setting };
                }
            }
        }

        return new TargetChoice.None([
            low.ToString(), high.ToString(),
            $"no mark of the tool lies between: it is graduated in steps of {question.Graduation}; use a finer tool"]);
    }

    private static EnteredTorque InNewtonMetres(TargetLimit limit) => new(limit.NewtonMetres, TorqueUnit.NewtonMetre);
}
