using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>How the turned part (head or nut) bears on the clamped part. A closed family: flat, cone, ball.</summary>
public abstract record Seat
{
    private protected Seat()
    {
    }

    /// <summary>
    /// The lever on which friction of the seat acts, so that its torque is mu_b F arm; false with the reason in words where
    /// the seat is not covered.
    /// </summary>
    public abstract bool TryBearingArm(out Length arm, [NotNullWhen(false)] out string? reason);

    private protected static Length Above(Length value, Length limit, string name) =>
        value > limit && double.IsFinite(value.Millimeters)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"Must be above {limit.Millimeters} mm."));
}

/// <summary>A flat face. Arm = Dkm/2 with Dkm = (head bearing diameter + clearance hole)/2 (VDI 2230).</summary>
public sealed record FlatSeat(Length HeadDiameter, Length HoleDiameter) : Seat
{
    /// <summary>Outer diameter of the bearing face; larger than the hole.</summary>
    public Length HeadDiameter { get; } = Above(HeadDiameter, HoleDiameter, nameof(HeadDiameter));

    /// <summary>Diameter of the clearance hole; above zero.</summary>
    public Length HoleDiameter { get; } = Above(HoleDiameter, Length.Zero, nameof(HoleDiameter));

    /// <inheritdoc/>
    public override bool TryBearingArm(out Length arm, [NotNullWhen(false)] out string? reason)
    {
        arm = (HeadDiameter + HoleDiameter) / 4;
        reason = null;
        return true;
    }
}

/// <summary>
/// A conical face of the given included angle (30 to 170 degrees; wheel nuts commonly 60). The wedge raises the normal force:
/// arm = Dm/2 / sin(half the included angle), from memory of the cone-clutch form.
/// </summary>
public sealed record ConeSeat(Angle IncludedAngle, Length MeanDiameter) : Seat
{
    /// <summary>Full angle of the cone.</summary>
    public Angle IncludedAngle { get; } = IncludedAngle.Degrees is >= 30 and <= 170
        ? IncludedAngle
        : throw new ArgumentOutOfRangeException(nameof(IncludedAngle), IncludedAngle, "Must be from 30 to 170 degrees.");

    /// <summary>Mean diameter of the contact ring; above zero.</summary>
    public Length MeanDiameter { get; } = Above(MeanDiameter, Length.Zero, nameof(MeanDiameter));

    /// <inheritdoc/>
    public override bool TryBearingArm(out Length arm, [NotNullWhen(false)] out string? reason)
    {
        arm = MeanDiameter / 2 / Math.Sin(IncludedAngle.Radians / 2);
        reason = null;
        return true;
    }
}

/// <summary>A ball (radius) face. Where the ring of contact lies depends on both parts, so its friction is not computed.</summary>
public sealed record BallSeat(Length Radius, Length MeanDiameter) : Seat
{
    /// <summary>Radius of the ball; above zero.</summary>
    public Length Radius { get; } = Above(Radius, Length.Zero, nameof(Radius));

    /// <summary>Mean diameter of the contact ring; above zero.</summary>
    public Length MeanDiameter { get; } = Above(MeanDiameter, Length.Zero, nameof(MeanDiameter));

    /// <inheritdoc/>
    public override bool TryBearingArm(out Length arm, [NotNullWhen(false)] out string? reason)
    {
        arm = default;
        reason = "a ball seat is not covered: where nut and wheel touch depends on both parts";
        return false;
    }
}
