using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>What a bolt of a class bears, and the nut that goes with it.</summary>
public sealed class StrengthCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly StrengthField strength = new();
    private readonly ChoiceField<NutClass> nut = NutClassField.New();

    /// <inheritdoc/>
    public override string Key => "strength";

    /// <inheritdoc/>
    public override string Question => "How strong is this bolt?";

    /// <inheritdoc/>
    public override string Use => "Proof, yield and breaking load of a class, and whether the nut is strong enough for it.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, strength, nut];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["Fp = Sp As", "Fy = Rp As", "Fm = Rm As"],
        [new("Sp", "proof stress, MPa"), new("Rp", "yield, ReL or Rp0.2, MPa"), new("Rm", "tensile strength, MPa"), new("As", "stress area of the thread, mm²")],
        "ISO 898-1:2013 table 3; ISO 3506-1; SAE J429; nuts ISO 898-2: partly from memory.",
        "Least values of the class, threads no thinner than the stress area, room temperature. A marking on a part of unknown make proves nothing.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        var (size, bolt) = (thread.Read(inputs), strength.Read(inputs));
        if (bolt.UltimateLoad(size) is null)
        {
            yield return new(strength, bolt.Standard != size.Standard
                ? $"{bolt} is not written for {size}: metric classes go with metric threads, SAE grades with inch threads."
                : $"The standard has no {bolt} at the size of {size}.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size, bolt) = (inputs.Units, thread.Read(inputs), strength.Read(inputs));
        var values = bolt.ValuesFor(size.NominalDiameter)!.Value;
        var pairing = nut.IsGiven(inputs) ? NutPairing.Judge(bolt, nut.Read(inputs)) : null;
        var breaks = bolt.UltimateLoad(size)!.Value;
        return (bolt.ProofLoad(size) is { } proof
            ? new BenchAnswer($"Bears {units.Say(proof)}", $"{size} {bolt} bears {units.Say(proof)} without stretching for good, and breaks at {units.Say(breaks)} or more.")
            {
                Pictures =
                [
                    UnitsOnALine.Loads(
                        [.. bolt.YieldLoad(size) is { } yields ? new[] { units.Mark("yields", yields) } : [], units.Mark("breaks", breaks, LineMarkKind.Limit)]) with
                    {
                        Span = units.Span("bears without stretching for good", Force.Zero, proof),
                    },
                ],
            }
            : new BenchAnswer(
                $"Yields at {units.Say(bolt.YieldLoad(size)!.Value)}",
                $"{size} {bolt} yields at {units.Say(bolt.YieldLoad(size)!.Value)} or more, and breaks at {units.Say(breaks)} or more.")
            {
                Pictures = [UnitsOnALine.Loads(units.Mark("yields", bolt.YieldLoad(size)!.Value), units.Mark("breaks", breaks, LineMarkKind.Limit))],
            }) with
        {
            Lines =
            [
                new("Stress area", units.Say(size.StressArea), "As"),
                Line("Proof load", bolt.ProofLoad(size), values.ProofStress, "Sp"),
                Line("Yields in plain tension at", bolt.YieldLoad(size), values.YieldStress, "Rp"),
                Line("Breaks at", bolt.UltimateLoad(size), values.TensileStrength, "Rm"),
                .. pairing is null ? [] : new BenchLine[] { Nut(nut.Read(inputs), size, pairing, units) },
            ],
            Cautions = pairing is NutPairing.MayStrip strips ? [strips.Reason] : [],
        };

        BenchLine Line(string what, Force? load, Pressure? stress, string sign) => load is { } bears && stress is { } at
            ? new(what, units.Say(bears), $"{sign} {units.Say(at)}")
            : new(what, "not stated", "by the standard");
    }

    private static BenchLine Nut(NutClass nut, ThreadSize size, NutPairing pairing, BenchUnits units) => new(
        $"Nut {nut}",
        pairing switch
        {
            NutPairing.FullStrength => "strong enough",
            NutPairing.MayStrip => "may strip first",
            _ => "not judged",
        },
        pairing is NutPairing.NotJudged { Reason: var why } ? why
            : nut.ProofLoad(size) is { } bears ? $"its nominal proof load: {units.Say(bears)}" : null);
}
