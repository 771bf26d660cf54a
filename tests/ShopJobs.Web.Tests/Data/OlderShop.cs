using System.IO.Compression;
using System.Reflection;

namespace ShopJobs.Web.Tests.Data;

/// <summary>The stored shop of an earlier program, and what this program is meant to say differently of it.</summary>
internal static class OlderShop
{
    /// <summary>The instant at which the program that wrote it looked at its cars.</summary>
    public static readonly DateTimeOffset LookedAt = new(2026, 3, 12, 8, 0, 0, TimeSpan.Zero);

    /// <summary>
    /// What newer rules change: "- " and a line as it was, "+ " and a line as it is now; first all that went, in the order of the
    /// stored file, then all that came. Each block says in a comment which rule changed it.
    /// </summary>
    public static readonly IReadOnlyList<string> Differences = [];

    /// <summary>The database file, unpacked.</summary>
    public static Stream Database() => new GZipStream(Open("shop.db.gz"), CompressionMode.Decompress);

    /// <summary>What was said of its cars.</summary>
    public static IReadOnlyList<string> Standings() => Lines("standings.txt");

    /// <summary>Its logbooks with number and hash of their newest entries.</summary>
    public static IReadOnlyList<string> Heads() => Lines("heads.txt");

    private static string[] Lines(string name)
    {
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static Stream Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream($"older-shop/{name}")
        ?? throw new InvalidOperationException($"The stored shop has no {name}.");
}
