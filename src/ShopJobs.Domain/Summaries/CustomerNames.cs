using System.Globalization;

namespace ShopJobs.Domain.Summaries;

/// <summary>Names of places and joints as a customer says them.</summary>
internal static class CustomerNames
{
    private const int Corners = 4;

    private static readonly string[] Between = [" at ", " on "];

    /// <summary>"front left" for the place "front-left".</summary>
    public static string Place(string place) => place.Replace('-', ' ');

    /// <summary>Where a job was done, to be set behind its name: ", all four", ", front left and front right"; empty where there is one place only.</summary>
    /// <param name="places">Places of the job.</param>
    /// <param name="all">Every place that its procedure has.</param>
    public static string Where(IReadOnlyList<string> places, IReadOnlyList<string> all) => (places.Count, all.Count) switch
    {
        (_, <= 1) => "",
        (Corners, Corners) => ", all four",
        _ => $", {Listed([.. places.Select(Place)])}",
    };

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string Listed(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";

    /// <summary>The name of a joint kind for so many: "wheel nuts", "bar link nuts at the strut".</summary>
    public static string Plural(string kind, int count)
    {
        var at = Between.Select(word => kind.IndexOf(word, StringComparison.Ordinal)).Where(found => found > 0).DefaultIfEmpty(kind.Length).Min();
        return count == 1 || kind[..at].EndsWith('s') ? kind : $"{kind[..at]}s{kind[at..]}";
    }

    /// <summary>"no. 2", "no. 2 and 5".</summary>
    public static string Numbers(IEnumerable<int> numbers) =>
        $"no. {Listed([.. numbers.Distinct().Order().Select(number => number.ToString(CultureInfo.InvariantCulture))])}";

    /// <summary>A sentence begins with a capital.</summary>
    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
