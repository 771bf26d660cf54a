using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Greatest and least major diameter d and pitch diameter d2 of a bolt thread, and the class they belong to.</summary>
public readonly record struct ExternalThreadLimits(string Class, Length MajorMax, Length MajorMin, Length PitchMax, Length PitchMin);
