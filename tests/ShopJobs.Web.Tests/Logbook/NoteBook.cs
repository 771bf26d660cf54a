using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Logbook;

/// <summary>The smallest kind of entry there can be: a note, with a place and a tool to find it by.</summary>
internal static class NoteBook
{
    public const string Kind = "note";

    public static readonly JobId Job = new(Guid.Parse("a0000000-0000-4000-8000-00000000000a"));
    public static readonly ToolId Wrench = new(Guid.Parse("b0000000-0000-4000-8000-00000000000b"));

    public static readonly Folder<ImmutableList<string>> Notes = new("notes", [], (notes, entry) =>
        (entry.Kind, entry.Version) == (Kind, 1)
            ? notes.Add(TextOf(entry.Payload))
            : throw new UnknownEntryException(entry.Kind, entry.Version));

    public static NewEntry Note(LogbookId logbook, string text) => new(logbook, Kind, 1, Payload(text), Keys);

    public static NewEntry FromLater(LogbookId logbook) => new(logbook, "note", 2, Payload("later"), Keys);

    public static EntryKeys KeysOf(string kind, int version, ReadOnlyMemory<byte> payload) => (kind, version) != (Kind, 1)
        ? throw new UnknownEntryException(kind, version)
        : TextOf(payload).Length > 0 ? Keys : EntryKeys.None;

    public static ReadOnlyMemory<byte> Bytes(string text) => Encoding.UTF8.GetBytes(text);

    public static ICommandAnswer Answer(string text) => new NoteAnswer(text);

    public static string Text(ICommandAnswer answer) => Text(answer.ToBytes());

    public static string Text(ReadOnlyMemory<byte> bytes) => Encoding.UTF8.GetString(bytes.Span);

    private static EntryKeys Keys => new(Job, "wheel.nut", "front-left", 3, Wrench);

    private static byte[] Payload(string text) => JsonSerializer.SerializeToUtf8Bytes(new { text });

    private static string TextOf(ReadOnlyMemory<byte> payload)
    {
        using var document = JsonDocument.Parse(payload);
        return document.RootElement.GetProperty("text").GetString()!;
    }

    private sealed record NoteAnswer(string Text) : ICommandAnswer
    {
        public ReadOnlyMemory<byte> ToBytes() => Bytes(Text);
    }
}
