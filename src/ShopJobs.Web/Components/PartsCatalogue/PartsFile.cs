using System.Globalization;
using CsvHelper;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>One row of a file.</summary>
/// <param name="Number">Its number as a spreadsheet counts: the headings are row 1.</param>
/// <param name="Cells">Its cells as they are in the file.</param>
public sealed record FileRow(int Number, IReadOnlyList<string> Cells);

/// <summary>A file of parts, taken apart as RFC 4180 says. Rows that are wholly empty are passed over.</summary>
public sealed record PartsFile(IReadOnlyList<string> Headings, IReadOnlyList<FileRow> Rows)
{
    /// <summary>Most bytes of a file.</summary>
    public const int MostBytes = 5_000_000;

    /// <summary>Most rows under the headings.</summary>
    public const int MostRows = 20_000;

    private const int MostColumns = 100;
    private const string TooLarge = "The file is larger than 5 MB. Split it, and upload one part after the other.";
    private const string Empty = "The file is empty. The first row has the headings, each row under it one part.";
    private const string NoRows = "The file has headings and no part under them. Each row under the headings is one part.";
    private const string NoHeadings = "The first row is empty. It has the headings, such as number, maker and name.";
    private static readonly string TooManyRows = string.Create(CultureInfo.InvariantCulture, $"The file has more than {MostRows:#,0} rows. Split it, and upload one part after the other.");

    /// <summary>Reads a file; null with what is wrong and what to do.</summary>
    public static PartsFile? Read(byte[] bytes, out string? refusal)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        refusal = bytes.Length > MostBytes ? TooLarge : null;
        if (refusal is not null || FileText.Read(bytes, out refusal) is not { } text)
        {
            return null;
        }

        try
        {
            return Take(text, out refusal);
        }
        catch (CsvFormatException broken)
        {
            refusal = string.Create(CultureInfo.InvariantCulture, $"Row {broken.RecordNumber} has a quotation mark that is not closed, or one inside a text. Put that text in quotation marks and write each one inside it twice, then upload the file again.");
            return null;
        }
    }

    /// <summary>Comma, semicolon or tab: the one that is most often in the first row, outside quotation marks; a comma where none is.</summary>
    internal static char SeparatorOf(string text)
    {
        var counts = new Dictionary<char, int> { [','] = 0, [';'] = 0, ['\t'] = 0 };
        var quoted = false;
        foreach (var letter in text)
        {
            quoted ^= letter == '"';
            if (!quoted && letter is '\r' or '\n')
            {
                break;
            }

            if (!quoted && counts.TryGetValue(letter, out var count))
            {
                counts[letter] = count + 1;
            }
        }

        return counts.MaxBy(one => one.Value).Key;
    }

    private static PartsFile? Take(string text, out string? refusal)
    {
        refusal = null;
        using var reader = CsvReader.Create(new StringReader(text), Options(text), leaveOpen: false);
        List<string>? headings = null;
        var rows = new List<FileRow>();
        var number = 0;
        while (refusal is null && reader.Read())
        {
            number++;
            var cells = CellsOf(reader);
            var isBlank = cells.TrueForAll(string.IsNullOrWhiteSpace);
            refusal = headings is null && cells.Count > MostColumns ? $"The file has more than {MostColumns} columns. Leave those out that are no part of the catalogue."
                : headings is null && isBlank && text.AsSpan().Trim().Length > 0 ? NoHeadings
                : headings is not null && !isBlank && rows.Count == MostRows ? TooManyRows
                : null;
            if (headings is null)
            {
                headings = cells;
            }
            else if (!isBlank)
            {
                rows.Add(new FileRow(number, cells));
            }
        }

        refusal ??= headings is null || headings.TrueForAll(string.IsNullOrWhiteSpace) ? Empty : rows.Count == 0 ? NoRows : null;
        return refusal is null ? new PartsFile(headings!, rows) : null;
    }

    private static List<string> CellsOf(CsvReader reader) => [.. Enumerable.Range(0, reader.FieldCount).Select(index => reader.GetString(index))];

    private static CsvReaderOptions Options(string text) => new()
    {
        Separator = SeparatorOf(text),
        HasHeader = false,
        SkipEmptyLines = false,
        MalformedData = CsvMalformedDataHandling.Throw,
    };
}
