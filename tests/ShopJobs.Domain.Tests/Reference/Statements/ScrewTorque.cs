using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>
/// The screw-jack form of torque and clamp load in Shigley's Mechanical Engineering Design: mean diameter dm = (d + dr)/2, exact lead angle,
/// flank of 30 degrees, collar at 1.25 d/2. Another convention than the long form, which uses d2 and small angles: about 1 % apart.
/// </summary>
public static class ScrewTorque
{
    /// <summary>
    /// T = F dm/2 (tan l + f sec 30)/(1 - f tan l sec 30) + F fc (1.25 d)/2, l the lead angle, f thread and fc collar friction
    /// (0 to below 1), dr root diameter.
    /// </summary>
    public static Torque For(Force clampLoad, Length nominal, Length pitch, Length root, double threadFriction, double collarFriction)
    {
        var mean = (nominal.Millimeters + root.Millimeters) / 2;
        var lead = pitch.Millimeters / (Math.PI * mean);
        var flank = threadFriction * 2 / Math.Sqrt(3);
        var thread = mean / 2 * (lead + flank) / (1 - (flank * lead));
        return Torque.FromNewtonMeters(clampLoad.Newtons * (thread + (collarFriction * 0.625 * nominal.Millimeters)) / 1000);
    }
}
