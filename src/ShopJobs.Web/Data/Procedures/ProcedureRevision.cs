using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Procedures;

/// <summary>One imported procedure document, exactly as it came. Its text never changes: a new text is a new row.</summary>
public sealed class ProcedureRevision
{
    /// <summary>SHA-256 of the document, lower-case hex.</summary>
    public required string Digest { get; init; }

    public required string Code { get; init; }

    public required string Title { get; init; }

    public required string Revision { get; init; }

    public required byte[] Yaml { get; init; }

    /// <summary>Invented data for the demo shop.</summary>
    public bool Demo { get; init; }

    public DateTime ImportedAt { get; init; }

    public PersonId? ImportedBy { get; init; }

    /// <summary>When it was made current last, UTC; the newest of a code is current.</summary>
    public DateTime CurrentSince { get; set; }

    /// <summary>
    /// When its code was retired while this revision was current, UTC; null while it goes on cars. A newer revision, or this one made
    /// current again, is not retired.
    /// </summary>
    public DateTime? RetiredAt { get; set; }

    /// <summary>Who retired it.</summary>
    public PersonId? RetiredBy { get; set; }
}
