namespace ShopJobs.Web.Data.Logbook.Verify;

/// <summary>What can be wrong with a logbook that was changed outside the program.</summary>
public enum LogbookFault
{
    /// <summary>A table of the book is missing or altered: nothing in it can be read.</summary>
    TableDiffers,

    /// <summary>A unique key or trigger that keeps the book append-only is missing or altered.</summary>
    GuardMissing,

    /// <summary>A row names no logbook.</summary>
    NoLogbook,

    /// <summary>One or more numbers are not there.</summary>
    EntryMissing,

    /// <summary>A number stands more than once.</summary>
    EntryTwice,

    /// <summary>The chain value doesn't follow from the entry before and the envelope.</summary>
    ChainBroken,

    /// <summary>The envelope's bytes are not an envelope, or its payload can't be read.</summary>
    EnvelopeUnreadable,

    /// <summary>A kind or version this program doesn't know: written by a newer one, or made up.</summary>
    EntryUnknown,

    /// <summary>A column beside the envelope says otherwise than the envelope.</summary>
    ColumnDiffers,

    /// <summary>The head is not the last entry.</summary>
    HeadDiffers,

    /// <summary>A content row doesn't match its digest.</summary>
    ContentAltered,

    /// <summary>The entry quoted from outside is not in the book as it was quoted.</summary>
    NotAsQuoted,
}
