using System.Globalization;

namespace ShopJobs.Web.Components.Look;

/// <summary>Numbers as people type them: comma or point as decimal mark, no thousands mark, no exponent.</summary>
internal static class TypedNumber
{
    /// <summary>Most letters a field takes.</summary>
    public const int MostLetters = 40;

    private const int MostDigits = 9;

    /// <summary>A number without trailing zeros.</summary>
    public static string Plain(decimal value) => value.ToString("0.#########", CultureInfo.InvariantCulture);

    /// <summary>What is typed, shortened for a message.</summary>
    public static string Shown(string typed) => $"“{(typed.Length > MostLetters ? typed[..MostLetters] + "…" : typed)}”";

    /// <summary>The one number that is typed, from 0; null for anything else.</summary>
    /// <param name="unit">A unit that may stand behind it.</param>
    public static decimal? Alone(string? typed, string unit = "") =>
        Read((typed ?? "").Trim(), "1", out var rest, out _) is { } number && (rest.Length == 0 || rest == unit) ? number : null;

    /// <summary>As <see cref="Alone"/>, with a minus where it is below 0.</summary>
    public static decimal? Signed(string? typed) => (typed ?? "").Trim() switch
    {
        ['-' or '−', .. var size] => -Alone(size),
        var plain => Alone(plain),
    };

    /// <summary>Reads the number at the start of a text and what follows it; null with the problem in words.</summary>
    public static decimal? Read(string typed, string example, out string rest, out string? problem)
    {
        rest = "";
        if (typed.Length > 0 && "-−–+".Contains(typed[0]))
        {
            problem = $"{Shown(typed)} has a sign: write it without one.";
            return null;
        }

        var length = typed.TakeWhile(letter => char.IsAsciiDigit(letter) || letter is '.' or ',').Count();
        var number = typed[..length];
        rest = typed[length..].Trim();
        problem = number.Length == 0 ? $"{Shown(typed)} does not start with a number: write it as {example}."
            : number.Count(letter => letter is '.' or ',') > 1 ? $"{Shown(typed)} has more than one decimal mark: write one only, and no thousands mark."
            : !char.IsAsciiDigit(number[0]) || !char.IsAsciiDigit(number[^1]) ? $"{Shown(typed)} needs digits before and after the decimal mark."
            : number.Count(char.IsAsciiDigit) > MostDigits ? $"{Shown(typed)} has more than {MostDigits} digits: read it again."
            : null;
        return problem is null
            ? decimal.Parse(number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture)
            : null;
    }
}
