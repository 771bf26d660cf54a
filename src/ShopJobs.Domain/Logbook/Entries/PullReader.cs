using System.Text.Json;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Reads a torque record, by far the most frequent entry, in the very form it is written in and with values that were read
/// before. Anything else is left to the general way of reading, which also says what is wrong where something is.
/// </summary>
internal static class PullReader
{
    private static readonly Recurring<string> Groups = new(64);
    private static readonly Recurring<SpecificationInForce> Specifications = new(64);

    /// <summary>Null for a payload to be read the general way.</summary>
    public static Entry? Read(ReadOnlySpan<byte> payload)
    {
        var text = new PayloadText(payload);
        text.Literal("{\"job\":\""u8);
        var job = text.Known(EntryJson.Jobs);
        text.Literal(",\"group\":\""u8);
        var group = text.Plain(Groups);
        text.Literal(",\"position\":\""u8);
        var position = text.Known(EntryJson.Positions);
        text.Literal(",\"cycle\":"u8);
        var cycle = text.Count();
        text.Literal(",\"stage\":"u8);
        var stage = text.Count();
        text.Literal(",\"visit\":"u8);
        var visit = text.Count();
        text.Literal(",\"kind\":\""u8);
        var kind = text.Next("Reading\""u8) ? TorqueKind.Reading : TorqueKind.SettingConfirmed;
        if (kind == TorqueKind.SettingConfirmed)
        {
            text.Literal("SettingConfirmed\""u8);
        }

        text.Literal(",\"value\":\""u8);
        var value = text.Known(EntryJson.Torques);
        text.Literal(",\"tool\":\""u8);
        var tool = text.Known(EntryJson.Tools);
        text.Literal(",\"on\":\""u8);
        var on = text.Date();
        text.Literal(",\"spec\":"u8);
        var spec = text.Until(",\"helpers\":["u8);
        text.Literal(",\"helpers\":[],\"restsOn\":"u8);
        var restsOn = text.Numbers();
        text.Literal(",\"problems\":[]"u8);
        JointPosition? ridesOn = text.Next(",\"ridesOn\":\""u8) ? text.Known(EntryJson.Positions) : null;
        var conditions = text.Next(",\"conditions\":"u8) ? text.Numbers() : null;
        var drivenBy = text.Next(",\"drivenBy\":"u8) ? text.Numbers() : null;
        long? toolEntry = text.Next(",\"toolEntry\":"u8) ? text.Number() : null;
        long? clock = text.Next(",\"clock\":"u8) ? text.Number() : null;
        text.Literal("}"u8);
        return text.IsWhole && SpecificationIn(spec) is { } inForce
            ? new TorqueRecorded(job, group, position, cycle, stage, visit, kind, value, tool, on, inForce, [], restsOn, [])
            {
                RidesOn = ridesOn,
                Conditions = conditions,
                DrivenBy = drivenBy,
                ToolEntry = toolEntry,
                Clock = clock,
            }
            : null;
    }

    private static SpecificationInForce? SpecificationIn(ReadOnlySpan<byte> text)
    {
        if (Specifications.TryRecall(text, out var known))
        {
            return known;
        }

        try
        {
            if (JsonSerializer.Deserialize(text, EntryJson.Context.SpecificationInForce) is { } read)
            {
                Specifications.Keep(text, read);
                return read;
            }
        }
        catch (JsonException)
        {
            // The general way reads the whole again and says what is wrong.
            return null;
        }

        return null;
    }
}
