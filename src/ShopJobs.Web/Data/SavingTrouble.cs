using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Data;

/// <summary>
/// Whether the shop's database takes what is written, as the last attempt showed. Reading goes on all the same; every staff page
/// says it while nothing can be saved.
/// </summary>
public sealed class SavingTrouble(ILogger<SavingTrouble> log)
{
    private readonly Lock gate = new();
    private NotSavedCause? cause;

    /// <summary>Somebody who shows it draws it again. Raised on whatever thread found out.</summary>
    public event Action? Changed;

    /// <summary>Why nothing can be saved now, and what to do, in words; null while all is well.</summary>
    public string? Words { get; private set; }

    /// <summary>True when the failure is one of disk, lock or file, and is now known; false when it is a fault of the program.</summary>
    internal bool Takes(Exception failure)
    {
        if (StorageFailure.Of(failure) is not { } known)
        {
            return false;
        }

        if (Set(known.Cause, $"Nothing can be saved now: {Because(known, failure)} Everything can still be read. Write down on paper what you do until this line is gone."))
        {
            log.LogError(failure, "Nothing can be saved in the shop's database. It is read on; this is said once until it can be written again");
        }

        return true;
    }

    /// <summary>Something was written.</summary>
    internal void Ended()
    {
        if (Set(null, null))
        {
            log.LogWarning("The shop's database can be written again");
        }
    }

    private static string Because(RunResult.NotSaved known, Exception failure) => known.Cause switch
    {
        NotSavedCause.DiskFull => "the disk of the server is full. Tell whoever looks after the server to make room.",
        NotSavedCause.Busy => "another program holds the shop's database. Wait a minute; if it stays so, tell whoever looks after the server.",
        _ => $"the shop's database can't be written ({failure.GetBaseException().Message.TrimEnd('.')}). Tell whoever looks after the server.",
    };

    private bool Set(NotSavedCause? now, string? words)
    {
        lock (gate)
        {
            if (cause == now)
            {
                return false;
            }

            (cause, Words) = (now, words);
        }

        Changed?.Invoke();
        return true;
    }
}
