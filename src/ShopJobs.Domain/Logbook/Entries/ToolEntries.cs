using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>A tool was entered, or its description entered again.</summary>
public sealed record ToolEntered(
    ToolId Tool,
    string Name,
    string Serial,
    ToolKind Kind,
    TorqueUnit Unit,
    decimal LowestMarked,
    decimal Top,
    decimal Graduation,
    decimal? ClassDeviationPercent) : Entry
{
    /// <summary>Effective length in mm, from the mark of the hand to the square drive; null where it is not entered.</summary>
    public decimal? LengthMm { get; init; }

    /// <summary>Pulls after which it is to be calibrated again; null for <see cref="TorqueTool.StandardCycles"/>.</summary>
    public int? CycleLimit { get; init; }

    public override EntryFacets Facets() => new() { Tool = Tool };
}

/// <summary>A tool came back from calibration, or was checked on the rig.</summary>
public sealed record Calibrated(
    DateOnly Date,
    DateOnly Due,
    string Certificate,
    IReadOnlyList<CalibrationPoint> AsFound,
    IReadOnlyList<CalibrationPoint> AsLeft) : Entry
{
    public override EntryFacets Facets() => EntryFacets.None;
}

/// <summary>A tool was taken out of use: dropped, overloaded, lent.</summary>
public sealed record Quarantined(ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>Pulls made with the tool since its last good as-left calibration are in doubt.</summary>
public sealed record Doubted(ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>The named doubts were lifted, and the quarantine with them: the tool was found good.</summary>
public sealed record Cleared(IReadOnlyList<long> Doubts, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A calibration or check was entered by mistake and is withdrawn: it never counted.</summary>
/// <param name="Calibration">Its entry in the same logbook.</param>
public sealed record CalibrationWithdrawn(long Calibration, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A tool or instrument is out of use for good. What it tightened or measured stays traced.</summary>
public sealed record ToolRetired(ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A retired tool or instrument is the shop's again, out of use until it is calibrated, checked or cleared.</summary>
public sealed record ToolBroughtBack(ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>An instrument that results are measured with was entered, or its description entered again.</summary>
public sealed record InstrumentEntered(ToolId Tool, string Name, string Serial, InstrumentKind Kind) : Entry
{
    public override EntryFacets Facets() => new() { Tool = Tool };
}

/// <summary>An instrument was checked against a reference.</summary>
/// <param name="FoundGood">Within its limits before anybody adjusted it; null where that was not read.</param>
/// <param name="LeftGood">Within its limits as it went back to work.</param>
public sealed record InstrumentChecked(DateOnly Date, DateOnly Due, string Certificate, bool? FoundGood, bool LeftGood) : Entry
{
    public override EntryFacets Facets() => EntryFacets.None;
}

/// <summary>The owner of a car was told what was tightened on it with this tool while it was in doubt.</summary>
/// <param name="Words">How the owner was told, and what was said.</param>
public sealed record OwnerTold(CarId Car, ContentDigest Words) : Entry
{
    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Told", Words)), OfCustomer = [Words] };
}
