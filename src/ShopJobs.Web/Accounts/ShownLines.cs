using System.Text;

namespace ShopJobs.Web.Accounts;

/// <summary>Exactly what is shown to a signer: what the signature means, the title, and the lines. Kept beside the entry.</summary>
public sealed class ShownLines
{
    private readonly byte[] digest;

    /// <summary>Each text is one line: a break inside one becomes a blank, on the screen and in what is kept.</summary>
    public ShownLines(string meaning, string title, IEnumerable<string> lines)
    {
        Meaning = OneLine(meaning);
        Title = OneLine(title);
        Lines = [.. lines.Select(OneLine)];
        digest = ShownDigest.Of(Meaning, Lines.Prepend(Title));
    }

    /// <summary>What the signature means, as the button says it.</summary>
    public string Meaning { get; }

    public string Title { get; }

    public IReadOnlyList<string> Lines { get; }

    /// <summary>SHA-256 over meaning, title and lines; a copy.</summary>
    public byte[] Digest => [.. digest];

    /// <summary>The digest as commands and entries name it.</summary>
    public string Hex => Convert.ToHexStringLower(digest);

    /// <summary>As it is kept: meaning, title and each line on a line of its own, in UTF-8.</summary>
    public byte[] ToBytes() => Encoding.UTF8.GetBytes(string.Join('\n', [Meaning, Title, .. Lines]));

    /// <summary>Reads what was kept; null when it is no such text.</summary>
    public static ShownLines? Read(string kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        return kept.Split('\n') is [var meaning, var title, .. var lines] ? new ShownLines(meaning, title, lines) : null;
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
