using System.Text.RegularExpressions;

namespace ShopJobs.Web.Tests.Architecture;

/// <summary>A word that was taken out of the screens.</summary>
/// <param name="Name">The rule, for the test's name.</param>
/// <param name="Pattern">What must not be shown.</param>
/// <param name="Say">What to write instead.</param>
/// <param name="Why">Why.</param>
/// <param name="Old">An example that the pattern finds.</param>
/// <param name="New">The same said well, which it doesn't find.</param>
/// <param name="But">Files that may: what they hold is syntax or a text that was signed and is kept as it was.</param>
public sealed record PlainWord(string Name, string Pattern, string Say, string Why, string Old, string New, params string[] But)
{
    public bool Finds(ShownText text) => !But.Contains(text.File) && !But.Contains($"*{Path.GetExtension(text.File)}") && Regex.IsMatch(text.Words, Pattern, RegexOptions.CultureInvariant);
}
