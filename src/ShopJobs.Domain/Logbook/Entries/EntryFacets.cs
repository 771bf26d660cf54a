using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>A text kept outside the entry, with what it is.</summary>
public readonly record struct KeptText(string Label, ContentDigest Digest)
{
    /// <summary>Those of these texts that were given.</summary>
    public static IReadOnlyList<KeptText> Given(params ReadOnlySpan<(string Label, ContentDigest? Digest)> texts)
    {
        var given = new List<KeptText>();
        foreach (var (label, digest) in texts)
        {
            if (digest is { } text)
            {
                given.Add(new KeptText(label, text));
            }
        }

        return given;
    }
}

/// <summary>
/// What an entry is about. Each kind says it once, and whoever finds, lists or strikes entries asks for it and need not know
/// the kinds. No part of the stored entry.
/// </summary>
public sealed record EntryFacets
{
    /// <summary>Nothing but what its sentence says.</summary>
    public static readonly EntryFacets None = new();

    /// <summary>The job it belongs to.</summary>
    public JobId? Job { get; init; }

    /// <summary>Every position it names; the first is the one it is found by.</summary>
    public IReadOnlyList<JointPosition> Positions { get; init; } = [];

    /// <summary>The joint it is found by, where it names a joint and no position.</summary>
    public Joint? Joint { get; init; }

    /// <summary>Numbers of the entries it is about, where it names no position: it is about theirs.</summary>
    public IReadOnlyList<long> About { get; init; } = [];

    /// <summary>The torque tool used or spoken of.</summary>
    public ToolId? Tool { get; init; }

    /// <summary>Why it does not count; empty when there is nothing against it.</summary>
    public IReadOnlyList<HoldReason> Problems { get; init; } = [];

    /// <summary>Reasons, findings and acceptances kept outside the entry. The signer's name is not among them.</summary>
    public IReadOnlyList<KeptText> Texts { get; init; } = [];

    /// <summary>
    /// Contents that are the customer's words, or tell of the customer or of somebody who came for him: they go when the customer asks
    /// for it. What people of the shop wrote about the work is not among them.
    /// </summary>
    public IReadOnlyList<ContentDigest> OfCustomer { get; init; } = [];

    /// <summary>True for a record of the joint's tightening: opening the joint makes it void.</summary>
    public bool FallsWhenOpened { get; init; }

    /// <summary>What is copied beside the entry to find it by.</summary>
    public EntryKeys Keys
    {
        get
        {
            JointPosition? position = Positions.Count > 0 ? Positions[0] : Joint?.At(1);
            return new EntryKeys(Job, position?.Key, position?.Place, position?.Number, Tool);
        }
    }
}
