using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>How much engaged thread a bolt needs in a part.</summary>
public sealed class EngagementCard : BenchCard
{
    private readonly ThreadField thread = new();
    private readonly StrengthField strength = new();
    private readonly LengthField engaged = new("engaged", "Engaged thread") { Example = "18", Hint = "Full thread, chamfers taken off." };
    private readonly NumberField part = new("part", "Tensile strength of the nut or part", "MPa", 50, 2500)
    {
        Example = "310",
        Hint = "Of the part's drawing or material certificate.",
    };

    /// <inheritdoc/>
    public override string Key => "engagement";

    /// <inheritdoc/>
    public override string Question => "Is there enough thread in this part?";

    /// <inheritdoc/>
    public override string Use => "Whether the bolt breaks before a thread strips, and from which engaged length on.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread, strength, engaged, part];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        [
            "bolt thread: π/P Le D1max [P/2 + 0.577 (d2min − D1max)]", "part thread: π/P Le dmin [P/2 + 0.577 (dmin − D2max)]",
            "strips at area × 0.6 Rm; bolt breaks at Rm As", "wire insert: 7/8 π d Le of the part",
        ],
        [
            new("Le", "engaged length, mm"), new("P", "pitch, mm"), new("d, d2", "limits of the bolt, 6g or 2A"), new("D1, D2", "limits of the nut, 6H or 2B"),
            new("Rm", "tensile strength of the bolt or of the part, MPa"), new("As", "stress area, mm²"),
        ],
        "FED-STD-H28; ASME B1.1 appendix B; insert: inferred from NASA TM-106943 table III.",
        "Full thread over the whole length, worst case of the limits. A thin nut widens and carries less; a worn or chased thread carries less.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        var (size, bolt) = (thread.Read(inputs), strength.Read(inputs));
        if (bolt.UltimateLoad(size) is null)
        {
            yield return new(strength, $"The standard has no {bolt} for {size}.");
        }

        if (ThreadStripping.Areas(size, Length.FromMillimeters(1)) is null)
        {
            yield return new(thread, $"The tables hold no limits for {size}, so nothing is computed.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size, length) = (inputs.Units, thread.Read(inputs), engaged.Read(inputs));
        var bolt = strength.Read(inputs).TensileStrength(size.NominalDiameter)!.Value;
        var inPart = Pressure.FromMegapascals((double)part.Read(inputs));
        var loads = Engagement.Loads(size, length, bolt, inPart)!.Value;
        var critical = Engagement.Critical(size, bolt, inPart)!.Value;
        var insert = ThreadStripping.Load(ThreadStripping.InsertArea(size.NominalDiameter, length), inPart * ThreadStripping.ShearOverTensile);
        return new BenchAnswer(
            loads.BoltBreaksFirst ? "Enough" : "Not enough",
            loads.BoltBreaksFirst
                ? $"Enough: the bolt breaks at {units.Say(loads.BoltBreaks)}, before a thread strips at {units.Say(loads.Strips)}."
                : $"Not enough: a thread strips at {units.Say(loads.Strips)}, before the bolt breaks at {units.Say(loads.BoltBreaks)}.")
        {
            Pictures =
            [
                new NumberLine(units.LengthSymbol,
                [
                    units.Mark("engaged", length),
                    new("enough from", units.In(critical), units.Computed(critical), LineMarkKind.Limit),
                ]),
            ],
            Lines =
            [
                new("Enough from", units.Computed(critical), FormattableString.Invariant($"{critical / size.NominalDiameter:0.00} × the diameter; both give at one load there")),
                new("Bolt breaks at", units.Say(loads.BoltBreaks)),
                new("Its thread strips at", units.Say(loads.BoltThreadStrips)),
                new("The part's thread strips at", units.Say(loads.NutThreadStrips)),
                new("With a wire insert as long", units.Say(insert), "at which the part's thread around the insert strips"),
            ],
            Cautions = loads.BoltBreaksFirst ? [] : ["A thread that has begun to strip is not seen from outside. The instruction's torque still counts; ask the maker."],
        };
    }
}
