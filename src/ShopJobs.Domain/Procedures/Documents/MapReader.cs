using System.Globalization;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the keys of one mapping strictly: what is not known here is refused with the nearest known key.</summary>
internal sealed class MapReader
{
    public const int LongestText = 500;

    private const int LongestList = 500;
    private const int MostUnknown = 20;

    private readonly Dictionary<string, DocumentNode> values = [];

    public MapReader(MapNode map, ProblemsFound problems, IReadOnlyCollection<string> known)
    {
        Map = map;
        Problems = problems;
        var unknown = map.Entries.Where(entry => !known.Contains(entry.Key.Text)).Select(entry => entry.Key).ToList();
        foreach (var key in unknown.Take(MostUnknown))
        {
            problems.Error(key, $"The key {Wording.Quote(key.Text)} is not known here", Wording.Nearest(key.Text, known));
        }

        if (unknown.Count > MostUnknown)
        {
            problems.Error(map, $"{unknown.Count - MostUnknown} more keys are not known here", $"known here: {string.Join(", ", known)}");
        }

        foreach (var entry in map.Entries.Where(entry => known.Contains(entry.Key.Text)))
        {
            values[entry.Key.Text] = entry.Value;
        }
    }

    public MapNode Map { get; }

    public ProblemsFound Problems { get; }

    /// <summary>A reader for a node that must be a mapping; null with the problem noted.</summary>
    public static MapReader? Of(DocumentNode node, ProblemsFound problems, IReadOnlyCollection<string> known)
    {
        if (node is MapNode map)
        {
            return new MapReader(map, problems, known);
        }

        if (node is not RefusedNode)
        {
            problems.Error(node, $"{Kind(node)} is here, keys are needed", $"write {string.Join(", ", known)}");
        }

        return null;
    }

    public bool Has(string key) => values.ContainsKey(key);

    /// <summary>The value of a key, or the mapping itself where the key is missing: where a problem points.</summary>
    public DocumentNode At(string key) => values.GetValueOrDefault(key, Map);

    /// <summary>The value of a key that must be there.</summary>
    public DocumentNode? Needed(string key)
    {
        if (values.TryGetValue(key, out var node))
        {
            return node;
        }

        Problems.Error(Map, $"“{key}” is missing", $"add “{key}:”");
        return null;
    }

    public string? Text(string key, int longest = LongestText) => Needed(key) is { } node ? TextOf(node, Problems, longest) : null;

    public string? TextIfAny(string key, int longest = LongestText) =>
        values.TryGetValue(key, out var node) ? TextOf(node, Problems, longest) : null;

    /// <summary>A short name in small letters, digits, hyphens and, for joint keys, points.</summary>
    public string? Id(string key, bool points = false) => Needed(key) is { } node ? IdOf(node, Problems, points) : null;

    /// <summary>One of the words; <paramref name="absent"/> where the key is missing, null with the problem noted where it is needed.</summary>
    public T? Choice<T>(string key, IReadOnlyDictionary<string, T> words, T? absent = null)
        where T : struct
    {
        if (!values.ContainsKey(key) && absent is not null)
        {
            return absent;
        }

        if (Text(key) is not { } text)
        {
            return null;
        }

        if (words.TryGetValue(text, out var value))
        {
            return value;
        }

        Problems.Error(At(key), $"{Wording.Quote(text)} is not one of the words for “{key}”", Wording.Nearest(text, [.. words.Keys]));
        return null;
    }

    public bool? YesNo(string key, bool? absent = null) => Choice(key, Vocabulary.YesNo, absent);

    public int? Whole(string key, int least, int most)
    {
        if (Text(key) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most)
        {
            return value;
        }

        Problems.Error(At(key), $"{Wording.Quote(text)} is not a whole number from {least} to {most}", "write digits only");
        return null;
    }

    /// <summary>The items of a list; empty where the key is missing.</summary>
    public IReadOnlyList<DocumentNode> List(string key) => values.TryGetValue(key, out var node) ? ItemsOf(node, Problems) : [];

    public IReadOnlyList<string> Texts(string key) => [.. List(key).Select(node => TextOf(node, Problems)).OfType<string>()];

    public static IReadOnlyList<DocumentNode> ItemsOf(DocumentNode node, ProblemsFound problems)
    {
        if (node is ListNode { Items.Count: <= LongestList } list)
        {
            return list.Items;
        }

        if (node is ListNode { Items.Count: var count })
        {
            problems.Error(node, $"The list has {count} items, at most {LongestList} are taken", "split the document");
            return [];
        }

        if (node is not RefusedNode)
        {
            problems.Error(node, $"{Kind(node)} is here, a list is needed", "write the items with hyphens, or [] for none");
        }

        return [];
    }

    public static string? TextOf(DocumentNode node, ProblemsFound problems, int longest = LongestText)
    {
        switch (node)
        {
            case RefusedNode:
                return null;
            case TextNode { Text: "" }:
                problems.Error(node, "Nothing is written here", "write the value, or delete the key");
                return null;
            case TextNode { Text: var text } when text.Contains('\n'):
                problems.Error(node, "The text goes over several lines", "write one line; one action is one item of a list");
                return null;
            case TextNode { Text: var text } when text.Length > longest:
                problems.Error(node, $"The text has {text.Length} letters, at most {longest} are taken", "shorten it");
                return null;
            case TextNode { Text: var text }:
                return text;
            default:
                problems.Error(node, $"{Kind(node)} is here, a text is needed", "write one value; put it in quotes where it holds a colon");
                return null;
        }
    }

    public static string? IdOf(DocumentNode node, ProblemsFound problems, bool points = false)
    {
        if (TextOf(node, problems) is not { } text)
        {
            return null;
        }

        if (text.Length <= 60 && text.Split(points ? ['.', '-'] : ['-']).All(part => part.Length > 0 && part.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))))
        {
            return text;
        }

        problems.Error(node, $"{Wording.Quote(text)} is not a short name", $"use small letters, digits and hyphens{(points ? ", with points between the parts" : "")}, at most 60");
        return null;
    }

    private static string Kind(DocumentNode node) => node switch
    {
        MapNode => "A set of keys",
        ListNode => "A list",
        _ => "A text",
    };
}
