using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>What was decided on a command.</summary>
public abstract record Decision
{
    private Decision()
    {
    }

    /// <summary>It is to be recorded, all of it in one transaction, and answered so; a retry gets the same answer.</summary>
    /// <param name="Entries">In the order they are to stand; of any number of logbooks, each of which the decision has read.</param>
    /// <param name="Contents">What the entries name by digest.</param>
    public sealed record Accept(IReadOnlyList<NewEntry> Entries, IReadOnlyList<NewContent> Contents, ICommandAnswer Answer) : Decision
    {
        /// <summary>Content to erase: its bytes and salt go, its digest and the entries naming it stay.</summary>
        public IReadOnlyList<ContentDigest> Erase { get; init; } = [];

        /// <summary>Ordinary rows that are valid or fall with the entries, written on the transaction's connection.</summary>
        public Action<SqliteTransaction>? Rows { get; init; }
    }

    /// <summary>Nothing is recorded. The same command may be decided otherwise when it is sent again.</summary>
    public sealed record Refuse(ICommandAnswer Answer) : Decision;
}
