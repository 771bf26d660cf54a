using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>
/// Proves that what is in a database file is consistent, without writing to it: numbers without gaps, the hash chain, each
/// envelope, every column copied from it, heads, contents and the guards of the tables.
/// </summary>
public sealed class LogbookVerifier(string file, EntryKeysOf keysOf)
{
    /// <summary>Verifies all logbooks with their contents and guards, as they are at one moment.</summary>
    public VerifyReport Verify()
    {
        using var connection = new VerifyConnection(file);
        var problems = Guards(connection);
        if (problems.Exists(problem => problem.Fault == LogbookFault.TableDiffers))
        {
            return new VerifyReport(new Dictionary<LogbookId, Head>(), 0, 0, problems);
        }

        using var moment = connection.Connection.BeginTransaction(deferred: true);
        var stored = StoredHeads.Read(connection, problems);
        var survey = BookSurvey.Of(file, keysOf, connection);
        problems.AddRange(survey.Strays);
        var differing = stored.Keys.Union(survey.Heads.Keys)
            .Where(logbook => stored.GetValueOrDefault(logbook) != survey.Heads.GetValueOrDefault(logbook));
        var heads = new Dictionary<LogbookId, Head>(survey.Heads);
        var walk = new LogbookWalk(connection, keysOf);
        foreach (var logbook in survey.Suspects.Union(differing).OrderBy(logbook => logbook.ToString(), StringComparer.Ordinal))
        {
            heads[logbook] = walk.Through(logbook, stored, problems);
        }

        var (contents, erased) = ContentCheck.Run(connection, problems);
        return new VerifyReport(heads, contents, erased, problems);
    }

    /// <summary>Verifies one logbook, and the guards.</summary>
    /// <param name="reached">Told now and then how many of its entries were read.</param>
    public VerifyReport Verify(LogbookId logbook, IProgress<long>? reached = null)
    {
        using var connection = new VerifyConnection(file);
        var problems = Guards(connection);
        if (problems.Exists(problem => problem.Fault == LogbookFault.TableDiffers))
        {
            return new VerifyReport(new Dictionary<LogbookId, Head>(), 0, 0, problems);
        }

        using var moment = connection.Connection.BeginTransaction(deferred: true);
        var stored = StoredHeads.Read(connection, problems);
        var head = new LogbookWalk(connection, keysOf).Through(logbook, stored, problems, reached);
        return new VerifyReport(new Dictionary<LogbookId, Head> { [logbook] = head }, 0, 0, problems);
    }

    /// <summary>
    /// Compares an entry with its number and hash as kept outside the database, on a printed summary or in a backup. With a
    /// logbook that verifies, null says that nothing up to that entry was cut off or rewritten since.
    /// </summary>
    public LogbookProblem? VerifyAgainst(LogbookId logbook, Head quoted)
    {
        using var connection = new VerifyConnection(file);
        foreach (var row in connection.Rows(
            "SELECT number, hash FROM entries WHERE owner_kind = ? AND owner = ? COLLATE NOCASE AND number = ?",
            logbook.KindName,
            logbook.Owner.ToString(),
            quoted.Number))
        {
            var stored = StoredHeads.HeadAt(row, 0);
            return stored == quoted ? null : Otherwise($"its hash is {stored.Hash}, not {quoted.Hash} as quoted: the book was rewritten");
        }

        return Otherwise("it was quoted and is not in the book: the end was cut off");

        LogbookProblem Otherwise(string what) => new(logbook, quoted.Number, LogbookFault.NotAsQuoted, what);
    }

    private static List<LogbookProblem> Guards(VerifyConnection connection) =>
        [.. LogbookSchema.Differences(connection.Connection).Select(difference => new LogbookProblem(
            null, null, difference.IsOfTable ? LogbookFault.TableDiffers : LogbookFault.GuardMissing, difference.ToString()))];
}
