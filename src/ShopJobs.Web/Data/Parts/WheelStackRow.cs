using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Parts;

/// <summary>A wheel stack as it was measured on a car. Each length is kept as it was entered, number and unit; without a unit it is in mm.</summary>
public sealed class WheelStackRow : TrackedRow
{
    public const int NameLength = 30;
    public const int SeatLength = 20;
    public const int LengthLength = 20;

    public Guid Id { get; init; }

    public CarId CarId { get; init; }

    /// <summary>Where on the car: "front".</summary>
    public required string Name { get; set; }

    public string HubFlange { get; set; } = "0";

    public string DiscHat { get; set; } = "0";

    public string Spacer { get; set; } = "0";

    public required string WheelPad { get; set; }

    public string Washer { get; set; } = "0";

    /// <summary>Form of the seat in the wheel, such as "cone 60°".</summary>
    public required string WheelSeat { get; set; }

    /// <summary>Form of the face of the nut used.</summary>
    public required string NutSeat { get; set; }

    public required string NutThread { get; set; }

    /// <summary>Depth of a closed nut; null for an open one.</summary>
    public string? ClosedNutDepth { get; set; }

    /// <summary>Class marked on the nut; null where none is.</summary>
    public string? NutClass { get; set; }
}
