using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>How the turned part (head or nut) bears on the clamped part. A closed family: flat, cone, ball.</summary>
public abstract record Seat
{
    private protected Seat()
    {
    }

    /// <summary>
    /// How many times the clamp load presses on the face: 1 on a flat. A cone or ball holds the clamp load on a sloping face, so the
    /// face is pressed harder than the bolt pulls (1/sin of the angle between axis and face; 2 on a 60 degree cone) and friction
    /// under the nut eats the more of the torque: the same reading clamps less.
    /// </summary>
    public abstract double WedgeFactor { get; }

    /// <summary>Diameter at which friction of the seat acts, Dkm.</summary>
    public abstract Length MeanFrictionDiameter { get; }

    /// <summary>The lever on which friction of the seat acts, Dkm/2 x <see cref="WedgeFactor"/>: its torque is mu_b F arm.</summary>
    public Length BearingArm => MeanFrictionDiameter / 2 * WedgeFactor;

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
    public override double WedgeFactor => 1;

    /// <inheritdoc/>
    public override Length MeanFrictionDiameter => (HeadDiameter + HoleDiameter) / 2;
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
    public override double WedgeFactor => 1 / Math.Sin(IncludedAngle.Radians / 2);

    /// <inheritdoc/>
    public override Length MeanFrictionDiameter => MeanDiameter;
}

/// <summary>
/// A ball (radius) face whose centre lies on the axis. At the ring of contact it is a cone touching the ball: with r = half the
/// mean diameter the normal leans from the axis by asin(r/R), so arm = r / sqrt(1 - (r/R)^2). Own statics, no published source.
/// Where the ring lies depends on both parts: its mean diameter is measured on the witness mark, and must be below 2R.
/// </summary>
public sealed record BallSeat(Length Radius, Length MeanDiameter) : Seat
{
    /// <summary>Radius R of the ball; above zero.</summary>
    public Length Radius { get; } = Above(Radius, Length.Zero, nameof(Radius));

    /// <summary>Mean diameter of the contact ring; above zero and below twice the radius.</summary>
    public Length MeanDiameter { get; } = Above(MeanDiameter, Length.Zero, nameof(MeanDiameter)) < Radius * 2
        ? MeanDiameter
        : throw new ArgumentOutOfRangeException(nameof(MeanDiameter), MeanDiameter, "Must be below twice the radius of the ball.");

    /// <inheritdoc/>
    public override double WedgeFactor
    {
        get
        {
            var lean = MeanDiameter / 2 / Radius;
            return 1 / Math.Sqrt(1 - (lean * lean));
        }
    }

    /// <inheritdoc/>
    public override Length MeanFrictionDiameter => MeanDiameter;
}
