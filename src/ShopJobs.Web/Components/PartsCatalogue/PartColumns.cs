using System.Globalization;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>Which column of a file holds what. A kind of column that is not in it is in no column of the file.</summary>
public sealed class PartColumns
{
    private static readonly PartColumn[] Needed = [PartColumn.Number, PartColumn.Maker];

    private readonly IReadOnlyDictionary<PartColumn, int> places;

    private PartColumns(IReadOnlyDictionary<PartColumn, int> places) => this.places = places;

    /// <summary>The place of a column in the file, from 0; null where the file has none.</summary>
    public int? this[PartColumn column] => places.TryGetValue(column, out var place) ? place : null;

    /// <summary>What the column at a place is read as, in words; empty where it is not read.</summary>
    public string ReadAs(int place) => string.Join(", ", places.Where(one => one.Value == place).Select(one => one.Key.InWords()));

    /// <summary>What a row says in a column; null where the file has no such column.</summary>
    public string? Cell(IReadOnlyList<string> row, PartColumn column) => this[column] is { } place ? CsvCell.Plain(row[place]) : null;

    /// <summary>Which column is missing without which no row can be read; null where none is.</summary>
    public PartColumn? Missing => Needed.Where(column => !places.ContainsKey(column)).Select(column => (PartColumn?)column).FirstOrDefault();

    /// <summary>By the headings: each kind of column is the first that has its heading, or one of the other words for it.</summary>
    public static PartColumns Guess(IReadOnlyList<string> headings)
    {
        var names = headings.Select(Bare).ToList();
        var places = new Dictionary<PartColumn, int>();
        foreach (var column in Enum.GetValues<PartColumn>())
        {
            var place = column.Others().Prepend(column.Heading()).Select(word => names.IndexOf(Bare(word))).FirstOrDefault(found => found >= 0, -1);
            if (place >= 0 && !places.ContainsValue(place))
            {
                places[column] = place;
            }
        }

        return new(places);
    }

    /// <summary>As they were picked on the page; null where nothing was picked yet. A place that the file does not have is none.</summary>
    public static PartColumns? Picked(Func<string, string?> field, int columns)
    {
        ArgumentNullException.ThrowIfNull(field);
        var texts = Enum.GetValues<PartColumn>().ToDictionary(column => column, column => field(FieldOf(column)));
        return texts.Values.All(text => text is null) ? null : new(texts
            .Select(one => (one.Key, Place: int.TryParse(one.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : -1))
            .Where(one => one.Place >= 0 && one.Place < columns)
            .ToDictionary(one => one.Key, one => one.Place));
    }

    /// <summary>The name of the field by which a column is picked.</summary>
    public static string FieldOf(PartColumn column) => $"col-{column.ToString().ToLowerInvariant()}";

    /// <summary>All of it in one line that differs where the columns differ.</summary>
    public override string ToString() =>
        string.Join(' ', places.OrderBy(one => one.Key).Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Key}={one.Value}")));

    // Letters and figures alone: "Part-No." is "part no".
    private static string Bare(string heading) =>
        string.Join(' ', new string([.. CsvCell.Plain(heading).ToLowerInvariant().Select(letter => char.IsLetterOrDigit(letter) ? letter : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
