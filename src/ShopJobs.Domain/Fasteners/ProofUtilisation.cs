namespace ShopJobs.Domain.Fasteners;

/// <summary>Clamp load over proof load, as fractions (1 = proof load), at the three points of the band.</summary>
public readonly record struct ProofUtilisation(double Minimum, double Nominal, double Maximum);
