using System.Text;

namespace ShopJobs.Domain.Tests.Reference;

/// <summary>Reads a comma-separated file with quoted cells (RFC 4180), first line = column names.</summary>
internal static class CsvTable
{
    public static IReadOnlyList<ReferenceRow> Read(string path)
    {
        var lines = Lines(File.ReadAllText(path)).ToList();
        var columns = lines[0];
        return [.. lines.Skip(1).Select((line, index) => line.Count == columns.Count
            ? new ReferenceRow(columns.Zip(line).ToDictionary(p => p.First, p => p.Second))
            : throw new InvalidDataException($"{path}, row {index + 1}: {line.Count} cells under {columns.Count} columns."))];
    }

    private static IEnumerable<IReadOnlyList<string>> Lines(string text)
    {
        var line = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (!quoted && c is ',' or '\n')
            {
                line.Add(cell.ToString());
                cell.Clear();
                if (c == '\n')
                {
                    yield return line;
                    line = [];
                }
            }
            else if (c != '\r')
            {
                cell.Append(c);
            }
        }

        if (line.Count > 0 || cell.Length > 0)
        {
            line.Add(cell.ToString());
            yield return line;
        }
    }
}
