using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Data.Parts;
using UnitsNet;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Rows read back as what the domain compares. They were checked before they were stored: a text that reads no more is corrupt data.</summary>
internal static class StoredParts
{
    /// <summary>An option.</summary>
    public static PartOption Option(OptionRow row) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Maker = row.Maker,
        Thread = Read<ThreadSize>(row, OptionProperty.Thread, ThreadSize.TryParse),
        Strength = Read<StrengthClass>(row, OptionProperty.Strength, StrengthClass.TryParse) is { } strength
            ? new(new StrengthClaim(strength.Value, row.Evidence), strength.Source)
            : null,
        Length = Read<Length>(row, OptionProperty.Length, PartText.Length),
        Seat = Read<SeatForm>(row, OptionProperty.Seat, PartText.Seat),
        Torque = Read<TorqueRange>(row, OptionProperty.Torque, PartText.TorqueRange),
        Jam = Read<EnteredTorque>(row, OptionProperty.Jam, PartText.Torque),
        Condition = Read<ThreadCondition>(row, OptionProperty.Condition, PartText.Condition),
        Nut = !row.OwnNut ? null : new KitNut
        {
            Seat = Read<SeatForm>(row, OptionProperty.NutSeat, PartText.Seat),
            Thread = Read<Length>(row, OptionProperty.NutThread, PartText.Length),
            End = Read<NutEnd>(row, OptionProperty.NutEnd, PartText.NutEnd),
            Class = Read<NutClass>(row, OptionProperty.NutClass, PartText.NutClass),
        },
        Pieces = Read<int>(row, OptionProperty.Pieces, PartText.Pieces),
        Price = Read<Price>(row, OptionProperty.Price, PartText.Price),
    };

    /// <summary>A wheel stack.</summary>
    public static WheelStack Stack(WheelStackRow row) => new()
    {
        Name = row.Name,
        HubFlange = Must<Length>(row.HubFlange, PartText.LengthOrNone),
        DiscHat = Must<Length>(row.DiscHat, PartText.LengthOrNone),
        Spacer = Must<Length>(row.Spacer, PartText.LengthOrNone),
        WheelPad = Must<Length>(row.WheelPad, PartText.Length),
        Washer = Must<Length>(row.Washer, PartText.LengthOrNone),
        WheelSeat = Must<SeatForm>(row.WheelSeat, PartText.Seat),
        NutSeat = Must<SeatForm>(row.NutSeat, PartText.Seat),
        NutThread = Must<Length>(row.NutThread, PartText.Length),
        NutEnd = new NutEnd(row.ClosedNutDepth is { } depth ? Must<Length>(depth, PartText.Length) : null),
        NutClass = row.NutClass is { } nut ? NutClass.Parse(nut) : null,
    };

    private static Stated<T>? Read<T>(OptionRow row, OptionProperty property, PartReading<T> read)
        where T : notnull =>
        row.Values.Find(value => value.Property == property) is { } stored ? new Stated<T>(Must(stored.Text, read), stored.Source) : null;

    private static T Must<T>(string text, PartReading<T> read) =>
        read(text, out var value, out var problem) ? value : throw new FormatException($"\"{text}\" was stored and reads no more: {problem}");
}
