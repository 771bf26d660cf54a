using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Floor;

/// <summary>One count of fasteners on a car: drawing, word, number.</summary>
public sealed record CountChip(GlanceCount Kind, PositionState Drawn, string Word, int Count)
{
    public string Css => Count == 0 ? "is-none" : Kind == GlanceCount.Held ? "is-held" : "";
}

/// <summary>The counts of a car in the order in which they are always shown, so that the eye finds them.</summary>
public static class CountChips
{
    private static readonly (GlanceCount Kind, PositionState Drawn, string Word)[] Order =
    [
        (GlanceCount.Open, PositionState.Open, "open"),
        (GlanceCount.HandTight, PositionState.HandTight, "hand-tight"),
        (GlanceCount.Staged, PositionState.Staged, "staged"),
        (GlanceCount.AtTorque, PositionState.Checked, "at torque"),
        (GlanceCount.ToWitness, PositionState.AtTorque, "to witness"),
        (GlanceCount.Held, PositionState.Held, "held"),
        (GlanceCount.Due, PositionState.Due, "due"),
        (GlanceCount.AsFound, PositionState.AsFound, "as found"),
        (GlanceCount.NotFitted, PositionState.NotFitted, "not fitted"),
        (GlanceCount.Doubted, PositionState.Doubted, "doubted"),
    ];

    /// <summary>Eight kinds always; not fitted and doubted only where there are some.</summary>
    public static IEnumerable<CountChip> Of(CarGlance glance) =>
        Order.Select(row => new CountChip(row.Kind, row.Drawn, row.Word, glance.Count(row.Kind)))
            .Where(chip => chip.Count > 0 || chip.Kind is not (GlanceCount.NotFitted or GlanceCount.Doubted));
}
