using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads what a procedure says to the customer.</summary>
internal static partial class CustomerTextReader
{
    private const string Key = "customer";
    private const int LongestTitle = 80;
    private const int LongestSentence = 160;
    private const int MostSentences = 3;

    private static readonly string[] Keys = ["title", "says"];
    private static readonly string[] Promises = ["guarantee", "cannot fail", "can't fail", "never fail", "perfectly safe", "100 %", "100%"];

    /// <summary>The text; null where the procedure has none, or where a part of it is missing.</summary>
    public static CustomerText? Read(MapReader procedure)
    {
        if (!procedure.Has(Key) || MapReader.Of(procedure.At(Key), procedure.Problems, Keys) is not { } map)
        {
            return null;
        }

        var title = map.Text("title", LongestTitle);
        var says = map.Needed("says") is null ? [] : map.List("says");
        if (map.Has("says") && says.Count is 0 or > MostSentences)
        {
            map.Problems.Error(map.At("says"), $"There are {says.Count} sentences for the customer", $"write one to {MostSentences}");
        }

        var sentences = says.Select(node => Sentence(node, map.Problems)).OfType<string>().ToList();
        Check(map.At("title"), title, map.Problems);
        return title is null ? null : new CustomerText(title, sentences);
    }

    private static string? Sentence(DocumentNode node, ProblemsFound problems)
    {
        var text = MapReader.TextOf(node, problems, LongestSentence);
        if (text is not null && !text.EndsWith('.'))
        {
            problems.Error(node, $"{Wording.Quote(text)} is no whole sentence", "end it with a full stop");
        }

        Check(node, text, problems);
        return text;
    }

    // The owner pulls by a figure that he reads, also where angle, locker or the maker's rule forbids it.
    private static void Check(DocumentNode node, string? text, ProblemsFound problems)
    {
        if (text is not null && Torque().IsMatch(text))
        {
            problems.Error(node, $"{Wording.Quote(text)} names a torque to the customer", "leave the figure out: the page shows it where it may be known");
        }

        if (text is not null && Array.Find(Promises, promise => text.Contains(promise, StringComparison.OrdinalIgnoreCase)) is { } said)
        {
            problems.Error(node, $"“{said}” promises what nobody knows", "say what was done");
        }
    }

    [GeneratedRegex(@"\d\s*(N·?\s?m|lbf|ft[·.-]?lb|in[·.-]?lb|kgf)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Torque();
}
