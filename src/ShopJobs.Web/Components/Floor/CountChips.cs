using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Floor;

/// <summary>One count of fasteners on a car: drawing, word, number.</summary>
public sealed record CountChip(GlanceCount Kind, PositionState Drawn, string Word, int Count)
{
    public string Css => Kind switch
    {
        GlanceCount.Held => "is-held",
        GlanceCount.AsFound => "is-as-found",
        _ => "",
    };
}

/// <summary>The counts of a car in the order in which they are always shown, so that the eye finds them.</summary>
public static class CountChips
{
    private static readonly (GlanceCount Kind, PositionState Drawn, string Word)[] Order =
    [
        (GlanceCount.Open, PositionState.Open, "open"),
        (GlanceCount.HandTight, PositionState.HandTight, "hand-tight"),
        (GlanceCount.Staged, PositionState.Staged, "staged"),
        (GlanceCount.AtTorque, PositionState.AtTorque, "at torque"),
        (GlanceCount.ToWitness, PositionState.AtTorque, "to witness"),
        (GlanceCount.Held, PositionState.Held, "held"),
        (GlanceCount.Due, PositionState.Due, "due"),
        (GlanceCount.NotFitted, PositionState.NotFitted, "not fitted"),
        (GlanceCount.Doubted, PositionState.Doubted, "doubted"),
        (GlanceCount.AsFound, PositionState.AsFound, "as found"),
    ];

    /// <summary>Those of which there are any; as found comes last and small.</summary>
    public static IEnumerable<CountChip> Of(CarGlance glance) =>
        Order.Select(row => new CountChip(row.Kind, row.Drawn, row.Word, glance.Count(row.Kind))).Where(chip => chip.Count > 0);
}
