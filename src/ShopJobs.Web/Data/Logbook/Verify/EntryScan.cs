using System.Runtime.InteropServices;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>
/// Reads a range of rows in the order they are stored and finds the logbooks that need a closer look. Ranges can be read at
/// the same time: what links a range to the one before is judged afterwards.
/// </summary>
internal sealed class EntryScan(EntryKeysOf keysOf)
{
    private readonly Dictionary<LogbookId, Stretch> stretches = [];
    private readonly List<LogbookProblem> strays = [];

    /// <summary>What each logbook has in this range.</summary>
    public IReadOnlyDictionary<LogbookId, Stretch> Stretches => stretches;

    /// <summary>Rows that name no logbook.</summary>
    public IReadOnlyList<LogbookProblem> Strays => strays;

    public void Read(string file, long firstId, long lastId)
    {
        var check = new EntryCheck(keysOf);
        var findings = new List<Finding>();
        using var connection = new VerifyConnection(file);
        foreach (var statement in connection.Rows($"SELECT {EntryRow.Columns} FROM entries WHERE id BETWEEN ? AND ? ORDER BY id", firstId, lastId))
        {
            var row = new EntryRow(statement);
            if (row.Logbook is not { } logbook)
            {
                strays.Add(new LogbookProblem(null, null, LogbookFault.NoLogbook, $"row {row.Id} names no logbook but {row.Shown(1)}:{row.Shown(2)}"));
                continue;
            }

            ref var stretch = ref CollectionsMarshal.GetValueRefOrAddDefault(stretches, logbook, out var seen);
            if (seen)
            {
                EntryCheck.Link(row, stretch.Last, findings);
            }
            else
            {
                stretch.First = row.Head;
                stretch.FirstEnvelope = row.Envelope.ToArray();
            }

            check.Row(row, findings);
            stretch.Last = row.Head;
            stretch.Suspect |= findings.Count > 0;
            findings.Clear();
        }
    }

    /// <summary>The entries of one logbook within a range.</summary>
    internal struct Stretch
    {
        public Head First { get; set; }

        public byte[] FirstEnvelope { get; set; }

        public Head Last { get; set; }

        public bool Suspect { get; set; }
    }
}
