using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A target inside a permitted range, with a tool.</summary>
public sealed class TargetCard : BenchCard
{
    private readonly TorqueField least = new("least", "Least permitted torque") { Example = "60" };
    private readonly TorqueField greatest = new("greatest", "Greatest permitted torque") { Example = "95" };
    private readonly NumberField deviation = new("deviation", "The wrench may be off by", "%", 0, 50) { Example = "4", Hint = "The larger of its class limit and its last certificate." };
    private readonly TorqueField graduation = new("graduation", "Steps of the wrench") { Example = "1" };
    private readonly TorqueField bottom = new("bottom", "Lowest mark of the wrench") { Example = "40", IsOptional = true };
    private readonly TorqueField top = new("top", "Top of the wrench") { Example = "200", IsOptional = true };
    private readonly TorqueField jam = new("jam", "Jam torque, where two nuts drive a stud") { IsOptional = true, IsMore = true };
    private readonly NumberField jamDeviation;
    private readonly LengthField wrench = new("wrench", "Wrench: square drive to the mark of the hand") { IsOptional = true, IsMore = true, Hint = "Only with an adapter." };
    private readonly LengthField adapter;

    public TargetCard()
    {
        jamDeviation = new("jam-deviation", "The wrench that jams may be off by", "%", 0, 50) { Example = "4", IsMore = true, IsAsked = jam.IsGiven };
        adapter = new("adapter", "Adapter, straight out: square drive to the fastener") { IsMore = true, IsAsked = wrench.IsGiven };
    }

    /// <inheritdoc/>
    public override string Key => "target";

    /// <inheritdoc/>
    public override string Question => "Which target in a permitted range?";

    /// <inheritdoc/>
    public override string Use => "The room that the instruction and the wrench leave, the choice in it, and what would widen it.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [least, greatest, deviation, graduation, bottom, top, jam, jamDeviation, wrench, adapter];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["from max(Tmin/(1 − w), lowest mark)", "to min(Tmax/(1 + w), Tj (1 − wj)/(1 + w), top)", "target = the mark nearest to the middle"],
        [
            new("Tmin, Tmax", "least and greatest permitted torque, N·m"), new("w", "deviation of the wrench, as a fraction"),
            new("Tj, wj", "jam torque, and deviation of the wrench that jams"),
        ],
        "The shop's own rule, no published source; deviation by ISO 6789.",
        "Only what the instruction states and what the wrench can do bounds the room. Where the maker states one value nothing is chosen.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (!TorqueRange.TryCreate(least.Read(inputs), greatest.Read(inputs), out _, out var problem))
        {
            yield return new(least, problem);
        }

        if (bottom.IsGiven(inputs) && top.IsGiven(inputs) && bottom.Read(inputs).NewtonMetres >= top.Read(inputs).NewtonMetres)
        {
            yield return new(top, "The top of the wrench must be above its lowest mark.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var units = inputs.Units;
        var choice = TargetChooser.Choose(new TargetQuestion
        {
            Permitted = new TorqueRange(least.Read(inputs), greatest.Read(inputs)),
            DeviationPercent = deviation.Read(inputs),
            Graduation = graduation.Read(inputs),
            ToolBottom = bottom.IsGiven(inputs) ? bottom.Read(inputs) : null,
            ToolTop = top.IsGiven(inputs) ? top.Read(inputs) : null,
            Jam = jam.IsGiven(inputs) ? jam.Read(inputs) : null,
            JamDeviationPercent = jam.IsGiven(inputs) ? jamDeviation.Read(inputs) : 0,
            SettingRatio = wrench.IsGiven(inputs) ? new AdapterSetting(wrench.Read(inputs), adapter.Read(inputs), Angle.Zero).Ratio : 1,
        });
        return choice switch
        {
            TargetChoice.Safe safe => new BenchAnswer((safe.Setting == safe.Target
                ? $"Set {units.Say(safe.Target)}"
                : $"Set {units.Say(safe.Setting)} for {units.Say(safe.Target)} at the fastener") + $": {Room(safe, units)} is safe.")
            {
                Lists = [new("Limits", safe.Limits), Widening(choice)],
                Cautions = choice.Cautions,
            },
            TargetChoice.Stated stated => new BenchAnswer($"One value is stated: set {units.Say(stated.Setting)}. Nothing is chosen.")
            {
                Cautions = stated.Conflicts,
                Lists = [Widening(choice)],
            },
            TargetChoice.None none => new BenchAnswer("No safe target exists with this wrench.") { Cautions = none.Reasons, Lists = [Widening(choice)] },
            _ => throw new InvalidOperationException("A choice is safe, stated or none."),
        };
    }

    /// <summary>The safe interval in tenths, rounded inwards.</summary>
    private static string Room(TargetChoice.Safe safe, BenchUnits units)
    {
        return $"{Inwards(safe.Low, MidpointRounding.ToPositiveInfinity)} to {Inwards(safe.High, MidpointRounding.ToNegativeInfinity)}";

        string Inwards(EnteredTorque end, MidpointRounding rounding) =>
            units.Say(new EnteredTorque(Math.Round(end.NewtonMetres / units.TorqueUnit.NewtonMetresPerUnit(), 1, rounding), units.TorqueUnit));
    }

    private static BenchList Widening(TargetChoice choice) => new("What would widen it", choice.Widening);
}
