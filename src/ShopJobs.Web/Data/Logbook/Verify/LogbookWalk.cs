using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>Reads one logbook in the order of its numbers and names each thing that is wrong.</summary>
internal sealed class LogbookWalk(VerifyConnection connection, EntryKeysOf keysOf)
{
    /// <summary>Entries between two reports of how far it has come.</summary>
    public const int ReportEvery = 256;

    private readonly EntryCheck check = new(keysOf);

    /// <summary>The last entry there is.</summary>
    /// <param name="reached">Told now and then how many entries were read.</param>
    public Head Through(
        LogbookId logbook, IReadOnlyDictionary<LogbookId, Head> stored, List<LogbookProblem> problems, IProgress<long>? reached = null)
    {
        var read = 0L;
        var head = default(Head);
        var findings = new List<Finding>();
        foreach (var statement in connection.Rows(
            $"SELECT {EntryRow.Columns} FROM entries WHERE owner_kind = ? AND owner = ? COLLATE NOCASE ORDER BY number, id",
            logbook.KindName,
            logbook.Owner.ToString()))
        {
            var row = new EntryRow(statement);
            EntryCheck.Link(row, head, findings);
            check.Row(row, findings);
            foreach (var finding in findings)
            {
                problems.Add(new LogbookProblem(logbook, finding.At ?? row.Number, finding.Fault, finding.What));
            }

            findings.Clear();
            head = row.Number > head.Number ? row.Head : head;
            if (++read % ReportEvery == 0)
            {
                reached?.Report(read);
            }
        }

        if (WrongHead(head, stored, logbook) is { } wrong)
        {
            problems.Add(new LogbookProblem(logbook, null, LogbookFault.HeadDiffers, wrong));
        }

        return head;
    }

    private static string? WrongHead(Head last, IReadOnlyDictionary<LogbookId, Head> stored, LogbookId logbook)
    {
        var known = stored.TryGetValue(logbook, out var head);
        return (known, last.Number) switch
        {
            (false, 0) => "there is no such logbook",
            (false, _) => "it has entries and no head",
            (true, 0) => $"its head is entry {head.Number}, and no entry is there",
            _ when head != last => $"its head is {head.Number}:{head.Hash}, its last entry is {last.Number}:{last.Hash}",
            _ => null,
        };
    }
}
