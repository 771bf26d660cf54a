using System.Text.Json.Serialization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Something a person asks or reports of one car.</summary>
public abstract record Command;

/// <summary>Put a procedure on the car.</summary>
public sealed record StartJob(
    JobId Job, Procedure Procedure, string ProcedureDigest, string RegisterDigest, IReadOnlyList<string> Places) : Command;

/// <summary>Say how the car stands.</summary>
public sealed record DeclareCondition(IReadOnlyList<CarCondition> Conditions) : Command;

/// <summary>Sign a step: ticks and values given, and a digest of what was on the screen.</summary>
public sealed record ConfirmStep(
    JobId Job,
    string Step,
    IReadOnlyList<string> Ticks,
    IReadOnlyList<MeasuredValue> Values,
    bool NotApplicable,
    ContentDigest? Reason,
    string Shown) : Command;

/// <summary>Record a result.</summary>
public sealed record RecordResult(
    string Name,
    IReadOnlyList<MeasuredValue> Values,
    ResultBasis Basis,
    string? Instrument,
    IReadOnlyList<string> Conditions,
    JobId? Job,
    string? Step) : Command;

/// <summary>Report positions opened, backed off or removed.</summary>
public sealed record OpenPositions(IReadOnlyList<JointPosition> Positions, JobId? Job, ContentDigest? Reason) : Command;

/// <summary>Report new hardware on positions.</summary>
public sealed record FitNew(JobId Job, string Group, IReadOnlyList<JointPosition> Positions, string? Lot) : Command;

/// <summary>Report positions run down by hand.</summary>
public sealed record HandTighten(
    JobId Job, string Group, IReadOnlyList<JointPosition> Positions, IReadOnlyList<PersonId> Helpers) : Command;

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
    IReadOnlyList<PersonId> Helpers) : Command
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
    ToolId Tool) : Command;

/// <summary>Sign as witness for one stage of one group instance.</summary>
public sealed record Witness(
    JobId Job,
    string Group,
    string Place,
    int Stage,
    WitnessMethod Method,
    bool Accepted,
    ContentDigest? Finding,
    string Shown) : Command;

/// <summary>Stop the work on positions.</summary>
public sealed record HoldPositions(IReadOnlyList<JointPosition> Positions, ContentDigest Reason) : Command;

/// <summary>Decide everything that holds a position.</summary>
public sealed record DecideHold(
    JointPosition Position, Disposition Disposition, ContentDigest Reason, ContentDigest? Acceptance, string Shown) : Command;

/// <summary>Void an entry, or restate the value of a pull.</summary>
public sealed record Correct(long Target, EnteredTorque? Restated, ContentDigest Reason) : Command;

/// <summary>Confirm another person's correction.</summary>
public sealed record ConfirmCorrection(long Correction, ContentDigest Reason) : Command;

/// <summary>Release the car.</summary>
public sealed record Release(
    ReleaseKind Kind, decimal? OdometerKm, ContentDigest? CustomerAcceptance, string Shown) : Command;

/// <summary>Issue the next version of the work summary.</summary>
/// <param name="AsOf">Number of the newest entry the snapshot was made from: refused once the logbook has grown.</param>
public sealed record IssueSummary(ContentDigest Snapshot, long AsOf, string Shown) : Command;

/// <summary>What was decided.</summary>
public abstract record Verdict
{
    /// <summary>Recorded. The entries go into the car's logbook in this order.</summary>
    public sealed record Accepted(IReadOnlyList<Entry> Entries) : Verdict;

    /// <summary>Refused, with every reason.</summary>
    public sealed record Refused(IReadOnlyList<HoldPoint> Reasons) : Verdict;

    private Verdict()
    {
    }
}
