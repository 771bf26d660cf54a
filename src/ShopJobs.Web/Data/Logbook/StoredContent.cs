namespace ShopJobs.Web.Data.Logbook;

/// <summary>What stands behind a content digest.</summary>
public abstract record StoredContent
{
    private StoredContent()
    {
    }

    /// <summary>It is there and matches its digest.</summary>
    public sealed record Present(ReadOnlyMemory<byte> Bytes) : StoredContent;

    /// <summary>It was erased; the entry that names it still stands.</summary>
    public sealed record Erased(DateTime At) : StoredContent;

    /// <summary>It is there and doesn't match its digest: somebody changed it outside the program.</summary>
    public sealed record Altered : StoredContent;

    /// <summary>No row has this digest: somebody took it out outside the program.</summary>
    public sealed record Missing : StoredContent;
}
