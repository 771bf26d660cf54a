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
        var permitted = new TorqueRange(least.Read(inputs), greatest.Read(inputs));
        var step = new WrenchStep(graduation.Read(inputs));
        var choice = TargetChooser.Choose(new TargetQuestion
        {
            Permitted = permitted,
            DeviationPercent = deviation.Read(inputs),
            Graduation = step.Size,
            ToolBottom = bottom.IsGiven(inputs) ? bottom.Read(inputs) : null,
            ToolTop = top.IsGiven(inputs) ? top.Read(inputs) : null,
            Jam = jam.IsGiven(inputs) ? jam.Read(inputs) : null,
            JamDeviationPercent = jam.IsGiven(inputs) ? jamDeviation.Read(inputs) : 0,
            SettingRatio = wrench.IsGiven(inputs) ? new AdapterSetting(wrench.Read(inputs), adapter.Read(inputs), Angle.Zero).Ratio : 1,
        });
        return choice switch
        {
            TargetChoice.Safe safe => TargetAnswers.Of(safe, permitted, step, units),
            TargetChoice.Stated stated => TargetAnswers.Of(stated, permitted, step, units),
            TargetChoice.None none => TargetAnswers.Of(none, permitted, units),
            _ => throw new InvalidOperationException("A choice is safe, stated or none."),
        };
    }
}
