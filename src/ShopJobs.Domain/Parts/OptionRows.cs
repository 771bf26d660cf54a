using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>What is compared, line by line: the name of each line and what stands in it for one option.</summary>
internal static class OptionRows
{
    /// <summary>The lines for a joint, in their usual order.</summary>
    public static IEnumerable<(string Name, Func<OptionFigures, OptionCell> Cell)> For(JointToFill joint)
    {
        yield return ("Thread", figures => OptionCell.Stated(figures.Option.Thread));
        yield return ("Strength class", figures => OptionCell.Stated(figures.Option.Strength));
        yield return ("Stress area", StressArea);
        yield return ("Proof load", ProofLoad);
        yield return ("Torque of its instruction", figures => OptionCell.Stated(figures.Option.Torque));
        if (joint.Asked.Jam is not null)
        {
            yield return ("Jam torque of two nuts", figures => OptionCell.Stated(figures.Option.Jam));
        }

        yield return ("Threads and faces", figures => OptionCell.Stated(figures.Option.Condition, TorqueSpecificationCautions.Word));
        yield return ("Reckoned at", ReckonedAt);
        yield return ("Clamp load, low / nominal / high", ClampLoad);
        yield return ("Share of proof load, low / nominal / high", OfProof);
        yield return ("Share of yield while tightening, low / nominal / high", OfYield);
        yield return ("Length from its face", figures => OptionCell.Stated(figures.Option.Length, length => FigureWords.Of(length)));
        yield return ("Face under head or shoulder", figures => OptionCell.Stated(figures.Option.Seat));
        foreach (var line in joint.OnWheel ? joint.Stacks.SelectMany(StackRows.For) : [])
        {
            yield return line;
        }

        if (joint.OnWheel)
        {
            yield return ("Class of the kit's nut", figures => figures.Option.Nut is { } nut
                ? OptionCell.Stated(nut.Class)
                : new OptionCell.NotComputed("the kit brings no nut"));
        }

        yield return ("Pieces in a kit", figures => OptionCell.Stated(figures.Option.Pieces, pieces => FormattableString.Invariant($"{pieces}")));
        yield return ("Price of a kit", figures => OptionCell.Stated(figures.Option.Price));
        yield return ("Price for this job", JobPrice);
        yield return ("Price per kN of margin, each", MarginPrice);
    }

    private static OptionCell StressArea(OptionFigures figures) => figures.Option.Thread is { } thread
        ? new OptionCell.Computed(FormattableString.Invariant($"{thread.Value.StressArea.SquareMillimeters:0.0} mm²"))
        : new OptionCell.NotComputed("the thread is not stated");

    private static OptionCell ProofLoad(OptionFigures figures) => figures.ProofLoad is { } proof
        ? new OptionCell.Computed(FigureWords.Of(proof))
        : new OptionCell.NotComputed(WithoutProof(figures.Option));

    private static OptionCell ReckonedAt(OptionFigures figures)
    {
        if (figures.Torque is not { } torque)
        {
            return new OptionCell.NotComputed("no torque is stated");
        }

        var condition = (figures.Option.Condition?.Value, figures.Joint.Asked.Condition) switch
        {
            ({ } own, _) => $"{TorqueSpecificationCautions.Word(own)}, as stated",
            (null, { } asked) => $"{TorqueSpecificationCautions.Word(asked)}, as in this procedure",
            _ => "no condition known",
        };
        return new OptionCell.Computed($"{torque.Torque}: {torque.Words}; {condition}");
    }

    private static OptionCell ClampLoad(OptionFigures figures) => figures.Band switch
    {
        ClampBand.Computed band => new OptionCell.Computed(FormattableString.Invariant(
            $"{band.Minimum.Kilonewtons:0.0} / {band.Nominal.Kilonewtons:0.0} / {band.Maximum.Kilonewtons:0.0} kN")),
        ClampBand.NotComputed { Reason: var reason } => new OptionCell.NotComputed(reason),
        _ => throw new InvalidOperationException("Not a band."),
    };

    private static OptionCell OfProof(OptionFigures figures) => figures.Band switch
    {
        ClampBand.Computed { Utilisation: { } share } => new OptionCell.Computed(
            FormattableString.Invariant($"{share.Minimum:0 %} / {share.Nominal:0 %} / {share.Maximum:0 %}"))
        {
            Share = share.Maximum,
            Of = "the proof load at the top of the band",
        },
        ClampBand.NotComputed { Reason: var reason } => new OptionCell.NotComputed(reason),
        _ => new OptionCell.NotComputed(WithoutProof(figures.Option)),
    };

    private static OptionCell OfYield(OptionFigures figures) => figures.Band switch
    {
        ClampBand.Computed { WhileTightening: { } share } => new OptionCell.Computed(
            FormattableString.Invariant($"{share.Minimum:0 %} / {share.Nominal:0 %} / {share.Maximum:0 %}"))
        {
            Share = share.Maximum,
            Of = "yield while it is tightened",
        },
        ClampBand.NotComputed { Reason: var reason } => new OptionCell.NotComputed(reason),
        _ => new OptionCell.NotComputed(WithoutProof(figures.Option)),
    };

    private static OptionCell JobPrice(OptionFigures figures) => (figures.Option.Price, figures.Kits) switch
    {
        (null, _) => new OptionCell.NotComputed("no price is stated"),
        (_, null) => new OptionCell.NotComputed("pieces in a kit are not stated"),
        ({ Value: var price }, { } kits) => new OptionCell.Computed(FormattableString.Invariant(
            $"{price.Amount * kits:0.00} {price.Currency}: {kits} {(kits == 1 ? "kit" : "kits")} for {figures.Joint.Count}")),
    };

    private static OptionCell MarginPrice(OptionFigures figures) => figures switch
    {
        { Option.Price: null } => new OptionCell.NotComputed("no price is stated"),
        { Kits: null } => new OptionCell.NotComputed("pieces in a kit are not stated"),
        { Band: ClampBand.NotComputed { Reason: var reason } } => new OptionCell.NotComputed(reason),
        { ProofLoad: null } => new OptionCell.NotComputed(WithoutProof(figures.Option)),
        { ProofLoad: { } proof, Band: ClampBand.Computed band } when band.Maximum >= proof => new OptionCell.NotComputed("nothing is left below the proof load"),
        { ProofLoad: { } proof, Band: ClampBand.Computed band, Option: { Price.Value: var price, Pieces.Value: var pieces } } => new OptionCell.Computed(
            FormattableString.Invariant($"{price.Amount / pieces / (decimal)(proof - band.Maximum).Kilonewtons:0.00} {price.Currency}")),
        _ => throw new InvalidOperationException("Not a band."),
    };

    private static string WithoutProof(PartOption option) => option switch
    {
        { Thread: null } => "the thread is not stated",
        { Strength: null } => "the strength is not stated",
        _ => $"class {option.Strength.Value.Class} has no value for {option.Thread.Value}",
    };
}
