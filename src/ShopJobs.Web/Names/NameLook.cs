using System.Globalization;
using System.Text;

namespace ShopJobs.Web.Names;

/// <summary>
/// Whether one name can be taken for another. Each is reduced to what it looks like, as the skeleton of Unicode Technical Standard
/// 39 does (normalisation form KD, look-alikes replaced, form KD again), once as written, once in small and once in capital letters;
/// names that agree in one of the three are alike. Blanks count once.
/// </summary>
public static class NameLook
{
    /// <summary>True where one name passes for the other.</summary>
    public static bool Alike(string one, string other) => KeysOf(one).Zip(KeysOf(other)).Any(pair => pair.First == pair.Second);

    /// <summary>The first of these names that this one passes for; null where there is none.</summary>
    public static string? FirstAlike(string name, IEnumerable<string> others)
    {
        ArgumentNullException.ThrowIfNull(others);
        var keys = KeysOf(name);
        return others.FirstOrDefault(other => keys.Zip(KeysOf(other)).Any(pair => pair.First == pair.Second));
    }

    private static string[] KeysOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var letters = Seen(name).Normalize(NormalizationForm.FormKD);
        return [Skeleton(letters), Skeleton(letters.ToLowerInvariant()).ToLowerInvariant(), Skeleton(letters.ToUpperInvariant())];
    }

    // Names of before this rule may hold what nobody sees: it does not tell them apart. A lone surrogate can't be normalised.
    private static string Seen(string name)
    {
        var seen = new StringBuilder(name.Length);
        foreach (var letter in name.EnumerateRunes().Where(letter => letter != Rune.ReplacementChar))
        {
            var text = letter.ToString();
            _ = Rune.IsWhiteSpace(letter) ? seen.Append(' ') : UnseenLetters.FirstIn(text) is null ? seen.Append(text) : seen;
        }

        return seen.ToString();
    }

    private static string Skeleton(string letters)
    {
        var look = new StringBuilder(letters.Length);
        foreach (var letter in letters)
        {
            _ = LookAlikes.Table.TryGetValue(letter, out var other) ? look.Append(other)
                : CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.SpaceSeparator ? look.Append(' ')
                : look.Append(letter);
        }

        return string.Join(' ', look.ToString().Normalize(NormalizationForm.FormKD).Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
