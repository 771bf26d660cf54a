namespace ShopJobs.Domain.Tests.Reference.Checks;

/// <summary>
/// Compares a rule told in words with the rules held in the domain: the same figures in the same order, the same number of negations, and
/// most of the words. A rule whose key has words of its own must share most of them too.
/// </summary>
internal static class RowWords
{
    private const double MostWords = 0.7;
    private static readonly string[] Negations = ["not", "no", "never", "cannot"];

    public static void MatchesOne(ReferenceRow row, string key, string statement, IReadOnlyList<(string Key, string Statement)> held) => row.Holds(
        held.Any(rule => Matches(key, rule.Key) && Matches(statement, rule.Statement)),
        $"no rule held here says \"{key}: {statement}\"");

    private static bool Matches(string printed, string held) =>
        ReferenceRow.NumbersIn(printed).SequenceEqual(ReferenceRow.NumbersIn(held))
        && Negative(printed) == Negative(held)
        && Share(printed, held) >= MostWords;

    private static int Negative(string text) => Words(text).Count(Negations.Contains);

    private static double Share(string printed, string held)
    {
        var (words, known) = (Words(printed).Where(w => w.Length > 2).ToList(), Words(held).ToHashSet());
        return words.Count == 0 ? 1 : (double)words.Count(known.Contains) / words.Count;
    }

    private static IEnumerable<string> Words(string text) => text.ToLowerInvariant()
        .Split([' ', ',', ';', ':', '.', '(', ')', '/', '-', '='], StringSplitOptions.RemoveEmptyEntries)
        .Where(word => word.All(char.IsLetter));
}
