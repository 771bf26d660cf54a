using System.Text.Json;
using System.Text.Json.Serialization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Step;

/// <summary>What a report from a tablet says has happened.</summary>
public enum CellReportKind
{
    Pull,
    HandTight,
    FittedNew,
    Opened,
    Condition,
}

/// <summary>One position as it travels between page and server.</summary>
/// <param name="Cycle">Its cycle as it was on the screen; null in what a tablet kept from before cycles were sent.</param>
public sealed record CellPosition(string Key, string Place, int Number, int? Cycle = null)
{
    /// <summary>A position as it stands on a screen.</summary>
    public static CellPosition Of(PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new(book.Position.Key, book.Position.Place, book.Position.Number, book.Cycle);
    }
}

/// <summary>
/// A report of something that has happened at the car, as the tablet's script sends it. The page writes everything but
/// <see cref="Id"/>, <see cref="Value"/> and <see cref="Helpers"/>; the script makes the id before the first send and keeps it, with the
/// session of that moment.
/// </summary>
/// <param name="Person">Who did it, as the page was drawn for; another person's session cannot send it.</param>
public sealed record CellReport(CellReportKind What, Guid Person, Guid Car)
{
    /// <summary>Longest lot that is kept.</summary>
    public const int LotLength = 40;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter() },
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>The session it was made in; null in what a tablet kept from before sessions were sent.</summary>
    public Guid? Session { get; init; }

    /// <summary>A report by whoever this page was drawn for.</summary>
    public static CellReport By(StepScene scene, CellReportKind what)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return new(what, scene.Here.Person.Value, scene.Car.Id.Value) { Session = scene.Here.Session.Value };
    }

    /// <summary>Command id.</summary>
    public Guid? Id { get; init; }

    public Guid? Job { get; init; }

    public string? Group { get; init; }

    public IReadOnlyList<CellPosition>? Positions { get; init; }

    /// <summary>Cycle, stage and visit that were on the screen, for a pull.</summary>
    public int? Cycle { get; init; }

    public int? Stage { get; init; }

    public int? Visit { get; init; }

    public TorqueKind? Kind { get; init; }

    /// <summary>The number as typed.</summary>
    public string? Value { get; init; }

    public TorqueUnit? Unit { get; init; }

    public Guid? Tool { get; init; }

    /// <summary>Run-down torque read on the way down, in N·m, where one is added and none was recorded yet.</summary>
    public string? RunDown { get; init; }

    public IReadOnlyList<Guid>? Helpers { get; init; }

    /// <summary>True where the lead reports it for a person who does not work here any more: it is recorded and does not count.</summary>
    public bool? ForLeaver { get; init; }

    /// <summary>It was kept on the tablet for a while before it was sent: when it was made is not known here.</summary>
    public bool? Late { get; init; }

    /// <summary>Lot of new hardware, where it was read off the bag.</summary>
    public string? Lot { get; init; }

    /// <summary>Says the car's condition.</summary>
    public IReadOnlyList<CarCondition>? Conditions { get; init; }

    /// <summary>Where it stands so, for a condition that is of a place.</summary>
    public IReadOnlyList<string>? Places { get; init; }

    /// <summary>As JSON, for the page.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads one; null when it is not one.</summary>
    public static async Task<CellReport?> ReadAsync(Stream body, CancellationToken cancellation)
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<CellReport>(body, Options, cancellation);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The command it stands for; null, with what is missing, when it cannot be one.</summary>
    public (Report? Command, string? Problem) ToCommand()
    {
        if (What == CellReportKind.Condition)
        {
            return Conditions is { Count: > 0 and < 20 } && Places is not { Count: > 20 }
                ? (new DeclareCondition(Conditions) { Places = Places, MadeIn = MadeIn }, null)
                 : (null, "no condition is named");
        }

        if (Positions is not { Count: > 0 and <= 200 } || Positions.Any(position => position is not { Key: not null, Place: not null }))
        {
            return (null, "no position is named");
        }

        var at = Positions.Select(position => new JointPosition(position.Key, position.Place, position.Number)).ToList();
        IReadOnlyList<int>? cycles = Positions.All(position => position.Cycle is not null) ? [.. Positions.Select(position => position.Cycle!.Value)] : null;
        var job = Job is { } id ? new JobId(id) : (JobId?)null;
        if (What == CellReportKind.Opened)
        {
            return (new OpenPositions(at, job, null) { Cycles = cycles }, null);
        }

        if (job is not { } inJob || Group is null)
        {
            return (null, "no job or group is named");
        }

        return What switch
        {
            CellReportKind.FittedNew => (new FitNew(inJob, Group, at, LotRead()) { Cycles = cycles, ReportedFor = Leaver, MadeIn = MadeIn }, null),
            CellReportKind.HandTight => (new HandTighten(inJob, Group, at, WithMe()) { Cycles = cycles, ReportedFor = Leaver, MadeIn = MadeIn }, null),
            CellReportKind.Pull => Pull(inJob, Group, at[0]),
            _ => (null, "nothing is reported"),
        };
    }

    private (Report? Command, string? Problem) Pull(JobId job, string group, JointPosition position)
    {
        if (this is not { Cycle: { } cycle, Stage: { } stage, Visit: { } visit, Kind: { } kind, Unit: { } unit, Tool: { } tool }
            || kind is not (TorqueKind.SettingConfirmed or TorqueKind.Reading or TorqueKind.AngleTurned) || !Enum.IsDefined(unit))
        {
            return (null, "stage, tool or kind of record is not named");
        }

        if (Value?.Any(char.IsLetter) == true)
        {
            return (null, "the value is digits only, its unit is beside the field");
        }

        if (kind == TorqueKind.AngleTurned)
        {
            return Turn.Read(Value) is { } degrees
                ? (new RecordTorque(job, group, position, cycle, stage, visit, kind, null, new ToolId(tool), WithMe()) { AngleDegrees = degrees, ReportedFor = Leaver, MadeIn = MadeIn }, null)
                : (null, FormattableString.Invariant($"the angle is one number from 0 to {Turn.Largest} degrees"));
        }

        EnteredTorque? runDown = null;
        if (RunDown is not null)
        {
            if (!EnteredTorque.TryParse(RunDown, TorqueUnit.NewtonMetre, out var turned, out var wrong))
            {
                return (null, wrong);
            }

            runDown = turned;
        }

        return EnteredTorque.TryParse(Value, unit, out var value, out var problem)
            ? (new RecordTorque(job, group, position, cycle, stage, visit, kind, value, new ToolId(tool), WithMe()) { RunDown = runDown, ReportedFor = Leaver, MadeIn = MadeIn }, null)
            : (null, problem);
    }

    // What the lead reports for somebody else was made in no session of his.
    private SessionId? MadeIn => Session is { } session && ForLeaver != true ? new SessionId(session) : null;

    private PersonId? Leaver => ForLeaver == true ? new PersonId(Person) : null;

    private string? LotRead() => string.IsNullOrWhiteSpace(Lot) ? null : Lot.Trim() is { Length: > LotLength } long_ ? long_[..LotLength] : Lot.Trim();

    private List<PersonId> WithMe() => [.. (Helpers ?? []).Distinct().Select(id => new PersonId(id)).Where(id => id.Value != Person)];
}
