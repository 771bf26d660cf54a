using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Declare what a paper says was done, without answering for it or without all its evidence.</summary>
/// <param name="Stage">The stage of the group; 0 for run down by hand.</param>
/// <param name="DoneBy">Who did it, by the paper; null where nobody is named.</param>
/// <param name="Words">What the paper says.</param>
public sealed record DeclareFromPaper(
    JobId Job, string Group, IReadOnlyList<JointPosition> Positions, int Stage, PersonId? DoneBy, ContentDigest Words) : Report;
