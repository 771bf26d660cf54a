using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>A value somebody measured, with its unit as entered.</summary>
public readonly record struct MeasuredValue(string Name, decimal Value, string Unit)
{
    /// <summary>Value and unit as they are read out: a counted unit is singular for one, "1 piece".</summary>
    public string Amount()
    {
        var unit = Value == 1 && Unit is ("pieces" or "turns" or "hours" or "days") ? Unit[..^1] : Unit;
        return FormattableString.Invariant($"{Value} {unit}").TrimEnd();
    }
}

/// <summary>One fact of a logbook, in the past tense. Who, when and where stand in its envelope.</summary>
public abstract record Entry
{
    /// <summary>The signer's name as it was at signing, kept outside the entry; null where nothing was signed.</summary>
    public ContentDigest? SignedAs { get; init; }

    /// <summary>The lines that were shown to the signer, kept outside the entry; null where nothing was signed.</summary>
    public ContentDigest? ShownAs { get; init; }

    /// <summary>Newest entry of the shop's logbook when this was recorded: what came before a step of the clock, and what after. Null where it had none.</summary>
    public long? Clock { get; init; }

    /// <summary>
    /// By how much its instant is ahead of what the clock showed: no entry is earlier than the one before it, also where the clock went
    /// back. Null where the instant is what the clock showed.
    /// </summary>
    public TimeSpan? Ahead { get; init; }

    /// <summary>What it is about: its job, positions, tool, problems and texts.</summary>
    public abstract EntryFacets Facets();
}

/// <summary>A procedure was put on the car.</summary>
public sealed record JobStarted(
    JobId Job, string Procedure, string Revision, string ProcedureDigest, string RegisterDigest, IReadOnlyList<string> Places) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job };
}

/// <summary>The car is like this from now on; aspects not named stay as they were.</summary>
public sealed record CarConditionDeclared(IReadOnlyList<CarCondition> Conditions) : Entry
{
    /// <summary>The places it is said of, for aspects that are of a place; null where none is named.</summary>
    public IReadOnlyList<string>? Places { get; init; }

    public override EntryFacets Facets() => EntryFacets.None;
}

/// <summary>A step was signed, with what it rests on. Not applicable is a sign-off with a reason, and no result.</summary>
public sealed record StepConfirmed(
    JobId Job,
    string Step,
    IReadOnlyList<string> Ticks,
    IReadOnlyList<MeasuredValue> Values,
    IReadOnlyList<long> RestsOn,
    bool NotApplicable,
    ContentDigest? Reason,
    string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>How a result was come by; never mixed.</summary>
public enum ResultBasis
{
    Measured,
    LookedAt,
    Declared,
}

/// <summary>A result such as an alignment or an odometer reading. Undid is what changing a setting undid.</summary>
public sealed record ResultRecorded(
    string Name,
    IReadOnlyList<MeasuredValue> Values,
    ResultBasis Basis,
    string? Instrument,
    IReadOnlyList<string> Conditions,
    JobId? Job,
    string? Step,
    IReadOnlyList<Undone> Undid) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job };
}

/// <summary>Positions were taken apart, backed off or, for temporary hardware, removed.</summary>
/// <param name="Positions">Opened by hand, the whole joint where its group is redone as a joint.</param>
/// <param name="AlsoOpened">Opened with them: what rides on them and the joints they undo.</param>
/// <param name="Undid">Results and settings void from here.</param>
public sealed record Opened(
    IReadOnlyList<JointPosition> Positions,
    IReadOnlyList<JointPosition> AlsoOpened,
    IReadOnlyList<Undone> Undid,
    JobId? Job,
    ContentDigest? Reason) : Entry
{
    /// <summary>Those of the positions whose report was made in an earlier cycle: it does not open them, but holds them until somebody has looked.</summary>
    public IReadOnlyList<JointPosition>? Late { get; init; }

    /// <summary>True where a setting that was recorded opened them: it goes with the setting. Null where somebody reported it.</summary>
    public bool? BySetting { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = [.. Positions, .. AlsoOpened], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>New hardware went on. With problems the position stays what it was.</summary>
public sealed record FittedNew(
    IReadOnlyList<JointPosition> Positions, JobId Job, string Group, string Hardware, string? Lot) : Entry
{
    /// <summary>Why it does not count; null when it does.</summary>
    public IReadOnlyList<HoldReason>? Problems { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = Positions, Problems = Problems ?? [] };
}

/// <summary>Run down by hand. With problems the position stays what it was; one that was not opened first is held.</summary>
public sealed record HandTightened(
    IReadOnlyList<JointPosition> Positions,
    JobId Job,
    string Group,
    IReadOnlyList<PersonId> Helpers,
    IReadOnlyList<HoldReason> Problems) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Positions = Positions, Problems = Problems, FallsWhenOpened = true };
}

/// <summary>
/// The specification in force for a pull, copied so that it can be re-judged later. Torques in N·m; at an angle stage those of the
/// torque that it is turned on from.
/// </summary>
/// <param name="Stages">Stages of the group; the last is final.</param>
/// <param name="Visits">How often this stage visits the position.</param>
/// <param name="Minimum">Lower end of the permitted range, inside.</param>
/// <param name="Maximum">Upper end of the permitted range, inside.</param>
/// <param name="Instructed">Torque the tool was to be set to.</param>
/// <param name="HalfGraduation">A confirmed setting may differ from the instructed one by no more than this.</param>
/// <param name="SettingLimit">Where a jam pair drives: the setting may never be above this.</param>
/// <param name="AsksWitness">A second person must look at this stage.</param>
public sealed record SpecificationInForce(
    int Stages,
    int Visits,
    decimal Minimum,
    decimal Maximum,
    decimal Instructed,
    decimal HalfGraduation,
    decimal? SettingLimit,
    bool AsksWitness,
    RiskClass Risk,
    IfShort IfShort,
    ReTorque? ReTorque)
{
    /// <summary>
    /// Setting of the tool over torque at the fastener, where an adapter sits between; null where none does. By the tool's own length;
    /// where that was not known the pull has that problem, and this is by the length that the procedure states.
    /// </summary>
    public decimal? SettingRatio { get; init; }

    /// <summary>The angle asked for, in degrees; null at a torque stage.</summary>
    public Turn? Turn { get; init; }

    /// <summary>At a lower stage, the upper end of the final stage's range; null where that is <see cref="Maximum"/>.</summary>
    public decimal? JointMaximum { get; init; }
}

/// <summary>One pull on one cell. With problems it does not count.</summary>
/// <param name="Cycle">Openings of the position before this pull.</param>
/// <param name="Visit">Index in the stage's order of visits, from 0.</param>
/// <param name="Value">The torque on the tool, as entered; null where an angle was turned.</param>
/// <param name="On">Shop's date: calibration is judged by the day.</param>
/// <param name="RestsOn">Numbers of the lower-stage and hand-tight entries it rests on.</param>
public sealed record TorqueRecorded(
    JobId Job,
    string Group,
    JointPosition Position,
    int Cycle,
    int Stage,
    int Visit,
    TorqueKind Kind,
    EnteredTorque? Value,
    ToolId Tool,
    DateOnly On,
    SpecificationInForce Spec,
    IReadOnlyList<PersonId> Helpers,
    IReadOnlyList<long> RestsOn,
    IReadOnlyList<HoldReason> Problems) : Entry
{
    /// <summary>Run-down torque of this position, where it is added to the instructed torque: <see cref="Value"/> holds both.</summary>
    public EnteredTorque? RunDown { get; init; }

    /// <summary>
    /// What <see cref="Value"/> on the tool is at the fastener, in N·m: through the adapter, and without the run-down torque.
    /// Null where that is the value itself.
    /// </summary>
    public EnteredTorque? AtFastener { get; init; }

    /// <summary>The angle turned, in degrees; null where a torque was recorded.</summary>
    public decimal? AngleDegrees { get; init; }

    /// <summary>The position it rides on, such as the stud under a nut: over the maximum holds that too. Null where it rides on none.</summary>
    public JointPosition? RidesOn { get; init; }

    /// <summary>Numbers of the declarations of the car's condition it rested on; null where none was asked.</summary>
    public IReadOnlyList<long>? Conditions { get; init; }

    /// <summary>Numbers of the pulls of the two jammed nuts that drove it: it takes their doubts and their workers. Null where none did.</summary>
    public IReadOnlyList<long>? DrivenBy { get; init; }

    /// <summary>Newest entry of the tool's logbook at this pull: a doubt behind it covers the pull. Null in older records.</summary>
    public long? ToolEntry { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = [Position], Tool = Tool, Problems = Problems, FallsWhenOpened = true };

    /// <summary>What was recorded, as it is read out: "110 N·m", "90°".</summary>
    public string Amount() => AngleDegrees is { } degrees ? Turn.Amount(degrees) : Value.ToString()!;
}

/// <summary>Re-torqued after the drive: moved or not, by what angle. With problems it does not settle and holds.</summary>
public sealed record Settled(
    IReadOnlyList<JointPosition> Positions,
    JobId Job,
    string Group,
    bool Moved,
    decimal? AngleDegrees,
    TorqueKind Kind,
    EnteredTorque Value,
    ToolId Tool,
    DateOnly On,
    IReadOnlyList<HoldReason> Problems) : Entry
{
    /// <summary>The odometer at this re-torque; null in older records.</summary>
    public decimal? OdometerKm { get; init; }

    /// <summary>As at a pull.</summary>
    public long? ToolEntry { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = Positions, Tool = Tool, Problems = Problems, FallsWhenOpened = true };
}

/// <summary>Somebody with the right stood by a pull of somebody without it, and answers for it.</summary>
/// <param name="Records">Numbers of the pulls.</param>
public sealed record Countersigned(IReadOnlyList<long> Records, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = Records };
}

/// <summary>How the witness looked.</summary>
public enum WitnessMethod
{
    LookedAtMark,
    FirstMovement,
}

/// <summary>A second person looked at the named records of one group instance. Not accepted holds every one of them.</summary>
public sealed record Witnessed(
    JobId Job,
    string Group,
    Joint Joint,
    int Stage,
    IReadOnlyList<long> Records,
    WitnessMethod Method,
    bool Accepted,
    ContentDigest? Finding,
    string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Joint = Joint, About = Records, Texts = KeptText.Given(("Finding", Finding)), FallsWhenOpened = true };
}

/// <summary>Somebody stopped the work on these positions: breakage, damage, doubt.</summary>
public sealed record PositionHeld(IReadOnlyList<JointPosition> Positions, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Positions = Positions, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>What is to be done with a held position.</summary>
public enum Disposition
{
    UseAsIs,
    Rework,
    Replace,
}

/// <summary>A held position was decided by a person with the right, not the doer.</summary>
/// <param name="About">Numbers of the entries that hold it, and of pulls that another job's step does not take.</param>
/// <param name="Doubts">Doubts of tools that hold it.</param>
/// <param name="Acceptance">Written acceptance by the maker or a named engineer; asked for class A used as is.</param>
public sealed record Decided(
    JointPosition Position,
    Disposition Disposition,
    IReadOnlyList<long> About,
    IReadOnlyList<ToolDoubt> Doubts,
    ContentDigest Reason,
    ContentDigest? Acceptance,
    string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Positions = [Position], Texts = KeptText.Given(("Reason", Reason), ("Written acceptance", Acceptance)) };
}

/// <summary>One doubt of one tool: the number of its entry in the tool's logbook.</summary>
public readonly record struct ToolDoubt(ToolId Tool, long Number);

/// <summary>An entry was voided or its value restated. It never makes valid what was not, unless confirmed.</summary>
/// <param name="Restated">The value as it should have been typed; null voids the entry.</param>
public sealed record Corrected(long Target, EnteredTorque? Restated, ContentDigest Reason) : Entry
{
    /// <summary>For a voided pull: whether the fastener was pulled all the same. Null where that was not asked.</summary>
    public bool? WasPulled { get; init; }

    public override EntryFacets Facets() => new() { About = [Target], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A second person with the right, not the doer, confirmed a correction.</summary>
public sealed record CorrectionConfirmed(long Correction, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { About = [Correction], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>The car was released.</summary>
/// <param name="NotChecked">Joints as found, not checked by us.</param>
/// <param name="LapsesAtKm">Odometer at which a road release lapses because a re-torque is due.</param>
/// <param name="LapsesOn">Day after which it lapses.</param>
/// <param name="Acceptance">The customer's written acceptance of a re-torque still due.</param>
/// <param name="Closes">Jobs that ended with a road or track release: all their steps were signed.</param>
public sealed record Released(
    ReleaseKind Kind,
    IReadOnlyList<JobId> Closes,
    int NotChecked,
    decimal? OdometerKm,
    decimal? LapsesAtKm,
    DateOnly? LapsesOn,
    ContentDigest? Acceptance,
    string Shown) : Entry
{
    /// <summary>Why the odometer is lower than at the last release; null where it is not.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>The shop's day; null in older records.</summary>
    public DateOnly? On { get; init; }

    public override EntryFacets Facets() => new() { Texts = KeptText.Given(("Customer's acceptance", Acceptance), ("Why the odometer is lower", OdometerWhy)) };
}

/// <summary>A suspended release stands again: all its rules were asked anew.</summary>
/// <param name="Release">Number of the release.</param>
public sealed record ReleaseUpheld(ReleaseKind Kind, long Release, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = [Release] };
}

/// <summary>A release was taken back.</summary>
/// <param name="Release">Number of the release.</param>
/// <param name="Driven">False when the car was not driven under it: then it starts no re-torque.</param>
public sealed record ReleaseWithdrawn(ReleaseKind Kind, long Release, bool Driven, ContentDigest Reason, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = [Release], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A version of the work summary was issued. The snapshot never changes.</summary>
public sealed record SummaryIssued(int Version, int? Replaces, ContentDigest Snapshot, long AsOf, string Shown) : Entry
{
    public override EntryFacets Facets() => EntryFacets.None;
}
