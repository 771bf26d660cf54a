using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>
/// The form of a face that bears: flat, a cone of an included angle (30 to 170 degrees), a ball of a radius (above 0, up to
/// 100 mm). Two faces match when form and size are the same: a cone in a ball seat holds on an edge.
/// </summary>
public sealed record SeatForm
{
    /// <summary>Largest radius taken for a ball, in mm.</summary>
    public const decimal LargestRadius = 100;

    private SeatForm(string kind, decimal? size)
    {
        Kind = kind;
        Size = size;
    }

    /// <summary>A flat face.</summary>
    public static SeatForm Flat { get; } = new("flat", null);

    /// <summary>"flat", "cone" or "ball".</summary>
    public string Kind { get; }

    /// <summary>Included angle of a cone in degrees, radius of a ball in mm; null for a flat.</summary>
    public decimal? Size { get; }

    /// <summary>A cone of an included angle in degrees.</summary>
    public static SeatForm Cone(decimal includedDegrees) => includedDegrees is >= 30 and <= 170
        ? new("cone", includedDegrees)
        : throw new ArgumentOutOfRangeException(nameof(includedDegrees), includedDegrees, "A cone is from 30 to 170 degrees.");

    /// <summary>A ball of a radius in mm.</summary>
    public static SeatForm Ball(decimal radiusMm) => radiusMm is > 0 and <= LargestRadius
        ? new("ball", radiusMm)
        : throw new ArgumentOutOfRangeException(nameof(radiusMm), radiusMm, "A ball has a radius above 0 and up to 100 mm.");

    /// <summary>The form of a seat whose measures are known.</summary>
    public static SeatForm Of(Seat seat) => seat switch
    {
        FlatSeat => Flat,
        ConeSeat cone => Cone(Math.Round((decimal)cone.IncludedAngle.Degrees, 2)),
        BallSeat ball => Ball(Math.Round((decimal)ball.Radius.Millimeters, 2)),
        _ => throw new ArgumentOutOfRangeException(nameof(seat), seat, "Not a seat."),
    };

    /// <summary>For example "flat", "cone 60°", "ball R14".</summary>
    public override string ToString() => Kind switch
    {
        "cone" => FormattableString.Invariant($"cone {Size:0.##}°"),
        "ball" => FormattableString.Invariant($"ball R{Size:0.##}"),
        _ => Kind,
    };
}
