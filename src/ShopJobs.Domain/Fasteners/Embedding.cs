using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Embedding: faces flatten under load and the clamp load falls by F_Z = f_Z/(deltaS + deltaP). Short stiff joints lose most; each
/// added face (spacer, washer, paint) adds its own.
/// </summary>
public static class Embedding
{
    /// <summary>
    /// Guide values of f_Z in micrometres for thread, head or nut face, and inner face: VDI 2230-1 table 5, from memory: check
    /// before relying on them.
    /// </summary>
    public static (double Thread, double HeadOrNut, double Inner) Guide(FaceRoughness roughness, bool underShear) => (roughness, underShear) switch
    {
        (FaceRoughness.Fine, false) => (3, 2.5, 1.5),
        (FaceRoughness.Medium, false) => (3, 3, 2),
        (FaceRoughness.Coarse, false) => (3, 4, 3),
        (FaceRoughness.Fine, true) => (3, 3, 2),
        (FaceRoughness.Medium, true) => (3, 4.5, 2.5),
        (FaceRoughness.Coarse, true) => (3, 6.5, 3.5),
        _ => throw new ArgumentOutOfRangeException(nameof(roughness), roughness, "Not a roughness of the table."),
    };

    /// <summary>
    /// f_Z of a joint: one thread, <paramref name="headsAndNuts"/> (1 for a stud or a bolt in a tapped hole, 2 with a nut) and
    /// <paramref name="innerFaces"/> between the clamped parts.
    /// </summary>
    public static Length Settling(FaceRoughness roughness, bool underShear, int headsAndNuts, int innerFaces)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(headsAndNuts, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(innerFaces);
        var (thread, head, inner) = Guide(roughness, underShear);
        return Length.FromMicrometers(thread + (headsAndNuts * head) + (innerFaces * inner));
    }

    /// <summary>F_Z = f_Z/(deltaS + deltaP), clamp load lost.</summary>
    public static Force Loss(Length settling, Resilience resilience)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(settling.Millimeters, nameof(settling));
        return Force.FromNewtons(settling.Millimeters / resilience.Sum);
    }
}
