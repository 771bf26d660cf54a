using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>One published check value: its cells by column name.</summary>
internal sealed partial class ReferenceRow(IReadOnlyDictionary<string, string> cells)
{
    private const string Units = @"%|in2|mm2|in\b|mm/N|mm|um|lbf\.ft|lbf\.in|lbf|N\.m|kN|N|ksi|psi|MPa|kip|deg|kgf\.m";

    public string this[string column] => cells.TryGetValue(column, out var cell)
        ? cell
        : throw new InvalidDataException($"{Id}: there is no column {column}.");

    public string Id => cells["id"];

    public string Source => cells.TryGetValue("source", out var source) ? source : "none given";

    public string Evidence => cells.TryGetValue("evidence", out var evidence) ? evidence : "";

    public double Number(string column) => double.TryParse(this[column], CultureInfo.InvariantCulture, out var value)
        ? value
        : throw new InvalidDataException($"{Id}: {column} \"{this[column]}\" is not a number.");

    /// <summary>The first of two columns that has something in it: the published figure, else the one computed by its collector.</summary>
    public string FirstOf(string column, string other) => this[column].Length > 0 ? this[column] : this[other];

    /// <summary>Half a unit of the last digit that a printed number shows.</summary>
    public static double HalfDigit(string printed)
    {
        var point = printed.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - printed.Length);
    }

    /// <summary>The unsigned numbers in a text, as printed.</summary>
    public static IReadOnlyList<string> NumbersIn(string text) => [.. Unsigned().Matches(text).Select(m => m.Value)];

    /// <summary>The number behind "name=" in a cell that holds several, "x=name=3" and "name=+-3 %" included.</summary>
    public double Named(string column, string name) => Find(column, name) is { Success: true } match
        ? double.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture)
        : throw new InvalidDataException($"{Id}: no {name} in \"{this[column]}\".");

    /// <summary>As <see cref="Named"/>; null where the name is not there.</summary>
    public double? NamedOrNull(string column, string name) => Find(column, name).Success ? Named(column, name) : null;

    /// <summary>The number as printed behind "name=".</summary>
    public string Printed(string column, string name) => Find(column, name).Groups["value"].Value;

    /// <summary>The unit written behind "name=number", else <paramref name="usual"/>.</summary>
    public string UnitOf(string column, string name, string usual) =>
        Find(column, name).Groups["unit"] is { Success: true } unit ? unit.Value : usual;

    /// <summary>The number behind "name " in a cell that lists lengths such as "hub flange 8; spacer 0".</summary>
    public double Listed(string column, string name)
    {
        var match = Regex.Match(this[column], $@"(^|;)\s*{name}\s(?<value>[0-9]+(\.[0-9]+)?)", RegexOptions.CultureInvariant);
        return match.Success
            ? double.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture)
            : throw new InvalidDataException($"{Id}: no {name} in \"{this[column]}\".");
    }

    /// <summary>The same row with one cell changed.</summary>
    public ReferenceRow With(string column, string value) =>
        new(new Dictionary<string, string>(cells) { [column] = value });

    /// <summary>Fails with the row and its source when the value is further than the tolerance from what is printed.</summary>
    public void Near(string what, double printed, double computed, double tolerance) => Assert.True(
        Math.Abs(computed - printed) <= tolerance,
        string.Create(CultureInfo.InvariantCulture, $"{Id}, {what}: printed {printed}, computed {computed}, tolerance {tolerance}. Source: {Source}"));

    /// <summary>Fails with the row and its source when a text is not what is printed.</summary>
    public void Same(string what, string printed, string? computed) =>
        Assert.True(printed == computed, $"{Id}, {what}: printed \"{printed}\", held here \"{computed ?? "nothing"}\". Source: {Source}");

    /// <summary>Fails with the row and its source.</summary>
    public void Holds(bool condition, string what) => Assert.True(condition, $"{Id}: {what}. Source: {Source}");

    private Match Find(string column, string name) => Regex.Match(
        this[column],
        $@"(^|[^\w]){Regex.Escape(name)}=(\w+=)?(\+-)?(?<value>-?[0-9]+(\.[0-9]+)?(e-?[0-9]+)?)(\+-[0-9.]+)?\s*(?<unit>{Units})?",
        RegexOptions.CultureInvariant);

    [GeneratedRegex(@"[0-9]+(\.[0-9]+)?(e-?[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Unsigned();
}
