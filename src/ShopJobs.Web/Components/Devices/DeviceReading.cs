using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Devices;

/// <summary>A reading as a tool sends it.</summary>
/// <param name="Command">Made by the sender before the first send, the same on each retry.</param>
/// <param name="Value">The torque, as a number or a text.</param>
/// <param name="Unit">Its unit, which is the tool's own.</param>
/// <param name="At">When it was read, with its offset.</param>
/// <param name="Angle">The angle turned in degrees, from a tool that measures one.</param>
public sealed record DeviceReading(Guid? Command, JsonElement? Value, string? Unit, DateTimeOffset? At, JsonElement? Angle)
{
    /// <summary>A reading is of the fastener that is next now only while it is fresh: common practice, no source.</summary>
    public static readonly TimeSpan Fresh = TimeSpan.FromMinutes(2);

    /// <summary>Above so many times its top no tool reads: common practice, no source.</summary>
    public const decimal OverTop = 2;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow };

    /// <summary>Reads one; null when it is not one.</summary>
    public static async Task<DeviceReading?> ReadAsync(Stream body, CancellationToken cancellation)
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<DeviceReading>(body, Options, cancellation);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The reading as it is offered to a tablet; null, with why, when this tool cannot have read it now.</summary>
    public (OfferedReading? Reading, string? Problem) Of(TorqueTool tool, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(tool);
        if (Command is not { } id || id == Guid.Empty)
        {
            return (null, "The reading has no command id.");
        }

        if (tool.Kind == ToolKind.Click)
        {
            return (null, $"{tool.Name} is a click wrench: it shows no reading.");
        }

        if (Unit is null || !TorqueUnits.TryParse(Unit, out var unit) || unit != tool.Unit)
        {
            return (null, $"{tool.Name} reads in {tool.Unit.Symbol()}. The reading names another unit or none.");
        }

        if (!EnteredTorque.TryParse(TextOf(Value), unit, out var value, out var problem))
        {
            return (null, $"Not taken: {problem}.");
        }

        if (value.Value == 0 || value.Value > tool.Top * OverTop)
        {
            return (null, $"{value} is no reading of {tool.Name}, which goes to {tool.Top.ToString("0.####", CultureInfo.InvariantCulture)} {tool.Unit.Symbol()}.");
        }

        if (At is not { } at || (now - at.UtcDateTime).Duration() > Fresh)
        {
            return (null, "The reading is not of now: it may be of another fastener. Type it on the tablet, and look at the tool's clock.");
        }

        var angle = TextOf(Angle);
        var degrees = Turn.Read(angle);
        return angle is not null && degrees is null
            ? (null, string.Create(CultureInfo.InvariantCulture, $"The angle is one number from 0 to {Turn.Largest} degrees."))
            : (new OfferedReading(new CommandId(id), value, degrees), null);
    }

    /// <summary>True where a record holds what was sent here: its angle at an angle stage, its torque at any other.</summary>
    public bool IsOf(TorqueRecorded pull)
    {
        ArgumentNullException.ThrowIfNull(pull);
        return pull.Kind == TorqueKind.AngleTurned
            ? Turn.Read(TextOf(Angle)) == pull.AngleDegrees
            : EnteredTorque.TryParse(TextOf(Value), pull.Value?.Unit ?? default, out var value, out _) && value == pull.Value;
    }

    private static string? TextOf(JsonElement? element) => element switch
    {
        { ValueKind: JsonValueKind.String } text => text.GetString(),
        { ValueKind: JsonValueKind.Number } number => number.GetRawText(),
        null or { ValueKind: JsonValueKind.Null } => null,
        _ => "?",
    };
}

/// <summary>A reading that may be offered to the tablet at which its tool is picked.</summary>
/// <param name="Id">The command under which the tablet reports it.</param>
/// <param name="Degrees">The angle turned; null where none was sent.</param>
public sealed record OfferedReading(CommandId Id, EnteredTorque Value, decimal? Degrees);
