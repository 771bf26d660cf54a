using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// What is copied out of an entry beside its envelope, to find candidates across logbooks. A pure function of kind,
/// version and payload; the verdict is always the fold's.
/// </summary>
/// <param name="Job">The job the entry belongs to.</param>
/// <param name="Joint">The joint kind's key in the register, such as <c>front-strut.link-upper</c>.</param>
/// <param name="Place">Where on the car, such as <c>front-left</c>.</param>
/// <param name="Position">Position within the joint, from 1.</param>
/// <param name="Tool">The torque tool used or spoken of.</param>
public sealed record EntryKeys(JobId? Job, string? Joint, string? Place, int? Position, ToolId? Tool)
{
    /// <summary>An entry with nothing to find it by.</summary>
    public static readonly EntryKeys None = new(null, null, null, null, null);
}

/// <summary>
/// Gives the keys of an entry. Throws <see cref="UnknownEntryException"/> for a kind or version it doesn't know and
/// <see cref="FormatException"/> for a payload it can't read.
/// </summary>
public delegate EntryKeys EntryKeysOf(string kind, int version, ReadOnlyMemory<byte> payload);
