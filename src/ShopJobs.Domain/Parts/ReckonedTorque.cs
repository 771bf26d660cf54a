using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>The torque at which an option's clamp load is reckoned: always one that its own instruction permits.</summary>
/// <param name="Torque">The torque at the fastener.</param>
/// <param name="Words">Why this one.</param>
internal sealed record ReckonedTorque(EnteredTorque Torque, string Words)
{
    /// <summary>
    /// The one value where one is stated; the procedure's target where range and jam allow it; else the middle of the room that
    /// <see cref="TargetChooser"/> leaves, or of the range where it leaves none. Null where the maker states no torque.
    /// </summary>
    public static ReckonedTorque? For(PartOption option, TorqueSpecification asked)
    {
        if (option.Torque?.Value is not { } permitted)
        {
            return null;
        }

        if (permitted.IsOneValue)
        {
            return new(permitted.Minimum, "the one value stated");
        }

        if (asked.Target is { } target && permitted.Contains(target) && IsBelowJam(target, option, asked))
        {
            return new(target, "this procedure's target");
        }

        return TargetChooser.Choose(Question(permitted, option, asked)) is TargetChoice.Safe safe
            ? new(safe.Target, "middle of the room that its instruction leaves")
            : new(Middle(permitted), "middle of its range");
    }

    private static bool IsBelowJam(EnteredTorque target, PartOption option, TorqueSpecification asked) =>
        (asked with { Jam = option.Jam?.Value, Target = target }).JamLimitNewtonMetres is not { } limit || target.NewtonMetres <= limit;

    private static TargetQuestion Question(TorqueRange permitted, PartOption option, TorqueSpecification asked) => new()
    {
        Permitted = permitted,
        DeviationPercent = asked.DeviationPercentAt(permitted.Minimum),
        Graduation = new EnteredTorque(0.1m, TorqueUnit.NewtonMetre),
        Jam = option.Jam?.Value,
        JamDeviationPercent = option.Jam is { } jam ? asked.JamToolDeviationPercent ?? ToolDeviation.ClassLimitPercent(jam.Value) : 0,
    };

    private static EnteredTorque Middle(TorqueRange permitted) => new(
        Math.Round((permitted.Minimum.NewtonMetres + permitted.Maximum.NewtonMetres) / 2, 1), TorqueUnit.NewtonMetre);
}
