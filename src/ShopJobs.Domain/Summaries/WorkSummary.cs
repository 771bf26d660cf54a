using System.Text.Json.Serialization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>The car as the customer knows it.</summary>
public sealed record SummaryCar(string Name, string Model, string Mark);

/// <summary>Who issues the page and how to reach them.</summary>
public sealed record SummaryShop(string Name, string Contact, bool Demo);

/// <summary>Where the car's logbook stood: number and chain hash of its newest entry.</summary>
public sealed record LogbookMark(long Number, string Hash);

/// <summary>Something that is not finished, with the state it shows where it is a joint.</summary>
public sealed record OpenItem(PositionState? State, string Words);

/// <summary>What was found and how it was decided.</summary>
/// <param name="UsedAsIs">Not redone: accepted as it is, and still so.</param>
public sealed record Finding(string Words, string Decision, bool UsedAsIs)
{
    /// <summary>It was the shop's own doing, and is told among its mistakes. Never true in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Ours { get; init; }
}

/// <summary>A mistake of the shop itself, told straight: what was done, and what was done about it.</summary>
/// <param name="PutRight">It was done again and is as it should be now.</param>
public sealed record Mistake(string Words, bool PutRight);

/// <summary>Whether the car may be driven, asked as the customer asks it.</summary>
/// <param name="Question">"Drive on the road".</param>
/// <param name="Answer">"yes, until 48,310 km or 29 Dec 2026".</param>
public sealed record DriveAnswer(ReleaseKind Kind, string Question, bool Yes, string Answer);

/// <summary>What the car has to come back for.</summary>
/// <param name="What">"all 20 wheel nuts".</param>
/// <param name="When">"between 48,260 and 48,310 km on the odometer, or by 29 Dec 2026, whichever comes first".</param>
/// <param name="By">The last day; null where only a distance limits it, or the first drive is still to come.</param>
public sealed record ComeBack(string What, string When, DateOnly? By);

/// <summary>A joint as the page draws it, kept as it was when the page was issued.</summary>
/// <param name="Key">Key of its kind in the joint register.</param>
/// <param name="States">State of each fastener, from number 1.</param>
public sealed record DrawnJoint(string Key, string Place, string Name, IReadOnlyList<PositionState> States)
{
    /// <summary>The system of the car it belongs to, by the register, as "wheels"; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? System { get; init; }
}

/// <summary>One job in the customer's words.</summary>
/// <param name="Title">"Wheels fitted, all four"; what the procedure is called where it is not finished, or says nothing to the customer.</param>
/// <param name="Says">What was done, in sentences; empty where it is not finished.</param>
public sealed record ToldWork(string Title, IReadOnlyList<string> Says);

/// <summary>A release that is valid, or that there is none.</summary>
public sealed record ReleaseLine(bool Given, string Words);

/// <summary>One job that this page covers.</summary>
/// <param name="AskedFor">The customer's own words.</param>
/// <param name="Steps">Steps that are signed and are no tightening, in plain words.</param>
public sealed record CoveredWork(
    string Title, string Procedure, DateOnly From, DateOnly? Until, string AskedFor, IReadOnlyList<string> Steps);

/// <summary>What was done on one system of the car.</summary>
public sealed record SystemWork(string System, IReadOnlyList<string> Lines);

/// <summary>New hardware that is on the car now.</summary>
public sealed record PartFitted(string Part, string Lot, string Where);

/// <summary>How it is known, counted; never mixed.</summary>
/// <param name="Measured">Fasteners whose torque was read on an indicating tool.</param>
/// <param name="SettingConfirmed">Fasteners tightened with a click tool at a confirmed setting: not measured.</param>
/// <param name="Witnessed">Fasteners a second person looked at.</param>
/// <param name="Ticks">Things looked at and ticked in signed steps.</param>
/// <param name="ResultsMeasured">Results and values that were measured.</param>
/// <param name="ResultsLookedAt">Results that were looked at.</param>
/// <param name="ResultsDeclared">Results somebody told us.</param>
/// <param name="Earlier">Fasteners we tightened in work that this page does not cover.</param>
/// <param name="NotChecked">Fasteners as found: not checked by us.</param>
/// <param name="JointsNotChecked">Joints with a fastener as found.</param>
public sealed record EvidenceCounts(
    int Measured,
    int SettingConfirmed,
    int Witnessed,
    int Ticks,
    int ResultsMeasured,
    int ResultsLookedAt,
    int ResultsDeclared,
    int Earlier,
    int NotChecked,
    int JointsNotChecked);

/// <summary>Joints of one kind whose failure is a danger to life, at torque and known in the same way.</summary>
/// <param name="Torque">Value as recorded; null where a figure would invite somebody to re-tighten what must not be.</param>
/// <param name="Evidence">Measured, or setting confirmed.</param>
/// <param name="Witness">Looked at by a second person: yes, no or not asked.</param>
/// <param name="ReTorque">Due, done, never or not asked.</param>
public sealed record ClassAJoint(string Joint, int Fasteners, string? Torque, string Evidence, string Witness, string ReTorque);

/// <summary>A result or a value with how it was come by.</summary>
public sealed record ShownResult(string Name, string Values, string Basis);

/// <summary>
/// One version of the customer's page, complete: every word on it is in here, so that an issued version reads the same for good.
/// Holds no ids, no people's names beyond initials, no times of day, no tool, no price and no note.
/// </summary>
public sealed record WorkSummary(
    int Version,
    int? Replaces,
    DateOnly IssuedOn,
    string IssuedBy,
    SummaryCar Car,
    SummaryShop Shop,
    decimal? OdometerKm,
    LogbookMark Logbook,
    IReadOnlyList<OpenItem> Open,
    IReadOnlyList<string> Duties,
    IReadOnlyList<ReleaseLine> Releases,
    IReadOnlyList<CoveredWork> Work,
    IReadOnlyList<Finding> Found,
    IReadOnlyList<SystemWork> Done,
    IReadOnlyList<PartFitted> Parts,
    EvidenceCounts Counts,
    IReadOnlyList<ClassAJoint> ClassA,
    IReadOnlyList<ShownResult> Results,
    IReadOnlyList<string> Advice,
    IReadOnlyList<string> Cautions)
{
    /// <summary>The odometer as it was entered, with its unit; null in older pages, and where it was not read.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Odometer { get; init; }

    /// <summary>Joints of the warranty case that the car's newest visit is about; null where it is none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Warranty { get; init; }

    /// <summary>Road and track, answered first; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<DriveAnswer>? Drive { get; init; }

    /// <summary>What the car has to come back for; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<ComeBack>? ComeBacks { get; init; }

    /// <summary>The work in the customer's words; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<ToldWork>? Told { get; init; }

    /// <summary>How it is known, and what was not looked at, in sentences; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Known { get; init; }

    /// <summary>The shop's own mistakes in this work; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<Mistake>? Mistakes { get; init; }

    /// <summary>What the customer declined; null in older pages, where it stands among the advice.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Declined { get; init; }

    /// <summary>Every joint of the car, to be drawn; null in older pages.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<DrawnJoint>? Drawn { get; init; }
}
