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

/// <summary>Clamp load over proof load, as fractions (1 = proof load), at the three points of the band.</summary>
public readonly record struct ProofUtilisation(double Minimum, double Nominal, double Maximum);

/// <summary>
/// Stress while tightening over yield, as fractions (1 = yield; assembly tables of VDI 2230 stop at 0.9), at the three points of
/// the band.
/// </summary>
public readonly record struct YieldUtilisation(double Minimum, double Nominal, double Maximum)
{
    /// <summary>Of a band in newtons at its frictions; yield in MPa. No allocation.</summary>
    public static YieldUtilisation For(
        ClampFigures band, StressGeometry stress, double yield, double frictionLow, double frictionNominal, double frictionHigh) => new(
            stress.Equivalent(band.Minimum, frictionHigh) / yield,
            stress.Equivalent(band.Nominal, frictionNominal) / yield,
            stress.Equivalent(band.Maximum, frictionLow) / yield);
}
