using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>Reads a price as people write it, "84.50" or "84,50 EUR".</summary>
internal static class PriceText
{
    internal const string NoCurrency = "Write the currency in three letters, for example EUR.";

    /// <summary>
    /// The amount, from 0 to <see cref="PartRow.MostPrice"/> with at most two decimals, and its currency: the letters behind the
    /// amount, else those of the other field. False with the problem in words.
    /// </summary>
    internal static bool Read(string text, string otherField, out decimal amount, out string currency, out string? problem)
    {
        currency = otherField.Trim().ToUpperInvariant();
        if (!Amount(text, out amount, out var letters, out problem))
        {
            return false;
        }

        problem = letters.Length > 0 && currency.Length > 0 && letters != currency ? $"The price is in {letters}, the currency is {TypedNumber.Shown(currency)}. Write one of them."
            : LacksCurrency(text, otherField) ? NoCurrency
            : null;
        currency = letters.Length > 0 ? letters : currency;
        return problem is null;
    }

    /// <summary>True for a price of which nobody says in which currency it is.</summary>
    internal static bool LacksCurrency(string text, string otherField) =>
        Amount(text, out _, out var letters, out _) && letters.Length == 0 && !IsCurrency(otherField.Trim().ToUpperInvariant());

    /// <summary>The letters of a currency behind an amount; empty where there are none, or it is no price.</summary>
    internal static string LettersOf(string text) => Amount(text, out _, out var letters, out _) ? letters : "";

    /// <summary>True for three capital letters.</summary>
    internal static bool IsCurrency(string text) => text.Length == PartRow.CurrencyLength && text.All(char.IsAsciiLetterUpper);

    private static bool Amount(string text, out decimal amount, out string letters, out string? problem)
    {
        var typed = text.Trim();
        var read = TypedNumber.Read(typed, "84.50", out var rest, out _);
        (amount, letters) = (read ?? 0, rest.ToUpperInvariant());
        problem = read is null || amount > PartRow.MostPrice || (letters.Length > 0 && !IsCurrency(letters))
            ? $"{TypedNumber.Shown(typed)} is no price: write it as 84.50, from 0 to 9999999.99, without a sign and without a mark for thousands."
            : decimal.Round(amount, 2) != amount ? $"{TypedNumber.Shown(typed)} has more than two decimals. Write the price with at most two, and no mark for thousands."
            : null;
        return problem is null;
    }
}
