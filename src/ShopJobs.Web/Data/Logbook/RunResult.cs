using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>What became of a command.</summary>
public abstract record RunResult
{
    private RunResult()
    {
    }

    /// <summary>Recorded, and on the disk.</summary>
    /// <param name="Entries">What was appended, in order.</param>
    public sealed record Saved(ICommandAnswer Answer, IReadOnlyList<AppendedEntry> Entries) : RunResult;

    /// <summary>This command was recorded before; nothing was recorded now, and this is the answer it got then, as it was kept.</summary>
    public sealed record Repeated(ReadOnlyMemory<byte> Answer) : RunResult;

    /// <summary>Decided against; nothing was recorded.</summary>
    public sealed record Refused(ICommandAnswer Answer) : RunResult;

    /// <summary>This command id was used for something else; nothing was recorded.</summary>
    public sealed record CommandIdTaken : RunResult;

    /// <summary>Nothing was recorded, for a reason outside the command. It may be sent again under its id.</summary>
    /// <param name="Why">A sentence for people: why, and what to do.</param>
    public sealed record NotSaved(NotSavedCause Cause, string Why) : RunResult;
}

/// <summary>Why a command that was not refused is not recorded either.</summary>
public enum NotSavedCause
{
    /// <summary>Another writer held the database for too long.</summary>
    Busy,

    /// <summary>The disk has no room.</summary>
    DiskFull,

    /// <summary>The database could not be read or written.</summary>
    Storage,

    /// <summary>The database lacks a guard of the logbook: see <see cref="LogbookHealth"/>.</summary>
    DatabaseReadOnly,

    /// <summary>A logbook the decision needs has an entry this program can't use.</summary>
    LogbookReadOnly,
}

/// <summary>An entry that now stands in its logbook.</summary>
public sealed record AppendedEntry(LogbookId Logbook, long Number, EntryHash Hash);
