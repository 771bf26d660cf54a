using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Desk;

/// <summary>Where commands on tools are decided and tools are read.</summary>
public sealed class ToolDesk(LogbookWriter writer, LogbookSnapshots snapshots, ShopClock clock)
{
    /// <summary>Runs a command on a tool.</summary>
    public async Task<DeskAnswer> RunAsync(
        ToolId tool,
        CommandId id,
        Present here,
        ToolCommand command,
        IReadOnlyList<NewContent>? contents = null,
        Action<SqliteTransaction>? rows = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(here);
        var logbook = Folders.LogbookOf(tool);
        var result = await writer.RunAsync(
            id,
            RequestDigest.Of(tool, command),
            new Stamp(here.Person, here.Person, here.Tablet),
            reader =>
            {
                if (!Surroundings.IsActive(reader, here.Person))
                {
                    return Answers.NotActive();
                }

                var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
                var state = reader.Fold(logbook, Folders.Tool);
                var verdict = state.Decide(tool, command, reader.RightsOf(here.Person, today), today);
                return Answers.ToDecision(reader, logbook, verdict, HoldNames.Plain, contents ?? [], null, rows);
            },
            cancellation);
        return Answers.Of(result);
    }

    /// <summary>Every tool of the shop as it stands now.</summary>
    public IReadOnlyDictionary<ToolId, ToolState> ReadAll() => snapshots.Read(Surroundings.AllTools);
}
