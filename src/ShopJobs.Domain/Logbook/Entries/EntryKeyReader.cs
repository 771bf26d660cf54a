using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Where the payload of one kind of entry holds its job.</summary>
internal enum JobIn
{
    Nowhere,

    /// <summary><c>job</c>.</summary>
    Job,

    /// <summary><c>job</c>, which may be absent.</summary>
    JobIfAny,
}

/// <summary>Where the payload of one kind of entry holds its position.</summary>
internal enum PositionIn
{
    Nowhere,

    /// <summary>The first of <c>positions</c>.</summary>
    Positions,

    /// <summary>The first of <c>leftOpen</c>, which may be empty.</summary>
    LeftOpenIfAny,

    /// <summary><c>position</c>.</summary>
    Position,

    /// <summary>Position 1 of <c>joint</c>.</summary>
    Joint,
}

/// <summary>Where the payload of one kind of entry holds its tool.</summary>
internal enum ToolIn
{
    Nowhere,

    /// <summary><c>tool</c>.</summary>
    Tool,

    /// <summary><c>tool</c>, which may be absent.</summary>
    ToolIfAny,
}

/// <summary>
/// Reads the keys of one kind of entry out of its payload without building the entry, for whoever looks at a million of them.
/// The payload must be one JSON object with no member but the entry's own; values that are no keys are not looked at.
/// </summary>
internal sealed class EntryKeyReader(string kind, JsonTypeInfo type, JobIn job, PositionIn position, ToolIn tool)
{
    private readonly byte[][] members = [.. type.Properties.Select(property => System.Text.Encoding.UTF8.GetBytes(property.Name))];

    /// <summary>The keys. Throws <see cref="FormatException"/> for a payload that is no such object or lacks a key it must have.</summary>
    public EntryKeys Read(ReadOnlySpan<byte> payload)
    {
        try
        {
            return Utf8.IsValid(payload) ? Found(new Utf8JsonReader(payload)) : throw new FormatException("It is not UTF-8.");
        }
        catch (Exception e) when (e is JsonException or FormatException or InvalidOperationException or OverflowException)
        {
            throw new FormatException($"An entry of kind “{kind}” can't be read: {e.Message}", e);
        }
    }

    private EntryKeys Found(Utf8JsonReader reader)
    {
        JobId? itsJob = null;
        JointPosition? itsPosition = null;
        ToolId? itsTool = null;
        var next = 0;
        reader.Read();
        Require(reader.TokenType == JsonTokenType.StartObject, "it is not an object");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            next = Member(ref reader, next);
            if (job != JobIn.Nowhere && reader.ValueTextEquals("job"u8))
            {
                reader.Read();
                itsJob = job == JobIn.JobIfAny && reader.TokenType == JsonTokenType.Null ? null : new JobId(EntryJson.ReadId(reader.GetString()));
            }
            else if (tool != ToolIn.Nowhere && reader.ValueTextEquals("tool"u8))
            {
                reader.Read();
                itsTool = tool == ToolIn.ToolIfAny && reader.TokenType == JsonTokenType.Null ? null : new ToolId(EntryJson.ReadId(reader.GetString()));
            }
            else if (IsPosition(ref reader))
            {
                itsPosition = PositionOf(ref reader);
            }
            else
            {
                reader.Skip();
            }
        }

        Require(!reader.Read(), "something comes after it");
        Require(itsJob is not null || job != JobIn.Job, "it has no job");
        Require(itsPosition is not null || position is PositionIn.Nowhere or PositionIn.LeftOpenIfAny, "it has no position");
        Require(itsTool is not null || tool != ToolIn.Tool, "it has no tool");
        return new EntryKeys(itsJob, itsPosition?.Key, itsPosition?.Place, itsPosition?.Number, itsTool);
    }

    // The place of the member after this one, which is written next.
    private int Member(ref Utf8JsonReader reader, int expected)
    {
        for (var i = 0; i < members.Length; i++)
        {
            var at = (expected + i) % members.Length;
            if (reader.ValueTextEquals(members[at]))
            {
                return at + 1;
            }
        }

        throw new FormatException($"it has no member “{reader.GetString()}”");
    }

    private bool IsPosition(ref Utf8JsonReader reader) => position switch
    {
        PositionIn.Positions => reader.ValueTextEquals("positions"u8),
        PositionIn.Position => reader.ValueTextEquals("position"u8),
        PositionIn.Joint => reader.ValueTextEquals("joint"u8),
        PositionIn.LeftOpenIfAny => reader.ValueTextEquals("leftOpen"u8),
        _ => false,
    };

    private JointPosition? PositionOf(ref Utf8JsonReader reader)
    {
        reader.Read();
        if (position is not (PositionIn.Positions or PositionIn.LeftOpenIfAny))
        {
            return position == PositionIn.Joint ? EntryJson.ReadJoint(reader.GetString()).At(1) : EntryJson.ReadPosition(reader.GetString());
        }

        Require(reader.TokenType == JsonTokenType.StartArray, "its positions are not a list");
        reader.Read();
        if (position == PositionIn.LeftOpenIfAny && reader.TokenType == JsonTokenType.EndArray)
        {
            return null;
        }

        var first = EntryJson.ReadPosition(reader.TokenType == JsonTokenType.String ? reader.GetString() : null);
        while (reader.TokenType != JsonTokenType.EndArray)
        {
            Require(reader.TokenType == JsonTokenType.String, "one of its positions is not a text");
            reader.Read();
        }

        return first;
    }

    private static void Require(bool met, string otherwise)
    {
        if (!met)
        {
            throw new FormatException(otherwise);
        }
    }
}
