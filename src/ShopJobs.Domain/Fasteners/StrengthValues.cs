using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Strength of a class at one diameter: proof stress Sp (null for stainless classes: ISO 3506-1 states none), yield (ReL or
/// Rp0.2) and tensile strength Rm, all least values, on the stress area of the thread.
/// </summary>
public readonly record struct StrengthValues(Pressure? ProofStress, Pressure YieldStress, Pressure TensileStrength);
