using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>
/// Decides commands and records what was decided, each in one transaction that is on the disk before it is acknowledged.
/// Where nobody is writing the decision is taken with the lock in hand; else it is taken without, while waiting for the turn, and
/// taken again if anything it relied on has moved by the time the lock is held.
/// </summary>
public sealed class LogbookWriter(LogbookDatabase database, FoldCache cache, LogbookNotices notices, TimeProvider time) : IDisposable
{
    private readonly SemaphoreSlim turn = new(1);
    private AppendSession? open;
    private bool emptyingOwed;

    /// <summary>Is told whether the database takes what is written.</summary>
    internal SavingTrouble? Trouble { get; init; }

    /// <summary>Runs after deciding and before the lock is asked for.</summary>
    internal Func<Task>? BetweenDecisionAndAppend { get; init; }

    /// <summary>Runs with everything written and nothing committed.</summary>
    internal Action? BeforeCommit { get; init; }

    /// <summary>What the database lacks, checked once when it is opened for writing.</summary>
    public async Task<LogbookHealth> HealthAsync(CancellationToken cancellation)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            return (open ??= new AppendSession(database.OpenWriter())).Health;
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>The outcome of a command that was recorded before; null when there is none.</summary>
    public RunResult? Earlier(CommandId id, ReadOnlyMemory<byte> requestDigest) =>
        database.Read(session => OutcomeOf(id, requestDigest, session));

    /// <summary>Decides one command and records the outcome.</summary>
    /// <param name="id">Made by the client; the same on each retry.</param>
    /// <param name="requestDigest">What was asked, digested, so that an id used twice for different things is told apart.</param>
    /// <param name="decide">
    /// Pure but for what it reads from the reader; may be called twice. What it throws is thrown on, with nothing recorded.
    /// </param>
    public async Task<RunResult> RunAsync(
        CommandId id,
        ReadOnlyMemory<byte> requestDigest,
        Stamp stamp,
        Func<LogbookReader, Decision> decide,
        CancellationToken cancellation)
    {
        var command = new Command(id, requestDigest, stamp, decide);
        try
        {
            var result = BetweenDecisionAndAppend is null && turn.Wait(0, cancellation)
                ? DecideAndAppend(command)
                : await DecideThenAppendAsync(command, cancellation);
            if (result is RunResult.Saved)
            {
                Trouble?.Ended();
            }

            return result;
        }
        catch (LogbookReadOnlyException e)
        {
            return new RunResult.NotSaved(NotSavedCause.LogbookReadOnly, e.Message);
        }
        catch (Exception e) when (StorageFailure.Of(e) is { } failure)
        {
            Trouble?.Takes(e);
            return failure.Cause == NotSavedCause.Busy ? WithoutTheLock(command) ?? failure : failure;
        }
    }

    public void Dispose()
    {
        open?.Dispose();
        turn.Dispose();
    }

    /// <summary>
    /// What a command that could not get the lock can be told all the same: that it was recorded before, or that it is refused.
    /// Null where it would be recorded, or where that can't be read either.
    /// </summary>
    private RunResult? WithoutTheLock(Command command)
    {
        try
        {
            return database.Read(session => Judge(command, session)).Done;
        }
        catch (Exception e) when (StorageFailure.Of(e) is not null)
        {
            return null;
        }
    }

    private async Task<RunResult> DecideThenAppendAsync(Command command, CancellationToken cancellation)
    {
        var judged = database.Read(session => Judge(command, session));
        if (judged.Done is { } done)
        {
            return done;
        }

        if (BetweenDecisionAndAppend is { } pause)
        {
            await pause();
        }

        await turn.WaitAsync(cancellation);
        return InTurn(command, judged);
    }

    /// <summary>With the turn in hand: of a database that may only be read the command is still told whether it would be refused.</summary>
    private RunResult DecideAndAppend(Command command)
    {
        if (open is { Health.MayWrite: true })
        {
            return InTurn(command, null);
        }

        Judged judged;
        try
        {
            judged = database.Read(session => Judge(command, session));
        }
        catch
        {
            turn.Release();
            throw;
        }

        if (judged.Done is { } done)
        {
            turn.Release();
            return done;
        }

        return InTurn(command, judged);
    }

    /// <summary>Appends with the turn in hand, and gives the turn back.</summary>
    private RunResult InTurn(Command command, Judged? judged)
    {
        try
        {
            open ??= new AppendSession(database.OpenWriter());
            if (!open.Health.MayWrite)
            {
                return new RunResult.NotSaved(NotSavedCause.DatabaseReadOnly, $"The logbook may only be read, because {string.Join("; ", open.Health.Problems)}.");
            }

            return Append(open, command, judged);
        }
        catch (Exception e) when (e is not LogbookReadOnlyException)
        {
            // A connection that failed half way is not used again: closing it undoes what was not committed.
            open?.Dispose();
            open = null;
            throw;
        }
        finally
        {
            turn.Release();
        }
    }

    private RunResult Append(AppendSession session, Command command, Judged? judged)
    {
        List<AppendedEntry> appended;
        Decision.Accept accepted;
        using (var transaction = session.Begin())
        {
            if (judged?.Reader is not { } relied || session.Reading.OutcomeOf(command.Id) is not null || !relied.StillHolds(session.Reading))
            {
                judged = session.WithoutWriting(reading => Judge(command, reading));
                if (judged.Done is { } done)
                {
                    return done;
                }
            }

            (accepted, var reader) = (judged.Accepted!, judged.Reader!);
            accepted.Rows?.Invoke(transaction);
            foreach (var content in accepted.Contents)
            {
                session.Keep(content);
            }

            // Somebody else's entry may have come since the decision: it is not put before that one.
            var at = session.Reading.NewestInstant() is { } newest && newest > reader.At && !command.Stamp.SetsClock ? newest : reader.At;
            appended = session.Append(accepted.Entries, command.Id, command.Stamp, reader.Heads, at);
            foreach (var digest in accepted.Erase)
            {
                session.Erase(digest, reader.At);
            }

            session.Keep(command.Id, command.RequestDigest.ToArray(), accepted.Answer.ToBytes().ToArray(), reader.At);
            BeforeCommit?.Invoke();
            transaction.Commit();
        }

        // Before the next turn, so that they are told in the order of the logbooks.
        notices.Publish(appended);
        emptyingOwed |= accepted.Erase.Count > 0;
        emptyingOwed = emptyingOwed && !session.EmptyWriteAheadLog();
        return new RunResult.Saved(accepted.Answer, appended);
    }

    private static RunResult? OutcomeOf(CommandId id, ReadOnlyMemory<byte> requestDigest, ReadSession session) =>
        session.OutcomeOf(id) is var (request, answer)
            ? requestDigest.Span.SequenceEqual(request) ? new RunResult.Repeated(answer) : new RunResult.CommandIdTaken()
            : null;

    private Judged Judge(Command command, ReadSession session)
    {
        if (OutcomeOf(command.Id, command.RequestDigest, session) is { } earlier)
        {
            return new Judged(earlier, null, null);
        }

        var reader = new LogbookReader(session, cache, Envelope.InstantOf(time.GetUtcNow()), command.Stamp.SetsClock);
        return command.Decide(reader) switch
        {
            Decision.Refuse refused => new Judged(new RunResult.Refused(refused.Answer), null, null),
            Decision.Accept accepted => new Judged(null, accepted, reader),
            var other => throw new InvalidOperationException($"A decision is accepted or refused, not {other}."),
        };
    }

    private sealed record Command(CommandId Id, ReadOnlyMemory<byte> RequestDigest, Stamp Stamp, Func<LogbookReader, Decision> Decide);

    private sealed record Judged(RunResult? Done, Decision.Accept? Accepted, LogbookReader? Reader);
}
