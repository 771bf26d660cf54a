using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>The clamp load a torque gives, as a band, or the reason why it is not computed.</summary>
public abstract record ClampBand
{
    private ClampBand()
    {
    }

    /// <summary>
    /// Least, nominal and greatest clamp load; proof load of the thread and the three loads as fractions of it where the
    /// strength class is known.
    /// </summary>
    public sealed record Computed(Force Minimum, Force Nominal, Force Maximum, Force? ProofLoad, ProofUtilisation? Utilisation) : ClampBand
    {
        /// <summary>
        /// Tension and torsion together while tightening, as fractions of the yield of the class, at the three points of the band;
        /// null where the class has no yield for the thread.
        /// </summary>
        public YieldUtilisation? WhileTightening { get; init; }

        /// <summary>alpha_A = Fmax/Fmin (VDI 2230).</summary>
        public double TighteningFactor => Maximum / Minimum;
    }

    /// <summary>Not computed; the reason completes the sentence "band not computed: ...".</summary>
    public sealed record NotComputed(string Reason) : ClampBand;
}
