using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>One published check value: its cells by column name.</summary>
internal sealed class ReferenceRow(IReadOnlyDictionary<string, string> cells)
{
    public string this[string column] => cells[column];

    public string Id => this["id"];

    public double Number(string column) => double.Parse(this[column], CultureInfo.InvariantCulture);

    /// <summary>Half a unit of the last digit that a printed number shows.</summary>
    public static double HalfDigit(string printed)
    {
        var point = printed.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - printed.Length);
    }

    /// <summary>The number behind "name=" in a cell that holds several.</summary>
    public double Named(string column, string name)
    {
        var match = Regex.Match(this[column], $@"(^|[^\w]){Regex.Escape(name)}=(?<value>-?[0-9]+(\.[0-9]+)?(e-?[0-9]+)?)", RegexOptions.CultureInvariant);
        return match.Success
            ? double.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture)
            : throw new InvalidDataException($"{Id}: no {name} in \"{this[column]}\".");
    }

    /// <summary>Fails with the row and its source when the value is further than the tolerance from what is printed.</summary>
    public void Near(string what, double printed, double computed, double tolerance) => Assert.True(
        Math.Abs(computed - printed) <= tolerance,
        string.Create(CultureInfo.InvariantCulture, $"{Id}, {what}: printed {printed}, computed {computed}, tolerance {tolerance}. Source: {this["source"]}"));
}
