using Microsoft.Data.Sqlite;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>Tells failures of the disk and the lock from faults of the program, and says them in words.</summary>
internal static class StorageFailure
{
    // Primary result codes, https://www.sqlite.org/rescode.html
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CanNotOpen = 14;
    private const int NotADatabase = 26;

    /// <summary>Null for anything that is a fault of the program.</summary>
    public static RunResult.NotSaved? Of(Exception failure) => (failure.GetBaseException() as SqliteException)?.SqliteErrorCode switch
    {
        Busy or Locked => new(NotSavedCause.Busy, "The database was busy for too long. Send it again."),
        Full => new(NotSavedCause.DiskFull, "The disk is full. Make room on the server, then send it again."),
        ReadOnly or InputOutput or Corrupt or CanNotOpen or NotADatabase =>
            new(NotSavedCause.Storage, $"The database can't be read or written ({failure.GetBaseException().Message}). Tell whoever looks after the server."),
        _ => null,
    };
}
