namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// How far the parts of a joint give per newton, in mm/N: deltaS of the bolt and deltaP of the clamped parts (VDI 2230). Both
/// above zero. 1/delta is the stiffness.
/// </summary>
public readonly record struct Resilience(double Bolt, double Parts)
{
    /// <summary>deltaS, mm/N.</summary>
    public double Bolt { get; init => field = AboveZero(value); } = AboveZero(Bolt);

    /// <summary>deltaP, mm/N.</summary>
    public double Parts { get; init => field = AboveZero(value); } = AboveZero(Parts);

    /// <summary>deltaS + deltaP: what one newton of clamp load takes up in stretch and compression together.</summary>
    public double Sum => Bolt + Parts;

    /// <summary>
    /// Share of a working load that the bolt feels, Phi = deltaP/(deltaS + deltaP), 0 to 1, for a load that acts at the outer faces
    /// of the clamped parts (VDI 2230, n = 1); less where it acts further inside. Shigley's C.
    /// </summary>
    public double LoadShare => Parts / Sum;

    private static double AboveZero(double value)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        return value;
    }
}
