using System.Globalization;
using System.Text.RegularExpressions;
using Xunit.Sdk;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>A check that cannot fail checks nothing: in each kind of row every checked figure is moved by 5 %, and its check must notice.</summary>
public partial class AlteredRowTests
{
    public static TheoryData<string, string> Kinds
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var file in FastenerFiles.All)
            {
                foreach (var kind in file.Rows().Where(file.Maps).Select(file.KindOf).Distinct())
                {
                    data.Add(file.Name, kind);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_figure_moved_by_five_percent_is_noticed(string name, string kind)
    {
        var file = FastenerFiles.All.Single(f => f.Name == name);
        foreach (var row in file.Rows().Where(row => file.KindOf(row) == kind))
        {
            var altered = file.Checked(row).SelectMany(column => Altered(row, column)).ToList();
            Assert.NotEmpty(altered);
            Assert.All(altered, other => Assert.ThrowsAny<XunitException>(() => file.Check(other)));
        }
    }

    /// <summary>
    /// Of the ranges in this table only order and rough relation can be checked, as they are rounded to fives and tens; the greatest
    /// torques stand in a printed ratio.
    /// </summary>
    [Fact]
    public void A_greatest_torque_of_a_shear_nut_table_moved_by_five_percent_is_noticed()
    {
        var file = FastenerFiles.TorqueTables;
        var rows = file.Rows().Where(row => row["M"].Contains("max tension nut", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(rows);
        Assert.All(
            from row in rows
            from nut in new[] { "tension", "shear" }
            from factor in new[] { 1.05m, 0.95m }
            select row.With("M", Regex.Replace(row["M"], $"(?<=max {nut} nut )[0-9]+", figure => Moved(figure.Value, factor))),
            other => Assert.ThrowsAny<XunitException>(() => file.Check(other)));
    }

    /// <summary>Each figure of a cell raised and lowered by 5 %; a cell without figures gets its sense turned round.</summary>
    private static IEnumerable<ReferenceRow> Altered(ReferenceRow row, string column)
    {
        var text = row[column];
        var figures = Figures().Matches(text);
        if (figures.Count == 0)
        {
            return [row.With(column, text.Contains("not ", StringComparison.Ordinal) ? text.Replace("not ", "", StringComparison.Ordinal) : $"not {text}")];
        }

        return figures.SelectMany(_ => new[] { 1.05m, 0.95m }, (figure, factor) =>
            row.With(column, text[..figure.Index] + Moved(figure.Value, factor) + text[(figure.Index + figure.Length)..]));
    }

    private static string Moved(string figure, decimal factor)
    {
        var value = decimal.Parse(figure, NumberStyles.Float, CultureInfo.InvariantCulture);
        return (value == 0 ? factor : value * factor).ToString("0.##########################", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"[0-9]+(\.[0-9]+)?(e-?[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Figures();
}
