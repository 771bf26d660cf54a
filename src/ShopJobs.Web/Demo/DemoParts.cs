using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Demo;

/// <summary>
/// Three invented stud kits for a demo car's wheel studs: one too long for its closed nut, one whose maker states no strength, and
/// the one that is chosen. Entered by the desks; what is there already is left alone.
/// </summary>
internal sealed class DemoParts(PartShelf shelf, PartDesk desk, StackDesk stacks, CarDesk cars)
{
    private const string Group = "stud";
    private const string Why = "Fits front and rear with room in the closed nut, and this procedure was written from its leaflet.";

    /// <summary>Enters wheel stacks and kits, and chooses one.</summary>
    public async Task EnterAsync(CarId car, JobId job)
    {
        var on = new GroupOfJob(car, job, Group);
        var known = await ReadAsync(on);
        foreach (var stack in Stacks(car).Where(stack => known.Stacks.All(row => row.Id != stack.Id)))
        {
            Expect(await stacks.SaveAsync(car, stack));
        }

        foreach (var kit in Kits(car).Where(kit => known.Options.All(row => row.Id != kit.Id)))
        {
            Expect(await desk.SaveAsync(on, kit));
        }

        known = await ReadAsync(on);
        if (known.Chosen is null)
        {
            Expect(await desk.ChooseAsync(on, Kits(car)[0].Id, known, Why));
        }
    }

    private async Task<PartsOnJob> ReadAsync(GroupOfJob on) => await shelf.ReadAsync(cars.Read(on.Car, null), on.Job, on.Group)
        ?? throw new InvalidOperationException("The demo shop's wheel studs are not on their job.");

    private static IReadOnlyList<StackForm> Stacks(CarId car) => [Stack(car, "front", disc: "7", spacer: "0"), Stack(car, "rear", disc: "6", spacer: "5")];

    private static StackForm Stack(CarId car, string name, string disc, string spacer) => new()
    {
        Id = DemoTablet.Numbered(car, $"wheel stack {name}"),
        Name = name,
        HubFlange = "0",
        DiscHat = disc,
        Spacer = spacer,
        WheelPad = "14",
        Washer = "0",
        WheelSeat = "cone 60°",
        NutSeat = "cone 60°",
        NutThread = "20",
        NutEnd = "24",
        NutClass = "12",
    };

    private static IReadOnlyList<OptionForm> Kits(CarId car) =>
    [
        Kit(car, "Q4", "Quillon Q4 leaflet, rev. 3, side 1", "12.9", "42 mm", "60 to 95 N·m", "90 N·m", "84.50 EUR"),
        Kit(car, "Q4 long", "Quillon Q4 leaflet, rev. 3, side 1", "12.9", "48 mm", "60 to 95 N·m", "90 N·m", "88.00 EUR"),
        Kit(car, "Q2", "Quillon Q2 bag label, no revision", null, "40 mm", "65 to 75 N·m", "85 N·m", "52.00 EUR"),
    ];

    private static OptionForm Kit(CarId car, string name, string source, string? strength, string length, string torque, string jam, string price)
    {
        var form = new OptionForm
        {
            Id = new PartOptionId(DemoTablet.Numbered(car, $"stud kit {name}")),
            Maker = "Quillon",
            Name = name,
            Source = source,
            Evidence = StrengthEvidence.SaidOnly,
        };
        Say(OptionProperty.Thread, "M12x1.5");
        Say(OptionProperty.Strength, strength);
        Say(OptionProperty.Length, length);
        Say(OptionProperty.Seat, "flat");
        Say(OptionProperty.Torque, torque);
        Say(OptionProperty.Jam, jam);
        Say(OptionProperty.Condition, "PreAppliedLocker");
        Say(OptionProperty.Pieces, "10");
        Say(OptionProperty.Price, price);
        return form;

        void Say(OptionProperty property, string? text) =>
            (form.Values[property].Text, form.Values[property].NotStated) = (text ?? "", text is null);
    }

    private static void Expect(string? refusal)
    {
        if (refusal is not null)
        {
            throw new InvalidOperationException($"The demo shop could not enter its stud kits: {refusal}");
        }
    }
}
