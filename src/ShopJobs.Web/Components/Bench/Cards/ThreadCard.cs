using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A thread's diameters and the limits a made one may have.</summary>
public sealed class ThreadCard : BenchCard
{
    private readonly ThreadField thread = new();

    /// <inheritdoc/>
    public override string Key => "thread";

    /// <inheritdoc/>
    public override string Question => "What are the diameters of this thread?";

    /// <inheritdoc/>
    public override string Use => "Pitch, core, stress area, and from which to which size a made bolt or nut may come.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [thread];

    /// <inheritdoc/>
    public override bool SpeaksLength => true;

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        [
            "d2 = d − 0.6495 P; D1 = d − 1.0825 P", "d3 = d − 1.2269 P (metric); d − 1.1908 P (inch, rounded root)",
            "As = π/4 (d − 0.9382 P)² (metric); π/4 (d − 0.9743 P)² (inch)",
        ],
        [
            new("d, P", "nominal diameter and pitch, mm"), new("d2", "pitch diameter"), new("d3", "minor diameter of the bolt"),
            new("D1", "minor diameter of the nut"), new("As", "tensile stress area, mm²"),
        ],
        "ISO 68-1, ISO 724, ISO 898-1; ASME B1.1; limits ISO 965-1 6g/6H and ASME B1.1 2A/2B, from memory.",
        "60° threads, M1 to M150 and inch. Limits before plating; a gauge decides on a real thread, not a calliper.");

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, size) = (inputs.Units, thread.Read(inputs));
        return new BenchAnswer(
            $"Core {units.Computed(size.MinorDiameter)}",
            $"{size}: stress area {units.Say(size.StressArea)}, pitch diameter {units.Computed(size.PitchDiameter)}, core {units.Computed(size.MinorDiameter)}.")
        {
            Pictures = [new ThreadPicture(size)],
            Lines =
            [
                new("Pitch", units.SayFine(size.Pitch), "P"),
                new("Pitch diameter", units.SayFine(size.PitchDiameter), "d2"),
                new("Minor diameter of the bolt", units.SayFine(size.MinorDiameter), "d3"),
                new("Minor diameter of the nut", units.SayFine(size.NutMinorDiameter), "D1, the size of its drilled hole at the least"),
            ],
            Table = Limits(size, units),
            Cautions = Limits(size, units) is null ? [$"The tables hold no limits for {size}."] : [],
        };
    }

    private static BenchTable? Limits(ThreadSize size, BenchUnits units)
    {
        if (ThreadLimits.External(size) is not { } bolt || ThreadLimits.Internal(size) is not { } nut)
        {
            return null;
        }

        return new BenchTable(
            "Limits of made threads",
            ["Diameter", "Least", "Greatest"],
            [
                Row($"bolt {bolt.Class}, outside", bolt.MajorMin, bolt.MajorMax), Row($"bolt {bolt.Class}, pitch", bolt.PitchMin, bolt.PitchMax),
                Row($"nut {nut.Class}, pitch", nut.PitchMin, nut.PitchMax), Row($"nut {nut.Class}, inside", nut.MinorMin, nut.MinorMax),
            ]);

        IReadOnlyList<string> Row(string what, Length least, Length greatest) => [what, units.SayFine(least), units.SayFine(greatest)];
    }
}
