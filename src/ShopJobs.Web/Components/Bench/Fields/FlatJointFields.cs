using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>The inputs that say how far a bolted joint with flat faces gives: its length, shank, face and parts.</summary>
public sealed class FlatJointFields
{
    private readonly ThreadField thread;
    private readonly LengthField grip = new("grip", "Clamped length, head to nut or to the tapped part") { Example = "40" };
    private readonly LengthField shank = new("shank", "Of it plain shank") { Example = "20", MayBeZero = true, Hint = "The rest is free thread." };
    private readonly LengthField head = new("head", "Outer diameter of the face under the head") { Example = "16.6" };
    private readonly LengthField hole = new("hole", "Diameter of the hole") { Example = "13.5" };
    private readonly ChoiceField<Pressure> material = new("material", "The clamped parts are of",
    [
        Material("steel", "steel", 205),
        Material("cast-iron", "grey cast iron", 110),
        Material("aluminium", "aluminium", 70),
    ])
    {
        Example = "steel",
    };

    private readonly LengthField width = new("width", "Outer diameter of the parts")
    {
        IsOptional = true,
        Hint = "Only where they are narrow: a boss, a tube, a crush sleeve.",
    };

    public FlatJointFields(ThreadField thread)
    {
        this.thread = thread;
        All = [grip, shank, head, hole, material, width];
    }

    /// <summary>Symbols of the two formulas, for a card's paper.</summary>
    public static IReadOnlyList<BenchSymbol> Symbols { get; } =
    [
        new("δS", "how far the bolt gives, mm/N; E of steel 205 GPa"),
        new("δP", "how far the clamped parts give, mm/N: two 30° cones from the faces, or a sleeve where the parts are narrower"),
    ];

    /// <summary>The inputs in their order.</summary>
    public IReadOnlyList<BenchField> All { get; }

    /// <summary>The face under head or nut.</summary>
    public FlatSeat Face(BenchInputs inputs) => new(head.Read(inputs), hole.Read(inputs));

    /// <summary>What the measures say together that cannot be.</summary>
    public IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (shank.Read(inputs) > grip.Read(inputs))
        {
            yield return new(shank, "The shank is longer than the clamped length: measure both again.");
        }

        if (hole.Read(inputs) < thread.Read(inputs).NominalDiameter)
        {
            yield return new(hole, $"{thread.Read(inputs)} does not pass through this hole: measure it again.");
        }

        if (head.Read(inputs) <= hole.Read(inputs))
        {
            yield return new(head, "The face must be wider than its hole: measure both again.");
        }

        if (width.IsGiven(inputs) && width.Read(inputs) < head.Read(inputs))
        {
            yield return new(width, "The parts must be at least as wide as the face that lies on them.");
        }
    }

    /// <summary>How far bolt and parts give.</summary>
    public Resilience Read(BenchInputs inputs)
    {
        var (length, plain, face) = (grip.Read(inputs), shank.Read(inputs), Face(inputs));
        var widest = face.HeadDiameter + (length * Math.Tan(ClampedParts.UsualConeAngle.Radians));
        return new Resilience(
            BoltSection.Resilience(thread.Read(inputs), plain, length - plain, BoltSection.Steel),
            width.IsGiven(inputs) && width.Read(inputs) < widest
                ? ClampedParts.Sleeve(width.Read(inputs), face.HoleDiameter, length, material.Read(inputs))
                : ClampedParts.Resilience(face, length, material.Read(inputs), ClampedParts.UsualConeAngle));
    }

    private static BenchChoice<Pressure> Material(string name, string words, double gigapascals) =>
        new(name, FormattableString.Invariant($"{words}, E {gigapascals:0} GPa"), Pressure.FromGigapascals(gigapascals));
}
