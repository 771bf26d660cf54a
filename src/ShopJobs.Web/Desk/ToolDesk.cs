using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Desk;

/// <summary>Where commands on tools are decided and tools are read.</summary>
public sealed class ToolDesk(LogbookWriter writer, LogbookSnapshots snapshots, ShopClock clock, ClockWatch watch, TimeProvider time)
{
    /// <summary>Runs a command on a tool that nobody signs.</summary>
    public Task<DeskAnswer> RunAsync(
        ToolId tool,
        CommandId id,
        Present here,
        ToolReport command,
        IReadOnlyList<NewContent>? contents = null,
        Action<SqliteTransaction>? rows = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(here);
        return RunAsync(tool, id, new Stamp(here.Person, here.Person, here.Tablet), command, new Kept(contents ?? []), rows, cancellation);
    }

    /// <summary>Runs a command on a tool that is signed. What was shown is kept beside the entry.</summary>
    /// <param name="proof">Proof of the PIN for this command and this screen.</param>
    /// <param name="id">The command that was asked to be signed.</param>
    /// <param name="shown">What was shown to the signer.</param>
    /// <param name="command">Made from what was shown, before it was signed.</param>
    /// <param name="contents">Texts the command names by digest.</param>
    public Task<DeskAnswer> SignAsync(
        ToolId tool,
        SignatureProof proof,
        CommandId id,
        ShownLines shown,
        SignedToolCommand command,
        IReadOnlyList<NewContent>? contents = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(command);
        var stamp = new Stamp(proof.Signer, proof.SessionPerson, proof.Tablet);
        return Signing.Covers(proof, id, shown, command.Shown, time)
            ? RunAsync(tool, id, stamp, command, Kept.Signed(proof, shown, contents ?? []), null, cancellation)
            : Task.FromResult(Signing.NotForThis);
    }

    /// <summary>Every tool of the shop as it is now.</summary>
    public IReadOnlyDictionary<ToolId, ToolState> ReadAll() => snapshots.Read(Surroundings.AllTools);

    /// <summary>Why the tool can't be cleared by this person as it stands; empty where it can.</summary>
    public IReadOnlyList<HoldPoint> AgainstClearing(ToolId tool, PersonId person) => snapshots.Read(reader =>
    {
        var state = reader.FoldAsFarAsReadable(Folders.LogbookOf(tool), Folders.Tool).State;
        var clear = new ClearTool(ContentDigest.Of([], []), "", state.Number);
        return Decide(reader, state, tool, person, clear) is Verdict.Refused refused ? refused.Reasons : [];
    });

    private async Task<DeskAnswer> RunAsync(
        ToolId tool,
        CommandId id,
        Stamp stamp,
        ToolCommand command,
        Kept kept,
        Action<SqliteTransaction>? rows,
        CancellationToken cancellation)
    {
        var logbook = Folders.LogbookOf(tool);
        var result = await writer.RunAsync(
            id,
            RequestDigest.Of(tool, command),
            stamp,
            reader =>
            {
                if (!Surroundings.IsActive(reader, stamp.Person))
                {
                    return Answers.NotActive();
                }

                var seen = watch.Look(reader);
                var verdict = Stamped(reader, seen, Decide(reader, reader.Fold(logbook, Folders.Tool), tool, stamp.Person, command));
                return Answers.ToDecision(reader, logbook, verdict, HoldNames.Plain, kept, seen, rows);
            },
            cancellation);
        return Answers.Of(result);
    }

    // A tool's entries keep how the clock went, as a car's do.
    private static Verdict Stamped(LogbookReader reader, SeenClock seen, Verdict verdict) => verdict is Verdict.Accepted accepted
        ? new Verdict.Accepted([.. accepted.Entries.Select(entry => seen.Shop.Stamped(entry, reader.At - reader.Clock))])
        : verdict;

    private Verdict Decide(LogbookReader reader, ToolState state, ToolId tool, PersonId person, ToolCommand command)
    {
        if (ToolNames.Against(reader, tool, state, command) is { } taken)
        {
            return new Verdict.Refused([taken]);
        }

        var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
        return state.Decide(
            tool, command, reader.RightsOf(person, today), today, doubt => ToolUsers.HasUsed(reader, tool, person, doubt));
    }
}
