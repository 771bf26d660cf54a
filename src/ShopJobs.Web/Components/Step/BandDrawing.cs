using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Step;

/// <summary>The clamp-load band of a stage as lengths of a drawing, and in words.</summary>
/// <param name="Top">Clamp load at the right end, in kN.</param>
public sealed record BandDrawing(ClampBand.Computed Band, double Top)
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 400;

    /// <summary>The band, and the drawing when it is computed.</summary>
    public static ClampBand Of(JointGroup group, Stage stage, TorqueTool? tool)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(stage);
        return ClampLoadBand.For(
            stage.Value,
            tool?.ToleranceFor(stage.Value) ?? ToolDeviation.ClassLimitPercent(stage.Value),
            group.Thread,
            group.Seat,
            FrictionBand.Assumed(group.Condition),
            group.Class);
    }

    /// <summary>Scales a band so that its end and the proof load are on the drawing.</summary>
    public static BandDrawing For(ClampBand.Computed band)
    {
        ArgumentNullException.ThrowIfNull(band);
        return new BandDrawing(band, 1.08 * Math.Max(band.Maximum.Kilonewtons, band.ProofLoad?.Kilonewtons ?? 0));
    }

    /// <summary>Where a clamp load in kN stands.</summary>
    public double At(double kilonewtons) => kilonewtons / Top * Width;

    /// <summary>Least, nominal and greatest, and the share of proof load.</summary>
    public string Words => Band.Utilisation is { } share
        ? FormattableString.Invariant(
            $"{Band.Minimum.Kilonewtons:0} / {Band.Nominal.Kilonewtons:0} / {Band.Maximum.Kilonewtons:0} kN, {share.Minimum:0 %} to {share.Maximum:0 %} of proof load {Band.ProofLoad!.Value.Kilonewtons:0} kN")
        : FormattableString.Invariant(
            $"{Band.Minimum.Kilonewtons:0} / {Band.Nominal.Kilonewtons:0} / {Band.Maximum.Kilonewtons:0} kN; no proof load is known for it");
}
