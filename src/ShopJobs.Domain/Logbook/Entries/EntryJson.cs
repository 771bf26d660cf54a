using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Writes a value as one JSON string and reads it back.</summary>
/// <param name="recurring">Where values that come again and again are remembered; null for values that do not.</param>
internal sealed class AsText<T>(Func<T, string> write, Func<string, T> read, Recurring<T>? recurring = null) : JsonConverter<T>
    where T : struct
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var plain = reader is { TokenType: JsonTokenType.String, HasValueSequence: false, ValueIsEscaped: false };
        if (plain && recurring is not null && recurring.TryRecall(reader.ValueSpan, out var known))
        {
            return known;
        }

        var value = read(reader.GetString() ?? throw new JsonException($"{typeof(T).Name} is null."));
        if (plain)
        {
            recurring?.Keep(reader.ValueSpan, value);
        }

        return value;
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(write(value));
}

/// <summary>How entries look as JSON: ids, positions, torques and conditions are short strings.</summary>
internal static class EntryJson
{
    public static readonly Recurring<JobId> Jobs = new(256);
    public static readonly Recurring<PersonId> People = new(64);
    public static readonly Recurring<ToolId> Tools = new(64);
    public static readonly Recurring<JointPosition> Positions = new(1024);
    public static readonly Recurring<EnteredTorque> Torques = new(256);
    public static readonly EntryJsonContext Context = new(Options());

    private static JsonSerializerOptions Options()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            RespectRequiredConstructorParameters = false,
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        options.Converters.Add(new AsText<JobId>(id => Text(id.Value), text => new JobId(ReadId(text)), Jobs));
        options.Converters.Add(new AsText<PersonId>(id => Text(id.Value), text => new PersonId(ReadId(text)), People));
        options.Converters.Add(new AsText<ToolId>(id => Text(id.Value), text => new ToolId(ReadId(text)), Tools));
        options.Converters.Add(new AsText<SessionId>(id => Text(id.Value), text => new SessionId(ReadId(text))));
        options.Converters.Add(new AsText<CarId>(id => Text(id.Value), text => new CarId(ReadId(text))));
        options.Converters.Add(new AsText<ContentDigest>(digest => digest.ToString(), ReadDigest));
        options.Converters.Add(new AsText<Joint>(joint => $"{joint.Key}/{joint.Place}", ReadJoint));
        options.Converters.Add(new AsText<JointPosition>(at => string.Create(CultureInfo.InvariantCulture, $"{at.Key}/{at.Place}/{at.Number}"), ReadPosition, Positions));
        options.Converters.Add(new AsText<CarCondition>(condition => $"{condition.Aspect}={condition.Value}", ReadCondition));
        options.Converters.Add(new AsText<Undone>(undone => undone.ToString(), ReadUndone));
        options.Converters.Add(new AsText<OdometerReading>(reading => reading.ToString(), ReadOdometer));
        options.Converters.Add(new AsText<SpokenAgainst>(WriteAgainst, ReadAgainst));
        options.Converters.Add(new AsText<EnteredTorque>(WriteTorque, ReadTorque, Torques));
        return options;
    }

    private static string Text(Guid id) => id.ToString("N");

    private static ContentDigest ReadDigest(string text) =>
        ContentDigest.TryParse(text, out var digest) ? digest : throw new JsonException($"“{text}” is not a content digest.");

    /// <summary>Reads an id as entries write it.</summary>
    internal static Guid ReadId(string? text) => Guid.ParseExact(text ?? "", "N");

    internal static Joint ReadJoint(string? text) => ReadPosition(text + "/1").Joint;

    /// <summary>Reads a position as entries write it.</summary>
    internal static JointPosition ReadPosition(string? text) =>
        text?.Split('/') is [var key, var place, var number]
            ? new JointPosition(key, place, int.Parse(number, CultureInfo.InvariantCulture))
            : throw new JsonException($"“{text}” is not a joint position.");

    private static CarCondition ReadCondition(string text) =>
        text.Split('=') is [var aspect, var value] ? new CarCondition(aspect, value) : throw new JsonException($"“{text}” is not a car condition.");

    internal static Undone ReadUndone(string text) => text.Split(':', 2) switch
    {
        ["setting", var name] => new Undone(UndoneKind.Setting, name),
        ["joint", var name] => new Undone(UndoneKind.Joint, name),
        _ => new Undone(UndoneKind.Result, text),
    };

    private static OdometerReading ReadOdometer(string text) =>
        text.Split(' ') is [var value, var unit] && decimal.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? new OdometerReading(number, unit switch
            {
                "km" => DistanceUnit.Kilometre,
                "mi" => DistanceUnit.Mile,
                _ => throw new JsonException($"“{unit}” is not a unit of distance."),
            })
            : throw new JsonException($"“{text}” is not an odometer.");

    private static string WriteAgainst(SpokenAgainst against) => against.Position is { } at
        ? string.Create(CultureInfo.InvariantCulture, $"{against.Reason} {at.Key}/{at.Place}/{at.Number}")
        : against.Reason.ToString();

    private static SpokenAgainst ReadAgainst(string text) => text.Split(' ', 2) switch
    {
        [var reason] when Enum.TryParse<HoldReason>(reason, out var why) => new SpokenAgainst(why, null),
        [var reason, var position] when Enum.TryParse<HoldReason>(reason, out var why) => new SpokenAgainst(why, ReadPosition(position)),
        _ => throw new JsonException($"“{text}” is not a reason against a move."),
    };

    private static string WriteTorque(EnteredTorque torque) =>
        string.Create(CultureInfo.InvariantCulture, $"{torque.Value} {UnitCode(torque.Unit)}");

    private static EnteredTorque ReadTorque(string text) =>
        text.Split(' ') is [var value, var unit] && decimal.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? new EnteredTorque(number, ReadUnit(unit))
            : throw new JsonException($"“{text}” is not a torque.");

    private static string UnitCode(TorqueUnit unit) => unit switch
    {
        TorqueUnit.NewtonMetre => "N.m",
        TorqueUnit.PoundForceFoot => "lbf.ft",
        TorqueUnit.PoundForceInch => "lbf.in",
        TorqueUnit.KilogramForceMetre => "kgf.m",
        _ => throw new JsonException($"{unit} is not a torque unit."),
    };

    private static TorqueUnit ReadUnit(string code) => code switch
    {
        "N.m" => TorqueUnit.NewtonMetre,
        "lbf.ft" => TorqueUnit.PoundForceFoot,
        "lbf.in" => TorqueUnit.PoundForceInch,
        "kgf.m" => TorqueUnit.KilogramForceMetre,
        _ => throw new JsonException($"“{code}” is not a torque unit."),
    };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    UseStringEnumConverter = true)]
[JsonSerializable(typeof(JobStarted))]
[JsonSerializable(typeof(JobEnded))]
[JsonSerializable(typeof(RevisionAdopted))]
[JsonSerializable(typeof(JobPutOnHold))]
[JsonSerializable(typeof(JobResumed))]
[JsonSerializable(typeof(JobCancelled))]
[JsonSerializable(typeof(JobTakenBack))]
[JsonSerializable(typeof(CarConditionDeclared))]
[JsonSerializable(typeof(StepFinished))]
[JsonSerializable(typeof(StepConfirmed))]
[JsonSerializable(typeof(ResultRecorded))]
[JsonSerializable(typeof(AsFoundRecorded))]
[JsonSerializable(typeof(Opened))]
[JsonSerializable(typeof(FittedNew))]
[JsonSerializable(typeof(ThreadTreated))]
[JsonSerializable(typeof(HandTightened))]
[JsonSerializable(typeof(TorqueRecorded))]
[JsonSerializable(typeof(DeclaredFromPaper))]
[JsonSerializable(typeof(Settled))]
[JsonSerializable(typeof(Witnessed))]
[JsonSerializable(typeof(Countersigned))]
[JsonSerializable(typeof(PositionHeld))]
[JsonSerializable(typeof(Decided))]
[JsonSerializable(typeof(WorkHeld))]
[JsonSerializable(typeof(WorkDecided))]
[JsonSerializable(typeof(Corrected))]
[JsonSerializable(typeof(CorrectionConfirmed))]
[JsonSerializable(typeof(Released))]
[JsonSerializable(typeof(ReleaseUpheld))]
[JsonSerializable(typeof(ReleaseWithdrawn))]
[JsonSerializable(typeof(RoadTestEnded))]
[JsonSerializable(typeof(SummaryIssued))]
[JsonSerializable(typeof(Arrived))]
[JsonSerializable(typeof(LeftHalfDone))]
[JsonSerializable(typeof(WorkTakenOver))]
[JsonSerializable(typeof(JointListChanged))]
[JsonSerializable(typeof(FewerJointsAsked))]
[JsonSerializable(typeof(JointListKept))]
[JsonSerializable(typeof(Left))]
[JsonSerializable(typeof(CarMoved))]
[JsonSerializable(typeof(LookedOver))]
[JsonSerializable(typeof(ReTorqueExtended))]
[JsonSerializable(typeof(PhotoTaken))]
[JsonSerializable(typeof(ToolEntered))]
[JsonSerializable(typeof(Calibrated))]
[JsonSerializable(typeof(Quarantined))]
[JsonSerializable(typeof(Doubted))]
[JsonSerializable(typeof(OwnerTold))]
[JsonSerializable(typeof(Cleared))]
[JsonSerializable(typeof(CalibrationWithdrawn))]
[JsonSerializable(typeof(ToolRetired))]
[JsonSerializable(typeof(ToolBroughtBack))]
[JsonSerializable(typeof(InstrumentEntered))]
[JsonSerializable(typeof(InstrumentChecked))]
[JsonSerializable(typeof(ClockStepped))]
[JsonSerializable(typeof(ClockSet))]
internal sealed partial class EntryJsonContext : JsonSerializerContext;
