using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

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

    /// <summary>Systems whose state as found was neither recorded nor told as unknown before this opened them: it is lost. Null where none.</summary>
    public IReadOnlyList<string>? Unseen { get; init; }

    /// <summary>The card it was entered from afterwards, with the minute that stands there; null where it was reported from a screen.</summary>
    public OnPaper? OnPaper { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = [.. Positions, .. AlsoOpened], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>New hardware went on. With problems the position stays what it was.</summary>
public sealed record FittedNew(
    IReadOnlyList<JointPosition> Positions, JobId Job, string Group, string Hardware, string? Lot) : Entry
{
    /// <summary>Why it does not count; null when it does.</summary>
    public IReadOnlyList<HoldReason>? Problems { get; init; }

    /// <summary>The card it was entered from afterwards, with the minute that stands there; null where it was reported from a screen.</summary>
    public OnPaper? OnPaper { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = Positions, Problems = Problems ?? [] };
}

/// <summary>Something was put on the threads, or they were cleaned dry. It stays on them until something else is recorded, whatever is opened.</summary>
/// <param name="Thread">What they carry from here.</param>
/// <param name="Product">Its name on the tube; null where they were cleaned, or nobody wrote it down.</param>
/// <param name="Batch">Its batch; null where nobody wrote it down.</param>
public sealed record ThreadTreated(
    IReadOnlyList<JointPosition> Positions, ThreadCondition Thread, string? Product, string? Batch, JobId? Job) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Positions = Positions };
}

/// <summary>Run down by hand. With problems the position stays what it was; one that was not opened first is held.</summary>
public sealed record HandTightened(
    IReadOnlyList<JointPosition> Positions,
    JobId Job,
    string Group,
    IReadOnlyList<PersonId> Helpers,
    IReadOnlyList<HoldReason> Problems) : Entry
{
    /// <summary>The card it was entered from afterwards, with the minute that stands there; null where it was reported from a screen.</summary>
    public OnPaper? OnPaper { get; init; }

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

    /// <summary>The card it was entered from afterwards, with the minute that stands there; null where it was reported from a screen.</summary>
    public OnPaper? OnPaper { get; init; }

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

    /// <summary>The odometer as it was entered; null in older records.</summary>
    public OdometerReading? Odometer { get; init; }

    /// <summary>Why the odometer is lower than it was; null where it is not.</summary>
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>As at a pull.</summary>
    public long? ToolEntry { get; init; }

    public override EntryFacets Facets() => new()
    {
        Job = Job,
        Positions = Positions,
        Tool = Tool,
        Problems = Problems,
        FallsWhenOpened = true,
        Texts = KeptText.Given(("About the odometer", OdometerWhy)),
    };
}
