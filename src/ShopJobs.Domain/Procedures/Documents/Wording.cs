namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Small pieces of wording for problems.</summary>
internal static class Wording
{
    private const int MostShown = 60;
    private const int FarthestKey = 3;

    /// <summary>The text in quotes, cut where it is long.</summary>
    public static string Quote(string text) => text.Length <= MostShown ? $"“{text}”" : $"“{text[..MostShown]}…”";

    /// <summary>"did you mean …" for a slip of the hand, else the list of what is known.</summary>
    public static string Nearest(string written, IReadOnlyCollection<string> known)
    {
        var nearest = known.Select(word => (Word: word, Far: Distance(written, word))).OrderBy(pair => pair.Far).FirstOrDefault();
        return nearest.Word is not null && nearest.Far <= Math.Min(FarthestKey, Math.Max(1, nearest.Word.Length / 2))
            ? $"did you mean {Quote(nearest.Word)}"
            : known.Count == 0 ? "there is none here" : $"known here: {string.Join(", ", known.Take(40))}{(known.Count > 40 ? " …" : "")}";
    }

    /// <summary>Letters to change, add or take away (Levenshtein 1965); above 40 letters only equality counts.</summary>
    private static int Distance(string written, string known)
    {
        if (written.Length > 40 || known.Length > 40)
        {
            return written == known ? 0 : int.MaxValue;
        }

        var row = Enumerable.Range(0, known.Length + 1).ToArray();
        for (var i = 1; i <= written.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= known.Length; j++)
            {
                var above = row[j];
                var same = char.ToLowerInvariant(written[i - 1]) == char.ToLowerInvariant(known[j - 1]);
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + (same ? 0 : 1));
                diagonal = above;
            }
        }

        return row[^1];
    }
}
