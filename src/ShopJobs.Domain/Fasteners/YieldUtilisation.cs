namespace ShopJobs.Domain.Fasteners;

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
