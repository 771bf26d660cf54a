using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.Parts;

/// <summary>A wheel stack as the lead types it, lengths in mm unless another unit is written.</summary>
public sealed class StackForm
{
    public Guid Id { get; init; } = Guid.NewGuid();

    /// <summary>Revision of the row the form was filled from; empty for a new stack.</summary>
    public Guid Revision { get; init; }

    public string Name { get; set; } = "";

    public string HubFlange { get; set; } = "";

    public string DiscHat { get; set; } = "";

    public string Spacer { get; set; } = "";

    public string WheelPad { get; set; } = "";

    public string Washer { get; set; } = "";

    public string WheelSeat { get; set; } = "";

    public string NutSeat { get; set; } = "";

    public string NutThread { get; set; } = "";

    public string NutEnd { get; set; } = "";

    /// <summary>Empty where none is marked.</summary>
    public string NutClass { get; set; } = "";

    public static StackForm Of(WheelStackRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new StackForm
        {
            Id = row.Id,
            Revision = row.Revision,
            Name = row.Name,
            HubFlange = row.HubFlange,
            DiscHat = row.DiscHat,
            Spacer = row.Spacer,
            WheelPad = row.WheelPad,
            Washer = row.Washer,
            WheelSeat = row.WheelSeat,
            NutSeat = row.NutSeat,
            NutThread = row.NutThread,
            NutEnd = row.ClosedNutDepth ?? "open",
            NutClass = row.NutClass ?? "",
        };
    }
}
