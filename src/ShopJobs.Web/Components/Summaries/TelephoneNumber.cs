using System.Text.RegularExpressions;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The first telephone number in a text that people wrote, such as "Ninth Bay, 01632 960100".</summary>
/// <param name="At">Where it begins.</param>
/// <param name="Text">As it was written.</param>
public sealed partial record TelephoneNumber(int At, string Text)
{
    /// <summary>As a phone dials it: digits, and a plus where one was written.</summary>
    public string Dialled => string.Concat(Text.Where(letter => char.IsAsciiDigit(letter) || letter == '+'));

    /// <summary>The number in a text; null where there is none of at least six figures.</summary>
    public static TelephoneNumber? In(string text) => Written().Match(text) is { Success: true } found ? new(found.Index, found.Value) : null;

    [GeneratedRegex(@"\+?[0-9][0-9 ()/-]{4,}[0-9]")]
    private static partial Regex Written();
}
