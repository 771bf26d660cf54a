using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Procedures;

/// <summary>One imported register of joint kinds, exactly as it came. One row is current.</summary>
public sealed class JointRegisterRevision
{
    /// <summary>SHA-256 of the document, lower-case hex.</summary>
    public required string Digest { get; init; }

    public required byte[] Yaml { get; init; }

    public DateTime ImportedAt { get; init; }

    public PersonId? ImportedBy { get; init; }

    public bool Current { get; set; }

    /// <summary>The second person who looked, where this register took joints away from cars of the shop.</summary>
    public PersonId? LookedBy { get; set; }
}
