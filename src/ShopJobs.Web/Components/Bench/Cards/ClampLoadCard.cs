using FluentValidation;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using ShopJobs.Web.Components.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>Torque to clamp load, against what the joint bears.</summary>
public sealed class ClampLoadCard : BenchCard
{
    private static readonly TorqueSpecificationValidator Validator = new();

    private readonly ThreadField thread = new();
    private readonly TorqueField torque = new("torque", "Torque") { Example = "110" };
    private readonly StrengthField strength = new() { IsOptional = true };
    private readonly SeatFields seat;
    private readonly ChoiceField<BenchFriction> friction = FrictionField.New();
    private readonly NumberField deviation = new("deviation", "The wrench may be off by", "%", 0, 50)
    {
        IsOptional = true,
        Hint = "Empty: 6 % up to 10 N·m, 4 % above (ISO 6789).",
    };

    private readonly TorqueField least = new("least", "Least permitted torque") { IsOptional = true, IsMore = true };
    private readonly TorqueField greatest = new("greatest", "Greatest permitted torque") { IsOptional = true, IsMore = true };
    private readonly ChoiceField<Pressure> face = new("face", "The face under the head or nut is",
        [.. BearingPressure.Guide.Select(guide => new BenchChoice<Pressure>(
            guide.Material.ToLowerInvariant().Replace(' ', '-'), FormattableString.Invariant($"{guide.Material}, {guide.Limit.Megapascals:0} MPa"), guide.Limit))])
    {
        IsOptional = true,
        IsMore = true,
        Hint = "For flat faces. Guide values of VDI 2230; the part's own value counts before them.",
    };

    private readonly LengthField engaged = new("engaged", "Engaged thread") { IsOptional = true, IsMore = true };
    private readonly NumberField part = new("part", "Tensile strength of the nut or part", "MPa", 50, 2500)
    {
        IsOptional = true,
        IsMore = true,
        Hint = "With the engaged thread it gives the load that strips it.",
    };

    public ClampLoadCard() => seat = new SeatFields(thread);

    /// <inheritdoc/>
    public override string Key => "clamp-load";

    /// <inheritdoc/>
    public override string Question => "What clamp load does this torque give?";

    /// <inheritdoc/>
    public override string Use => "The band between a dry pull with a low wrench and an oily one with a high wrench, against what the bolt bears.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields =>
        [thread, torque, strength, .. seat.All, friction, deviation, least, greatest, face, engaged, part];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        [
            "T = F (P/2π + µt d2/(2 cos 30°) + µb r)",
            "least F = F(T (1 − w), greatest µ); greatest F = F(T (1 + w), least µ)",
            "proof load Fp = Sp As; while tightening √(σ² + 3 τ²) against Rp",
        ],
        [
            new("T", "torque, N·m"), new("F", "clamp load, N"), new("P, d2", "pitch and pitch diameter, mm"),
            new("µt, µb", "friction in the thread and under the head; taken as equal here"),
            new("r", "lever of the face's friction, mm: half its mean diameter; on a cone divided by the sine of half its angle"),
            new("w", "deviation of the wrench, as a fraction"), new("Sp, Rp", "proof stress and yield, MPa"), new("As", "stress area, mm²"),
        ],
        "VDI 2230 (long form, stress while tightening); ISO 898-1, SAE J429, ISO 3506-1 (strength, partly from memory); friction by condition: common practice, no source.",
        "Elastic, steady friction, no run-down torque. One seat's torque never carries over to another. A shank thinner than the thread yields sooner.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        foreach (var problem in seat.Problems(inputs))
        {
            yield return problem;
        }

        if (least.IsGiven(inputs) != greatest.IsGiven(inputs))
        {
            yield return new(least.IsGiven(inputs) ? greatest : least, "Write both ends of the permitted range, or neither.");
        }
        else if (least.IsGiven(inputs) && !TorqueRange.TryCreate(least.Read(inputs), greatest.Read(inputs), out _, out var problem))
        {
            yield return new(least, problem);
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var specification = Specification(inputs);
        var set = torque.Read(inputs);
        var standing = ClampStanding.Of(specification, set, ThreadCondition.Dry, ThreadCondition.Oiled, ThreadCondition.Locker);
        var units = inputs.Units;
        if (standing.Rows[0].Band is not ClampBand.Computed band)
        {
            return new BenchAnswer("Not computed", "No band is computed for this.")
            {
                Pictures = [units.Torques(units.Mark("torque", set))],
                Clamp = standing,
            };
        }

        var joint = JointGeometry.For(specification.Thread, specification.Seat!);
        var loosens = ClampLoad.LooseningTorque(joint, band.Nominal, specification.Friction!.Nominal, specification.Friction.Nominal);
        return new BenchAnswer(
            units.Range(band.Minimum, band.Maximum),
            $"{units.Say(set)} ({ClampWords.Of(specification.Condition)}) clamps {units.Range(band.Minimum, band.Maximum)}, expected {units.Say(band.Nominal)}.")
        {
            Pictures = [Drawn(units, standing, band)],
            Clamp = standing,
            Lines =
            [
                Line("Least", band.Minimum, band.Utilisation?.Minimum, band.WhileTightening?.Minimum),
                Line("Expected", band.Nominal, band.Utilisation?.Nominal, band.WhileTightening?.Nominal),
                Line("Greatest", band.Maximum, band.Utilisation?.Maximum, band.WhileTightening?.Maximum),
                new("Greatest over least", FormattableString.Invariant($"{band.TighteningFactor:0.0}"), "tightening factor alpha A"),
                new("Begins to loosen at", units.Say(loosens), "at the expected load and friction, if nothing else holds it"),
            ],
            Cautions = [.. Validator.Validate(specification).Errors.Where(found => found.Severity == Severity.Warning).Select(found => found.ErrorMessage)],
        };

        BenchLine Line(string what, Force load, double? ofProof, double? ofYield) => new(what, units.Say(load), string.Join(", ",
            new[]
            {
                ofProof is { } proof ? FormattableString.Invariant($"{proof:0 %} of proof load") : null,
                ofYield is { } yield ? FormattableString.Invariant($"{yield:0 %} of yield while tightening") : null,
            }.Where(words => words is not null)));
    }

    /// <summary>The stated condition on one line; the others stand below it, each on its own.</summary>
    private static NumberLine Drawn(BenchUnits units, ClampStanding standing, ClampBand.Computed band) => UnitsOnALine.Loads(
    [
        units.Mark("expected", band.Nominal),
        .. standing.Limits.Select(limit => units.Mark(ClampWords.Of(limit.Kind), limit.Load, LineMarkKind.Limit)),
    ])
    with
    {
        Span = units.Span("least to greatest", band.Minimum, band.Maximum),
        Permitted = standing.Rows[0].Permitted is { } range ? units.Span("permitted torque gives", range.Least, range.Greatest) : null,
    };

    private TorqueSpecification Specification(BenchInputs inputs)
    {
        var picked = friction.Read(inputs);
        return new TorqueSpecification
        {
            Thread = thread.Read(inputs),
            Class = strength.IsGiven(inputs) ? strength.Read(inputs) : null,
            Seat = seat.Read(inputs),
            Condition = picked.Condition,
            StatedFriction = picked.Condition is null ? picked.Band : null,
            Target = torque.Read(inputs),
            Permitted = least.IsGiven(inputs) ? new TorqueRange(least.Read(inputs), greatest.Read(inputs)) : null,
            ToolDeviationPercent = deviation.IsGiven(inputs) ? deviation.Read(inputs) : null,
            BearingLimit = face.IsGiven(inputs) ? face.Read(inputs) : null,
            Engaged = engaged.IsGiven(inputs) ? engaged.Read(inputs) : null,
            PartTensile = part.IsGiven(inputs) ? Pressure.FromMegapascals((double)part.Read(inputs)) : null,
            Risk = RiskClass.B,
        };
    }
}
