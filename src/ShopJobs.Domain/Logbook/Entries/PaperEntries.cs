using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Where a late report was written down: on which card, and when by what stands there.</summary>
/// <param name="Card">Number of the card, as <see cref="CardNumber.On"/> writes it.</param>
/// <param name="At">The minute on the paper, UTC. It is a claim: the entry's own instant counts.</param>
public readonly record struct OnPaper(string Card, DateTime At);

/// <summary>
/// Work that a paper says was done and that nobody who enters it answers for, or of which evidence is missing. It does not count and brings
/// nothing to torque: the fastener stays what it was, and as it may have been pulled it is backed off before it is pulled again. What was
/// never touched here, and what was turned by an angle, is held. Its figures are words, never numbers.
/// </summary>
/// <param name="Stage">The stage of the group; 0 where the paper says run down by hand.</param>
/// <param name="DoneBy">Who did it, by the paper; null where nobody is named.</param>
/// <param name="Words">What the paper says.</param>
/// <param name="Problems">That it is declared.</param>
public sealed record DeclaredFromPaper(
    JobId Job,
    string Group,
    IReadOnlyList<JointPosition> Positions,
    int Stage,
    PersonId? DoneBy,
    ContentDigest Words,
    IReadOnlyList<HoldReason> Problems) : Entry
{
    /// <summary>True where the stage is an angle: a second turn would stretch it further. Null otherwise.</summary>
    public bool? Turned { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Positions = Positions, Problems = Problems, Texts = KeptText.Given(("What the paper says", Words)) };
}
