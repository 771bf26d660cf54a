namespace ShopJobs.Domain.Fasteners;

/// <summary>A clamp band in plain numbers: loads in N, and their shares of proof load and of yield while tightening.</summary>
public readonly record struct BandFigures(ClampFigures Load, ProofUtilisation? Proof, YieldUtilisation? WhileTightening);
