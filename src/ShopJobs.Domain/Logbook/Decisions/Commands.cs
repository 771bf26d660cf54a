using System.Text.Json.Serialization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Something a person asks or reports of one car.</summary>
public abstract record Command;

/// <summary>A report, or another command that nobody signs: what it says has happened, or it only takes assurance away.</summary>
public abstract record Report : Command;

/// <summary>
/// A command that has to be signed. It names what the signer was shown: where that is no longer exactly so, it is refused with
/// “look again” and nothing is signed.
/// </summary>
/// <param name="Shown">Digest, in hex, of the lines that were shown.</param>
public abstract record SignedCommand(string Shown) : Command
{
    /// <summary>What was shown, as <see cref="Coverings.Of"/> found it when the lines were drawn.</summary>
    [JsonIgnore]
    public Covering Covers { get; init; } = Covering.Nothing;
}

/// <summary>Start a job.</summary>
public sealed record StartJob(
    JobId Job, Procedure Procedure, string ProcedureDigest, string RegisterDigest, IReadOnlyList<string> Places) : Report;

/// <summary>Say the car's condition.</summary>
public sealed record DeclareCondition(IReadOnlyList<CarCondition> Conditions) : Report
{
    /// <summary>The places it is said of; needed for an aspect that is of a place.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Places { get; init; }

    /// <summary>The session it was made in, as its screen was drawn: in a later one it is not taken. Null where it comes from no screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SessionId? MadeIn { get; init; }
}

/// <summary>Report a step done that is signed later, with ticks and values given.</summary>
public sealed record FinishStep(JobId Job, string Step, IReadOnlyList<string> Ticks, IReadOnlyList<MeasuredValue> Values) : Report;

/// <summary>Sign a step: ticks and values given, and a digest of what was on the screen.</summary>
public sealed record ConfirmStep(
    JobId Job,
    string Step,
    IReadOnlyList<string> Ticks,
    IReadOnlyList<MeasuredValue> Values,
    bool NotApplicable,
    ContentDigest? Reason,
    string Shown) : SignedCommand(Shown)
{
    /// <summary>Steps before it that the signer finished and the same PIN signs; null where it is signed by itself.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? With { get; init; }
}

/// <summary>Record a result.</summary>
public sealed record RecordResult(
    string Name,
    IReadOnlyList<MeasuredValue> Values,
    ResultBasis Basis,
    string? Instrument,
    IReadOnlyList<string> Conditions,
    JobId? Job,
    string? Step,
    string Shown) : SignedCommand(Shown)
{
    /// <summary>What was written down beside the values, as the register asks.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<WrittenNote>? Notes { get; init; }

    /// <summary>The instrument of the shop that it was measured with.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ToolId? Tool { get; init; }
}

/// <summary>Report positions opened, backed off or removed.</summary>
public sealed record OpenPositions(IReadOnlyList<JointPosition> Positions, JobId? Job, ContentDigest? Reason) : Report
{
    /// <summary>The cycle of each position, in their order, as the screen had it; null where the report was not made at a step.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<int>? Cycles { get; init; }

    /// <summary>Where it was written down, when it is entered from paper afterwards; null where it is reported from a screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public OnPaper? OnPaper { get; init; }
}

/// <summary>Report new hardware on positions.</summary>
public sealed record FitNew(JobId Job, string Group, IReadOnlyList<JointPosition> Positions, string? Lot) : Report
{
    /// <summary>The cycle of each position, in their order, as the screen had it; null where the report was not made at a step.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<int>? Cycles { get; init; }

    /// <summary>Who did it, where somebody else reports it for a person who does not work here any more: then it does not count. Null otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PersonId? ReportedFor { get; init; }

    /// <summary>The session it was made in, as its screen was drawn: in a later one it does not count. Null where it comes from no screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SessionId? MadeIn { get; init; }

    /// <summary>Where it was written down, when it is entered from paper afterwards; null where it is reported from a screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public OnPaper? OnPaper { get; init; }
}

/// <summary>Report what was put on threads, or that they were cleaned dry.</summary>
/// <param name="Product">Its name on the tube, at most 60 letters; null where they were cleaned.</param>
/// <param name="Batch">Its batch, at most 60 letters.</param>
public sealed record TreatThread(
    IReadOnlyList<JointPosition> Positions, ThreadCondition Thread, string? Product, string? Batch, JobId? Job) : Report;

/// <summary>Report positions run down by hand.</summary>
public sealed record HandTighten(
    JobId Job, string Group, IReadOnlyList<JointPosition> Positions, IReadOnlyList<PersonId> Helpers) : Report
{
    /// <summary>The cycle of each position, in their order, as the screen had it; null where the report was not made at a step.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<int>? Cycles { get; init; }

    /// <summary>Who did it, where somebody else reports it for a person who does not work here any more: then it does not count. Null otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PersonId? ReportedFor { get; init; }

    /// <summary>The session it was made in, as its screen was drawn: in a later one it does not count. Null where it comes from no screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SessionId? MadeIn { get; init; }

    /// <summary>Where it was written down, when it is entered from paper afterwards; null where it is reported from a screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public OnPaper? OnPaper { get; init; }
}

/// <summary>Report one pull on the cell that was shown.</summary>
public sealed record RecordTorque(
    JobId Job,
    string Group,
    JointPosition Position,
    int Cycle,
    int Stage,
    int Visit,
    TorqueKind Kind,
    EnteredTorque? Value,
    ToolId Tool,
    IReadOnlyList<PersonId> Helpers) : Report
{
    /// <summary>The angle read on the tool, from 0 to <see cref="Turn.Largest"/> degrees, at an angle stage: then there is no torque.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public decimal? AngleDegrees
    {
        get;
        init => field = value is null or >= 0 and <= Turn.Largest
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, $"An angle is from 0 to {Turn.Largest} degrees.");
    }

    /// <summary>
    /// Run-down torque read on the way down, where the instruction adds it. Null takes the one recorded with an earlier pull of
    /// the position since it was opened.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public EnteredTorque? RunDown { get; init; }

    /// <summary>Who did it, where somebody else reports it for a person who does not work here any more: then it does not count. Null otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PersonId? ReportedFor { get; init; }

    /// <summary>The session it was made in, as its screen was drawn: in a later one it does not count. Null where it comes from no screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SessionId? MadeIn { get; init; }

    /// <summary>Where it was written down, when it is entered from paper afterwards; null where it is reported from a screen.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public OnPaper? OnPaper { get; init; }
}

/// <summary>Report a re-torque after the drive.</summary>
public sealed record RecordSettled(
    JobId Job,
    string Group,
    IReadOnlyList<JointPosition> Positions,
    bool Moved,
    decimal? AngleDegrees,
    TorqueKind Kind,
    EnteredTorque Value,
    ToolId Tool,
    decimal? OdometerKm,
    string Shown) : SignedCommand(Shown)
{
    /// <summary>The odometer as it was entered: the same distance as <see cref="OdometerKm"/>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public OdometerReading? Odometer { get; init; }

    /// <summary>Why the odometer is lower than it was; asked only where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }
}

/// <summary>Sign as witness for one stage of one group instance.</summary>
public sealed record Witness(
    JobId Job,
    string Group,
    string Place,
    int Stage,
    WitnessMethod Method,
    bool Accepted,
    ContentDigest? Finding,
    string Shown) : SignedCommand(Shown);

/// <summary>Stop the work on positions.</summary>
public sealed record HoldPositions(IReadOnlyList<JointPosition> Positions, ContentDigest Reason) : Report;

/// <summary>Decide everything that holds a position.</summary>
public sealed record DecideHold(
    JointPosition Position, Disposition Disposition, ContentDigest Reason, Acceptance? Acceptance, string Shown) : SignedCommand(Shown);

/// <summary>Void an entry. It only takes assurance away.</summary>
/// <param name="WasPulled">For a pull: whether the fastener was pulled all the same. Null for any other entry.</param>
public sealed record VoidEntry(long Target, bool? WasPulled, ContentDigest Reason) : Report;

/// <summary>Restate the value of a pull that was mistyped.</summary>
public sealed record Restate(long Target, EnteredTorque Value, ContentDigest Reason, string Shown) : SignedCommand(Shown);

/// <summary>Confirm another person's correction.</summary>
public sealed record ConfirmCorrection(long Correction, ContentDigest Reason, string Shown) : SignedCommand(Shown);

/// <summary>Answer for pulls of somebody without the right, or for steps that a trainee signed, by whom one stood.</summary>
public sealed record Countersign(IReadOnlyList<long> Records, string Shown) : SignedCommand(Shown);
