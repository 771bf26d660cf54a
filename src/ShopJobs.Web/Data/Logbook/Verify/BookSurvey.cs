using ShopJobs.Domain.Logbook;
using SQLitePCL;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>A fast reading of all entries in stored order, that says which logbooks need a closer look.</summary>
/// <param name="Heads">The last entry read of each logbook.</param>
internal sealed record BookSurvey(
    IReadOnlyDictionary<LogbookId, Head> Heads, IReadOnlySet<LogbookId> Suspects, IReadOnlyList<LogbookProblem> Strays)
{
    private const long WorthSplitting = 20_000;

    public static BookSurvey Of(string file, EntryKeysOf keysOf, VerifyConnection connection)
    {
        var (first, last) = Range(connection);
        var ranges = (int)Math.Clamp((last - first) / WorthSplitting, 1, 4 * Environment.ProcessorCount);
        var width = (last - first) / ranges + 1;
        var scans = new EntryScan[ranges];
        Parallel.For(0, ranges, i =>
        {
            scans[i] = new EntryScan(keysOf);
            scans[i].Read(file, first + (i * width), Math.Min(last, first + ((i + 1) * width) - 1));
        });
        return Join(scans);
    }

    private static (long First, long Last) Range(VerifyConnection connection)
    {
        foreach (var row in connection.Rows("SELECT coalesce(min(id), 0), coalesce(max(id), 0) FROM entries"))
        {
            return (raw.sqlite3_column_int64(row, 0), raw.sqlite3_column_int64(row, 1));
        }

        return default;
    }

    private static BookSurvey Join(IEnumerable<EntryScan> scans)
    {
        var heads = new Dictionary<LogbookId, Head>();
        var suspects = new HashSet<LogbookId>();
        var strays = new List<LogbookProblem>();
        var findings = new List<Finding>();
        foreach (var scan in scans)
        {
            strays.AddRange(scan.Strays);
            foreach (var (logbook, stretch) in scan.Stretches)
            {
                EntryCheck.Link(stretch.First, stretch.FirstEnvelope, heads.GetValueOrDefault(logbook), findings);
                if (stretch.Suspect || findings.Count > 0)
                {
                    suspects.Add(logbook);
                }

                findings.Clear();
                heads[logbook] = stretch.Last;
            }
        }

        return new BookSurvey(heads, suspects, strays);
    }
}
