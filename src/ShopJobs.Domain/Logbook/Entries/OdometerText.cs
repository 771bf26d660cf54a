using System.Globalization;
using System.Text;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Reads an odometer as people write it. An odometer shows whole numbers and at most tenths: a mark before three digits groups
/// thousands, a mark before the last digit of a long number is a decimal mark, and what could be either is asked back.
/// </summary>
internal static class OdometerText
{
    private const int MostLetters = 40;
    private const string Grouping = " '";

    private static readonly (string Word, DistanceUnit Unit)[] Units =
    [
        ("kilometres", DistanceUnit.Kilometre), ("kilometers", DistanceUnit.Kilometre), ("kms", DistanceUnit.Kilometre), ("km", DistanceUnit.Kilometre),
        ("miles", DistanceUnit.Mile), ("mile", DistanceUnit.Mile), ("mi", DistanceUnit.Mile),
    ];

    /// <summary>The reading; the problem in plain words where there is none.</summary>
    public static string? Read(string? text, DistanceUnit assumed, out OdometerReading reading)
    {
        reading = default;
        var typed = Plain(text ?? "");
        if (typed.Length == 0)
        {
            return "Type what the odometer shows, for example 50200.";
        }

        var said = Shown(text!);
        var (number, unit) = WithoutUnit(typed, assumed);
        if (number.Length == 0 || !number.All(letter => char.IsAsciiDigit(letter) || letter is '.' or ',' || Grouping.Contains(letter)))
        {
            return number.StartsWith('-') || number.StartsWith('−')
                ? $"{said} has a sign: an odometer is never below 0."
                : $"{said} is no odometer: write the number it shows, for example 50200, with nothing but km or mi behind it.";
        }

        if (Value(number, unit) is not { } value)
        {
            return Ambiguous(said, number, unit);
        }

        if (value > OdometerReading.Largest)
        {
            return $"{said} is more than an odometer shows: read it again.";
        }

        reading = new OdometerReading(value, unit);
        return null;
    }

    // Digits of any script as 0 to 9, every kind of blank and apostrophe as one.
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text.Trim())
        {
            plain.Append(letter switch
            {
                '\'' or '’' or '‘' or '´' => '\'',
                _ when char.IsWhiteSpace(letter) => ' ',
                _ when CharUnicodeInfo.GetDecimalDigitValue(letter) is >= 0 and var digit => (char)('0' + digit),
                _ => letter,
            });
        }

        return plain.ToString();
    }

    private static (string Number, DistanceUnit Unit) WithoutUnit(string typed, DistanceUnit assumed)
    {
        foreach (var (word, unit) in Units)
        {
            if (typed.EndsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return (typed[..^word.Length].TrimEnd(), unit);
            }
        }

        return (typed, assumed);
    }

    // The one number it can be; null where it can be none, or two.
    private static decimal? Value(string number, DistanceUnit unit)
    {
        var marks = number.Where(letter => !char.IsAsciiDigit(letter)).ToList();
        var parts = number.Split('.', ',', ' ', '\'');
        if (parts.Any(part => part.Length == 0) || number.Count(char.IsAsciiDigit) > 12)
        {
            return null;
        }

        if (marks.Count == 0)
        {
            return Of(number);
        }

        if (marks.Distinct().Count() == 1 && AreThousands(parts) && !(marks.Count == 1 && IsDecimal(marks[0]) && Of(parts[0]) == 0))
        {
            return Of(string.Concat(parts));
        }

        // A tenth: behind another mark than the thousands have, and behind more than a thousand.
        return IsDecimal(marks[^1]) && parts[^1].Length == 1 && parts[..^1] is var whole
            && (whole.Length == 1 ? whole[0].Length >= 4 : marks[..^1].Distinct().Count() == 1 && marks[0] != marks[^1] && AreThousands(whole))
            ? Of($"{string.Concat(whole)}.{parts[^1]}")
            : null;
    }

    // One to three digits, then threes; or, as written in India, twos and a last three.
    private static bool AreThousands(string[] parts) =>
        parts.Length > 1 && parts[0].Length <= 3 && parts[^1].Length == 3
        && (parts[1..].All(part => part.Length == 3) || (parts.Length > 2 && parts[0].Length <= 2 && parts[1..^1].All(part => part.Length == 2)));

    private static bool IsDecimal(char mark) => mark is '.' or ',';

    private static decimal Of(string number) => decimal.Parse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static string Ambiguous(string said, string number, DistanceUnit unit) =>
        number.Split('.', ',') is [var before, var after] && before.All(char.IsAsciiDigit) && before.Length is > 0 and <= 3 && after.All(char.IsAsciiDigit) && after.Length is 1 or 2
            ? $"{said} can be read in two ways, {before} {unit.Plural()} and a bit, or {before} thousand and something: write it in whole {unit.Plural()}, without a mark."
            : $"{said} can be read in more than one way: write it in whole {unit.Plural()}, without a mark, for example 50200.";

    private static string Shown(string text) => $"“{(text.Length > MostLetters ? text[..MostLetters] + "…" : text.Trim())}”";
}
