using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// deltaP, how far clamped parts of one material give per newton, in mm/N. Under head and nut the pressure spreads as two cones
/// that meet in the middle of the grip; where the parts are narrower than the cones they are a sleeve.
/// </summary>
public static class ClampedParts
{
    /// <summary>Half angle of the pressure cone in Shigley's Mechanical Engineering Design, 30 degrees.</summary>
    public static readonly Angle UsualConeAngle = Angle.FromDegrees(30);

    /// <summary>
    /// Two equal cones of half angle <paramref name="coneAngle"/> (above 0, below 60 degrees) from the bearing diameter dw, over
    /// the grip l, around the hole dh:
    /// delta = 2/(E pi dh tan a) ln[(dw + l tan a - dh)(dw + dh)/((dw + l tan a + dh)(dw - dh))].
    /// </summary>
    public static double Resilience(FlatSeat face, Length grip, Pressure modulus, Angle coneAngle)
    {
        ArgumentNullException.ThrowIfNull(face);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(grip.Millimeters, nameof(grip));
        if (coneAngle.Degrees is not (> 0 and < 60))
        {
            throw new ArgumentOutOfRangeException(nameof(coneAngle), coneAngle, "Must be above 0 and below 60 degrees.");
        }

        var (dw, dh) = (face.HeadDiameter.Millimeters, face.HoleDiameter.Millimeters);
        var tangent = Math.Tan(coneAngle.Radians);
        var widest = dw + (grip.Millimeters * tangent);
        return 2 / (modulus.Megapascals * Math.PI * dh * tangent) * Math.Log((widest - dh) * (dw + dh) / ((widest + dh) * (dw - dh)));
    }

    /// <summary>A sleeve of outer diameter D around the hole: delta = l/(E pi/4 (D^2 - dh^2)).</summary>
    public static double Sleeve(Length outer, Length hole, Length grip, Pressure modulus)
    {
        if (!(outer > hole))
        {
            throw new ArgumentOutOfRangeException(nameof(outer), outer, "A sleeve is wider than its hole.");
        }

        var (wide, narrow) = (outer.Millimeters, hole.Millimeters);
        return grip.Millimeters / (modulus.Megapascals * Math.PI / 4 * ((wide * wide) - (narrow * narrow)));
    }
}
