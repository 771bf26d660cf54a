using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Parts;

/// <summary>A wheel stack as it was measured on a car. Lengths in mm.</summary>
public sealed class WheelStackRow : TrackedRow
{
    public const int NameLength = 30;
    public const int SeatLength = 20;

    public Guid Id { get; init; }

    public CarId CarId { get; init; }

    /// <summary>Where on the car: "front".</summary>
    public required string Name { get; set; }

    public decimal HubFlange { get; set; }

    public decimal DiscHat { get; set; }

    public decimal Spacer { get; set; }

    public decimal WheelPad { get; set; }

    public decimal Washer { get; set; }

    /// <summary>Form of the seat in the wheel, such as "cone 60°".</summary>
    public required string WheelSeat { get; set; }

    /// <summary>Form of the face of the nut used.</summary>
    public required string NutSeat { get; set; }

    public decimal NutThread { get; set; }

    /// <summary>Depth of a closed nut; null for an open one.</summary>
    public decimal? ClosedNutDepth { get; set; }

    /// <summary>Class marked on the nut; null where none is.</summary>
    public string? NutClass { get; set; }
}
