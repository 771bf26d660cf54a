using FluentValidation;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Names;

/// <summary>What every name in the shop keeps to, and the words where one does not.</summary>
public static class NameRules
{
    private const int Before = 12;

    /// <summary>What is wrong with the letters of a name; null when nothing is. An empty one is another rule's.</summary>
    public static string? WrongLetters(string? typed)
    {
        var name = Typed.Clean(typed);
        return name.Length == 0 ? null
            : UnseenLetters.FirstIn(name) is { } place ? $"It has a character that nobody sees{Where(name, place)}. Type it by hand instead of pasting it."
            : !name.Any(char.IsLetterOrDigit) && !name.EnumerateRunes().Any(System.Text.Rune.IsLetterOrDigit) ? "A name has at least one letter or figure."
            : null;
    }

    /// <summary>That a name is taken, or passes for one that is.</summary>
    /// <param name="what">Who or what has the other name, such as “another car”.</param>
    public static string Taken(string name, string other, string what) => string.Equals(name, other, StringComparison.OrdinalIgnoreCase)
        ? $"There is {what} called {other} already."
        : $"“{name}” looks like “{other}”, the name of {what}.";

    /// <summary>No character that nobody sees, and something to read.</summary>
    public static IRuleBuilderOptionsConditions<TForm, string?> ReadsPlainly<TForm>(this IRuleBuilder<TForm, string?> rule) => rule.Custom((text, context) =>
    {
        if (WrongLetters(text) is { } wrong)
        {
            context.AddFailure(wrong);
        }
    });

    private static string Where(string name, int place) => place == 0 ? " at its beginning" : $" after “{name[Math.Max(0, place - Before)..place]}”";
}
