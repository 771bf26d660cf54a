using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>Two nuts jammed on a stud to drive it.</summary>
public sealed class NutPairCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly TorqueField jam = new("jam", "Jam torque of the two nuts") { Example = "90" };
    private readonly TorqueField drive = new("drive", "Torque that drives the stud") { Example = "73" };
    private readonly StrengthField strength = new() { IsOptional = true };
    private readonly LengthField face = new("face", "Mean diameter of the face between the nuts")
    {
        IsOptional = true,
        IsMore = true,
        Hint = "Empty: two plain hexagon nuts of the size.",
    };

    /// <inheritdoc/>
    public override string Key => "two-nuts";

    /// <inheritdoc/>
    public override string Question => "Do two jammed nuts drive this stud?";

    /// <inheritdoc/>
    public override string Use => "From which driving torque the pair may creep along the stud, and what happens with the wrong nut.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, jam, drive, strength, face];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["Fj = Tj/(P/2π + 0.577 µ d2 + µ Dm/2)", "pair creeps from 1.155 µ d2 Fj", "wrong nut backs off at Fj (0.577 µ d2 − P/2π + µ Dm/2)"],
        [
            new("Tj", "jam torque, N·m"), new("Fj", "load between the nuts, N"), new("P, d2", "pitch and pitch diameter, mm"),
            new("Dm", "mean diameter of the face between the nuts, mm"), new("µ", "friction, 0.08 to 0.16, in the threads and between the nuts"),
        ],
        "Own statics, no published source, untested on a bench; friction: common practice, no source.",
        "Outer nut driven, inner nut held while jamming. A line of paint across both nuts and the stud's end tells what really happened.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (!face.IsGiven(inputs) && NutPair.PlainNutFace(thread.Read(inputs)) is null)
        {
            yield return new(face, $"No plain nut is tabled for {thread.Read(inputs)}: write the mean diameter of the face.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size, jammed, driven) = (inputs.Units, thread.Read(inputs), jam.Read(inputs), drive.Read(inputs));
        var mean = face.IsGiven(inputs) ? face.Read(inputs) : NutPair.PlainNutFace(size)!.Value;
        var friction = NutPair.AssumedFriction;
        var creep = NutPair.Creep(size, mean, jammed, friction);
        var wanted = driven.ToTorque();
        var yield = strength.IsGiven(inputs) && strength.Read(inputs).YieldLoad(size) is not null
            ? strength.Read(inputs).YieldStress(size.NominalDiameter) : null;
        var (low, high) = (units.Computed(At(creep.AtLowFriction), driven), units.Computed(At(creep.AtHighFriction), driven));
        var (verdict, why) = driven.NewtonMetres >= jammed.NewtonMetres
            ? ("No", $"the nuts jammed at {units.Say(jammed)} turn against each other before {units.Say(driven)} is reached")
            : wanted < creep.AtLowFriction
                ? ("Yes", $"the pair may creep from {low}, and {units.Say(driven)} stays below")
                : wanted < creep.AtHighFriction
                    ? ("Perhaps", $"the pair may creep from {low} at low friction, {high} at high")
                    : ("No", $"the pair creeps from {high} even at high friction");
        return new BenchAnswer(verdict, $"{verdict}: {why}.")
        {
            Pictures =
            [
                units.Torques(units.Mark("drives the stud", driven), units.Mark("jam torque", jammed, LineMarkKind.Limit)) with
                {
                    Span = units.Span("the pair creeps from, by friction", creep.AtLowFriction, creep.AtHighFriction),
                },
            ],
            Lines =
            [
                new("Creeps from, at low friction", low, FormattableString.Invariant($"friction {friction.Low:0.00}")),
                new("Creeps from, at high friction", high, FormattableString.Invariant($"friction {friction.High:0.00}")),
                new("Load between the nuts", units.Range(JamLoad(friction.High), JamLoad(friction.Low))),
                new("Wrong nut backs off at", units.Range(WrongNut(friction.Low), WrongNut(friction.High)), "when the inner nut is driven"),
                .. yield is { } limit
                    ? new BenchLine[]
                    {
                        new("Stud between the nuts", FormattableString.Invariant($"{NutPair.StudUtilisation(size, mean, jammed.ToTorque(), wanted, friction.Low, limit):0 %} of yield"),
                            "at low friction; above 90 % the stud itself is the limit"),
                    }
                    : [],
            ],
            Cautions = wanted < creep.AtLowFriction && driven.NewtonMetres < jammed.NewtonMetres
                ? []
                : ["If the line of paint is broken the torque is void. Jam higher as the maker allows, use another way of driving, or ask the lead."],
        };

        static EnteredTorque At(Torque torque) => new((decimal)torque.NewtonMeters, TorqueUnit.NewtonMetre);
        Force JamLoad(double mu) => NutPair.JamLoad(size, mean, jammed.ToTorque(), mu);
        Torque WrongNut(double mu) => NutPair.WrongNutBreak(size, mean, jammed.ToTorque(), mu);
    }
}
