using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Strength of a class at one diameter: proof stress Sp, yield (ReL or Rp0.2) and tensile strength Rm, all least values,
/// on the stress area of the thread.
/// </summary>
public readonly record struct StrengthValues(Pressure ProofStress, Pressure YieldStress, Pressure TensileStrength);
