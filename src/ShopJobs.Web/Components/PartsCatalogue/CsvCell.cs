namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>
/// Texts that a spreadsheet would run as a formula. Which beginnings are dangerous, and the apostrophe before them, is what OWASP says
/// under CSV Injection (from memory).
/// </summary>
internal static class CsvCell
{
    private const char Apostrophe = '\'';

    /// <summary>With an apostrophe before it where it would be run, or where it could be taken for a text that has one.</summary>
    internal static string Harmless(string text) => WouldRun(text.TrimStart(Apostrophe)) ? Apostrophe + text : text;

    /// <summary>The text that <see cref="Harmless"/> was given.</summary>
    internal static string Plain(string cell) => cell.StartsWith(Apostrophe) && WouldRun(cell.TrimStart(Apostrophe)) ? cell[1..] : cell;

    private static bool WouldRun(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r';
}
