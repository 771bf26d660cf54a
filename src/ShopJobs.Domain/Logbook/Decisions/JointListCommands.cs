using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Report joints that the car has more than its list says. They are in every release at once.</summary>
/// <param name="Counts">Joints with the count they have; more than now.</param>
public sealed record AddPositions(IReadOnlyList<JointCount> Counts, ContentDigest Reason) : Report;

/// <summary>Say which joints the car has. What takes joints away waits for a second person who looked.</summary>
/// <param name="Follows">The kind of car to follow; null where that stays.</param>
/// <param name="Counts">Joints with the count they have.</param>
public sealed record ChangeJointList(string? Follows, IReadOnlyList<JointCount> Counts, ContentDigest Reason, string Shown) : SignedCommand(Shown);

/// <summary>Sign, as a second person who looked at the car, what was asked of its joints.</summary>
/// <param name="Asked">The entry that asked for fewer.</param>
/// <param name="Confirmed">True where the car has them no more, or never had; false where the list is right as it is.</param>
public sealed record LookAtJoints(long Asked, bool Confirmed, ContentDigest Finding, string Shown) : SignedCommand(Shown);
