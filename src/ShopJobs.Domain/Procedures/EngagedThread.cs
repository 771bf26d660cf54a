using UnitsNet;

namespace ShopJobs.Domain.Procedures;

/// <summary>The thread that a fastener is screwed into, in nut or part.</summary>
/// <param name="Length">Full thread engaged, chamfers taken off.</param>
/// <param name="Tensile">Tensile strength of the nut or part.</param>
public sealed record EngagedThread(Length Length, Pressure Tensile);
