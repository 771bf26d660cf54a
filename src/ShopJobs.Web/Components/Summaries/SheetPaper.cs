using System.Globalization;
using System.Text;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>
/// What every sheet of a print carries in its margins: car, version, and whether the page is out of date. Page numbers, and how it is set,
/// stand in summary.css.
/// </summary>
internal static class SheetPaper
{
    /// <summary>Rules for the margins of the paper (CSS Paged Media 3, section 4).</summary>
    public static string Css(IssuedVersion version)
    {
        var page = version.Page!;
        var car = string.Join(", ", new[] { page.Car.Name, page.Car.Model, page.Car.Mark }.Where(part => part.Length > 0));
        var number = string.Create(CultureInfo.InvariantCulture, $"{page.Shop.Name}: work summary, version {page.Version}, {SheetWords.Day(page.IssuedOn)}");
        var state = !version.IsOutOfDate && version.NoLonger.Count == 0 ? "" : version.NoLonger.Count > 0 || version.IsGrave
            ? "OUT OF DATE. Speak to us before you drive."
            : "Replaced by a newer version.";
        return $"@page {{ @top-left {{ content: {Quoted(car)}; }} @top-right {{ content: {Quoted(number)}; }} @bottom-left {{ content: {Quoted(state)}; }} }}";
    }

    /// <summary>A CSS string in which nothing but letters, digits, blanks, commas, colons and full stops stands unescaped (CSS Syntax 3, section 4.3.7).</summary>
    internal static string Quoted(string text)
    {
        var css = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or ',' or '.' or ':')
            {
                css.Append(rune);
            }
            else
            {
                css.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
            }
        }

        return css.Append('"').ToString();
    }
}
