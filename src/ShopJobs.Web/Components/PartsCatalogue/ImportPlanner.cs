using System.Security.Cryptography;
using System.Text;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>
/// Compares a file with the catalogue. A cell that is empty takes away what the part had; a column that the file does not have leaves
/// it as it is.
/// </summary>
/// <param name="file">The file.</param>
/// <param name="columns">Which column holds what.</param>
/// <param name="currency">Of prices without one, three letters.</param>
/// <param name="known">Every part of the catalogue by <see cref="PartRow.Key"/>.</param>
/// <param name="kinds">Keys of the joint kinds in the register.</param>
internal sealed class ImportPlanner(PartsFile file, PartColumns columns, string currency, IReadOnlyDictionary<string, PartRow> known, IReadOnlySet<string> kinds)
{
    private readonly PartFormValidator validator = new(kinds);
    private readonly List<ImportLine> lines = [];
    private readonly List<ImportProblem> problems = [];
    private readonly Dictionary<string, int> rowOf = [];
    private int allProblems;

    internal ImportPlan Plan()
    {
        foreach (var row in file.Rows)
        {
            if (row.Cells.Count == file.Headings.Count)
            {
                Read(row);
            }
            else
            {
                Say(row.Number, null, $"it has {row.Cells.Count} cells, the headings are {file.Headings.Count}. Give it as many; a text with the separator in it is written in quotation marks.");
            }
        }

        return new ImportPlan(lines, problems, allProblems, Mark());
    }

    private void Read(FileRow row)
    {
        var before = allProblems;
        var (maker, number) = (PartValues.OneLine(Cell(row, PartColumn.Maker)), PartValues.OneLine(Cell(row, PartColumn.Number)));
        var key = maker.Length == 0 || number.Length == 0 || UnseenLetters.FirstIn(maker + number) is not null ? null : PartRow.KeyOf(maker, number);
        var there = key is null ? null : known.GetValueOrDefault(key);
        if (key is not null && !rowOf.TryAdd(key, row.Number))
        {
            Say(row.Number, PartColumn.Number, $"{Look.TypedNumber.Shown(number)} of {Look.TypedNumber.Shown(maker)} is in row {rowOf[key]} already. Keep one of the two.");
        }

        var form = FormOf(row, there);
        var retired = YesOrNo(row, PartColumn.OutOfUse);
        foreach (var error in validator.Validate(form).Errors)
        {
            Say(row.Number, Enum.Parse<PartColumn>(error.PropertyName), error.ErrorMessage);
        }

        if (allProblems == before)
        {
            lines.Add(new ImportLine(row.Number, PartValues.Of(form), retired, there));
        }
    }

    private PartForm FormOf(FileRow row, PartRow? there)
    {
        string Text(PartColumn column) => Cell(row, column)?.Trim() ?? (there is null ? "" : PartsCsv.TextOf(there, column));
        var price = Text(PartColumn.Price);
        var letters = Cell(row, PartColumn.Currency)?.Trim() ?? "";
        return new PartForm
        {
            Number = Text(PartColumn.Number),
            Maker = Text(PartColumn.Maker),
            Name = Text(PartColumn.Name),
            Fills = Text(PartColumn.Fills),
            FilledBefore = there?.Fills ?? "",
            Thread = Text(PartColumn.Thread),
            Strength = Text(PartColumn.Strength),
            SingleUse = YesOrNo(row, PartColumn.SingleUse) ?? there?.SingleUse ?? false,
            Price = price,
            Currency = letters.Length > 0 ? letters
                : PriceText.LettersOf(price).Length > 0 ? ""
                : columns[PartColumn.Price] is null && there?.Currency is { } own ? own
                : currency,
        };
    }

    // An empty cell is no; null where the file has no such column, or it is neither.
    private bool? YesOrNo(FileRow row, PartColumn column)
    {
        switch (Cell(row, column)?.Trim().ToUpperInvariant())
        {
            case null:
                return null;
            case "" or "NO" or "N" or "FALSE" or "0":
                return false;
            case "YES" or "Y" or "TRUE" or "1" or "X":
                return true;
            default:
                Say(row.Number, column, $"{Look.TypedNumber.Shown(Cell(row, column)!)} is neither yes nor no. Write one of them; an empty cell is no.");
                return null;
        }
    }

    private string? Cell(FileRow row, PartColumn column) => columns.Cell(row.Cells, column);

    private void Say(int row, PartColumn? column, string words)
    {
        allProblems++;
        if (problems.Count < ImportPlan.MostProblems)
        {
            problems.Add(new ImportProblem(row, column, words));
        }
    }

    private string Mark()
    {
        using var mark = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        mark.AppendData(Encoding.UTF8.GetBytes($"{columns}\n{currency}\n{allProblems}\n"));
        foreach (var line in lines)
        {
            mark.AppendData(Encoding.UTF8.GetBytes($"{line.Row} {line.There?.Revision} {line.Retired}\n"));
        }

        return Convert.ToHexStringLower(mark.GetHashAndReset());
    }
}
