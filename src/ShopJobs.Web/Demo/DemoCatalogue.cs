using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Demo;

/// <summary>A dozen invented parts, one of them out of use, entered by the desk. What is there already is left alone.</summary>
internal sealed class DemoCatalogue(PartCatalogueShelf shelf, PartCatalogueDesk desk)
{
    private const string OutOfUse = "OB-20";

    private static IReadOnlyList<PartForm> Parts =>
    [
        Part("Quillon", "Q4-1242", "Wheel stud 42 mm", "wheel.stud", "M12x1.5", "12.9", "8.45", singleUse: true),
        Part("Quillon", "QN-60", "Wheel nut, cone 60°", "wheel.nut", "M12x1.5", "", "3.20"),
        Part("Brackholm", "BC-1435", "Caliper carrier bolt 35 mm", "brake.carrier", "M14x1.5", "10.9", "4.90", singleUse: true),
        Part("Brackholm", "BJ-10", "Banjo bolt with two washers", "brake.banjo", "M10x1", "", "6.75", singleUse: true),
        Part("Brackholm", "BP-220F", "Front pads, track compound", "", "", "", "184.00"),
        Part("Tarnwick", "T-220F", "Front damper with spring perch", "", "", "", "642.50"),
        Part("Tarnwick", "TN-12", "Strut top nut, self-locking", "front-strut.top-nut", "M12x1.5", "", "2.95", singleUse: true),
        Part("Orrinby", "OB-22", "Front bar 22 mm", "", "", "", "268.00"),
        Part("Orrinby", OutOfUse, "Front bar 20 mm", "", "", "", "249.00"),
        Part("Orrinby", "OS-1030", "Bar saddle bolt 30 mm", "front-bar.saddle", "M10x1.5", "8.8", "1.10"),
        Part("Grenlow", "GC-0825", "Clutch cover bolt 25 mm", "clutch.cover", "M8x1.25", "10.9", "1.85", singleUse: true),
        Part("Norrask", "NS-0820", "Seat base bolt 20 mm", "seat.base", "M8x1.25", "8.8", "0.95"),
    ];

    /// <summary>Enters those that are not there.</summary>
    public async Task EnterAsync()
    {
        var known = (await shelf.AllAsync()).Select(part => part.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var part in Parts.Where(part => !known.Contains(PartRow.KeyOf(part.Maker, part.Number))))
        {
            Expect((await desk.SaveAsync(part))?.Words);
        }

        var old = (await shelf.AllAsync()).Single(part => part.Number == OutOfUse);
        if (old.RetiredAt is null)
        {
            Expect(await desk.RetireAsync(old.Id, old.Revision, retired: true));
        }
    }

    private static PartForm Part(string maker, string number, string name, string fills, string thread, string strength, string price, bool singleUse = false) => new()
    {
        Maker = maker,
        Number = number,
        Name = name,
        Fills = fills,
        Thread = thread,
        Strength = strength,
        SingleUse = singleUse,
        Price = price,
        Currency = "EUR",
    };

    private static void Expect(string? refusal)
    {
        if (refusal is not null)
        {
            throw new InvalidOperationException($"The demo shop could not enter its parts: {refusal}");
        }
    }
}
