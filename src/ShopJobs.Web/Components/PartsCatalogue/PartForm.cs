using System.Globalization;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>A part as it is typed, or as a row of a file says it. The id is made with the form, so sending twice makes one part.</summary>
public sealed class PartForm
{
    public PartId Id { get; init; } = new(Guid.NewGuid());

    /// <summary>Revision of the row the form was filled from; empty for a new part.</summary>
    public Guid Revision { get; set; }

    public string Number { get; set; } = "";

    public string Maker { get; set; } = "";

    public string Name { get; set; } = "";

    /// <summary>Key of a joint kind; empty for none.</summary>
    public string Fills { get; set; } = "";

    /// <summary>The key it had before: it may stay, also where the register has it no more.</summary>
    public string FilledBefore { get; init; } = "";

    public string Thread { get; set; } = "";

    public string Strength { get; set; } = "";

    public bool SingleUse { get; set; }

    public string Price { get; set; } = "";

    public string Currency { get; set; } = "";

    public static PartForm Of(PartRow part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new()
        {
            Id = part.Id,
            Revision = part.Revision,
            Number = part.Number,
            Maker = part.Maker,
            Name = part.Name,
            Fills = part.Fills ?? "",
            FilledBefore = part.Fills ?? "",
            Thread = part.Thread ?? "",
            Strength = part.Strength ?? "",
            SingleUse = part.SingleUse,
            Price = Written(part.Price),
            Currency = part.Currency ?? "",
        };
    }

    /// <summary>A price with two decimals; empty for none.</summary>
    internal static string Written(decimal? price) => price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "";
}
