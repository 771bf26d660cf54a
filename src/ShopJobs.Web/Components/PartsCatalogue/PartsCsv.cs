using CsvHelper;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>
/// Writes the catalogue as a file for a spreadsheet: UTF-8 with its mark at the start, quoted as RFC 4180 says, and no cell that a
/// spreadsheet would run.
/// </summary>
internal static class PartsCsv
{
    internal const string Yes = "yes";
    internal const string No = "no";

    private static readonly CsvWriterOptions Options = new() { WriteByteOrderMark = true };

    internal static byte[] Write(IEnumerable<PartRow> parts)
    {
        using var bytes = new MemoryStream();
        using (var writer = CsvWriter.Create(bytes, Options, leaveOpen: true))
        {
            Write(writer, Enum.GetValues<PartColumn>().Select(column => column.Heading()));
            foreach (var part in parts)
            {
                Write(writer, Enum.GetValues<PartColumn>().Select(column => TextOf(part, column)));
            }
        }

        return bytes.ToArray();
    }

    /// <summary>What a part says in a column; empty where it says nothing.</summary>
    internal static string TextOf(PartRow part, PartColumn column) => column switch
    {
        PartColumn.Number => part.Number,
        PartColumn.Maker => part.Maker,
        PartColumn.Name => part.Name,
        PartColumn.Fills => part.Fills ?? "",
        PartColumn.Thread => part.Thread ?? "",
        PartColumn.Strength => part.Strength ?? "",
        PartColumn.SingleUse => part.SingleUse ? Yes : No,
        PartColumn.Price => PartForm.Written(part.Price),
        PartColumn.Currency => part.Currency ?? "",
        PartColumn.OutOfUse => part.RetiredAt is null ? No : Yes,
        _ => throw new ArgumentOutOfRangeException(nameof(column), column, "Not a column of a part."),
    };

    private static void Write(CsvWriter writer, IEnumerable<string> texts)
    {
        foreach (var text in texts)
        {
            var cell = CsvCell.Harmless(text);
            writer.WriteField(cell, cell == text ? CsvQuoting.WhenNeededOrWhitespace : CsvQuoting.Always);
        }

        writer.EndRecord();
    }
}
