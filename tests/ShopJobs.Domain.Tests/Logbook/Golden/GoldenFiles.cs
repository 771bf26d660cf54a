using System.Text;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Golden;

/// <summary>One stored payload: <c>kind.version.name.json</c>, the payload on one line.</summary>
internal sealed record GoldenPayload(string File, string Kind, int Version, byte[] Payload);

/// <summary>What an earlier program wrote. These files are only ever added to.</summary>
internal static class GoldenFiles
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Logbook", "Golden");

    public static IReadOnlyList<GoldenPayload> Payloads { get; } =
        [.. Directory.GetFiles(Folder, "*.json").Order(StringComparer.Ordinal).Select(Read)];

    /// <summary>A whole logbook: an envelope a line, and the last entry's hash in the last line.</summary>
    public static (IReadOnlyList<byte[]> Envelopes, EntryHash Head) Book(string name)
    {
        var lines = File.ReadAllText(Path.Combine(Folder, name)).TrimEnd('\n').Split('\n');
        return EntryHash.TryParse(lines[^1], out var head)
            ? ([.. lines[..^1].Select(Encoding.UTF8.GetBytes)], head)
            : throw new InvalidDataException($"{name} does not end in a hash.");
    }

    private static GoldenPayload Read(string path)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        return name.Split('.') is [var kind, var version, _] && int.TryParse(version, out var number)
            ? new GoldenPayload(name, kind, number, Encoding.UTF8.GetBytes(File.ReadAllText(path).TrimEnd('\n')))
            : throw new InvalidDataException($"{name} is not named kind.version.name.");
    }
}
