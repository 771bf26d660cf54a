using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Least and greatest pitch diameter D2 and minor diameter D1 of a nut thread, and the class they belong to.</summary>
public readonly record struct InternalThreadLimits(string Class, Length PitchMin, Length PitchMax, Length MinorMin, Length MinorMax);
