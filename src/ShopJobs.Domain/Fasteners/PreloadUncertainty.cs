namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Scatter of preload by way of measuring, as a plus-minus fraction: NSTS 08307 Rev A (July 1998), 3.4. Lubricated torque,
/// tensioner, washer, ultrasound and elongation seen; unlubricated and cadmium-plated torque from memory.
/// </summary>
/// <param name="Method">The way of measuring, in the document's words.</param>
/// <param name="Scatter">Plus-minus fraction of the mean.</param>
public sealed record PreloadUncertainty(string Method, double Scatter)
{
    /// <summary>The rows of the document.</summary>
    public static IReadOnlyList<PreloadUncertainty> Published { get; } =
    [
        new("unlubricated torque", 0.35),
        new("cadmium plated torque", 0.30),
        new("lubricated torque", 0.25),
        new("hydraulic tensioner", 0.15),
        new("indicating washer", 0.10),
        new("ultrasonic", 0.10),
        new("elongation", 0.05),
    ];

    /// <summary>alpha_A of this scatter.</summary>
    public double TighteningFactor => Fasteners.TighteningFactor.FromScatter(Scatter);
}
