using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Instruments;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Demo;

/// <summary>
/// Fills the demo shop's book: tools, register, procedures and work on the cars, all by the same commands people give.
/// Everything in it is invented; nothing is written into a logbook past the desks.
/// </summary>
public sealed class DemoWork(
    IDbContextFactory<ShopDbContext> database,
    DemoTablets tablets,
    CarDesk cars,
    ToolDesk tools,
    LogbookSnapshots snapshots,
    Surroundings surroundings,
    ProcedureImport import,
    ProcedureShelf shelf,
    ShopSettings settings,
    ShopClock clock)
{
    /// <summary>Entries that it writes into all logbooks together.</summary>
    public const int Entries = 148;

    private static readonly DemoPeople.DemoPerson Technician = DemoPeople.Chassis;
    private static readonly DemoPeople.DemoPerson Second = DemoPeople.Engines;
    private static readonly CarCondition[] WheelUp = [new("stand", "wheel-up"), new("hub", "held"), new("steering", "straight"), new("engine", "cold")];

    /// <summary>
    /// Works through it, right after the demo shop's people and cars were entered. Broken off and run again, it goes on where it was.
    /// </summary>
    public async Task RunAsync()
    {
        var people = await NamedAsync(shop => shop.People.ToDictionaryAsync(person => person.Name, person => person.Id));
        var carIds = await NamedAsync(shop => shop.Cars.ToDictionaryAsync(car => car.Name, car => car.Id));
        var report = await import.ImportAsync(SeedDocuments.All, people[DemoPeople.Lead.Name]);
        if (!report.IsTaken)
        {
            throw new InvalidOperationException("The demo shop's documents do not load: " + string.Join("; ", report.Documents.Select(document => document.Words)));
        }

        var register = shelf.CurrentRegister()!;
        var procedures = (await shelf.CurrentAsync()).ToDictionary(shelved => shelved.Row.Code);
        var tablet = tablets.Take(people);
        await tablet.SitDownAsync(DemoPeople.Lead);
        var wrenches = await DemoTools.EnterAsync(new ToolShelf(database, snapshots, tools, tablet.Here, clock), tools, tablet, clock);
        await DemoInstruments.EnterAsync(new InstrumentShelf(database, snapshots, tools, surroundings, tablet.Here, clock), tools, tablet, clock);
        var jobs = new DemoJobs(tablet, code => (procedures[code].Document.Value!, procedures[code].Row.Digest), register.Digest, clock.Now);

        var changes = new ShopChange(database, tablet.Here, clock);
        var catalogue = new PartCatalogueShelf(database, shelf);
        await new DemoCatalogue(catalogue, new PartCatalogueDesk(changes, catalogue, settings, clock)).EnterAsync();
        var blue = await jobs.StartAsync(carIds[DemoCars.Blue.Name], "P3", "Studs instead of wheel bolts, before the hill climb.", people[Technician.Name]);
        await new DemoParts(new PartShelf(database), new PartDesk(changes, cars, clock), new StackDesk(changes, clock), cars)
            .EnterAsync(carIds[DemoCars.Blue.Name], blue);
        await jobs.StartAsync(carIds[DemoCars.Blue.Name], "P5", "Track wheels on.", people[Second.Name]);
        await new DemoIntake(tablet, cars, carIds[DemoCars.Blue.Name]).RunAsync(DemoCars.Blue.Place);
        var orange = await jobs.StartAsync(carIds[DemoCars.Orange.Name], "P5", "Change to the wet-weather wheels.", people[Technician.Name]);
        var white = await jobs.StartAsync(carIds[DemoCars.White.Name], "P5", "New tyres fitted; put the wheels back on.", people[Technician.Name]);

        await tablet.SitDownAsync(Technician);
        var wheels = procedures["P5"].Document.Value!;
        await InTheMiddleAsync(new DemoWheels(tablet, cars, carIds[DemoCars.Orange.Name], orange, wheels, Technician, wrenches["W7"]));
        await ToTheRoadAsync(new DemoWheels(tablet, cars, carIds[DemoCars.White.Name], white, wheels, Technician, wrenches["W7"]));
        await tablet.SitDownAsync(DemoPeople.Lead);
        await tablet.SignAsync(carIds[DemoCars.White.Name], DemoPeople.Lead, shown => new Release(ReleaseKind.Road, 48_210, null, shown) { Closing = ClosingCheck.All });
        await SummariseAsync(tablet, carIds[DemoCars.White.Name]);
        await tablet.SitDownAsync(Technician);
        await DemoPhotos.TakeAsync(tablet, carIds[DemoCars.Blue.Name], DemoCars.Blue.Colour);
        await tablet.PutAwayAsync();
    }

    private async Task SummariseAsync(DemoTablet tablet, CarId car)
    {
        if (!cars.Read(car, null).State.Summaries.IsEmpty)
        {
            return;
        }

        var desk = new SummaryDesk(cars, snapshots, database, settings, clock, new ThirdPerson(database));
        var form = desk.NewForm(car);
        form.Contact = "Ninth Bay, 01632 960100 (invented)";
        form.Advice = "Brake fluid is older than two years: change it before the next track day.";
        form.Declined = "A change of the brake fluid with this work: you decided to wait.";
        var draft = (await desk.DraftAsync(car, form, await tablet.PresentAsync()))!;
        var request = draft.ToSign(new CommandId(Guid.NewGuid()));
        var proof = await tablet.ProveAsync(DemoPeople.Lead, request.Command, request.Shown);
        DemoTablet.Expect(await desk.IssueAsync(draft, proof, request.Command, request.Shown), "issue a summary");
    }

    /// <summary>One wheel at its first stage, the next interrupted: its third nut was pulled with the wrench left at the final value.</summary>
    private static async Task InTheMiddleAsync(DemoWheels wheels)
    {
        await wheels.FitAsync("front-left");
        await wheels.StandAsync(["front-left"], WheelUp);
        await wheels.PullAllAsync("front-left", 1);
        await wheels.ConfirmAsync("stage-50", "front-left");
        await wheels.FitAsync("front-right");
        await wheels.StandAsync(["front-right"], WheelUp);
        await wheels.PullAsync("front-right", 1, 2);
        await wheels.PullAsync("front-right", 1, 2, new EnteredTorque(110, TorqueUnit.NewtonMetre));
    }

    /// <summary>Four wheels to the end, witnessed; the re-torque after the drive is still owed.</summary>
    private static async Task ToTheRoadAsync(DemoWheels wheels)
    {
        foreach (var place in DemoWheels.Places)
        {
            await wheels.FitAsync(place);
            await wheels.StandAsync([place], WheelUp);
            await wheels.PullAllAsync(place, 1);
            await wheels.ConfirmAsync("stage-50", place);
        }

        await wheels.StandAsync(DemoWheels.Places, new CarCondition("stand", "tyre-on-ground"));
        await wheels.ConfirmAsync("lower", null);
        foreach (var place in DemoWheels.Places)
        {
            await wheels.PullAllAsync(place, 2);
            await wheels.WitnessAsync(place, 2, Second);
            await wheels.ConfirmAsync("final", place);
        }

        await wheels.StandAsync(DemoWheels.Places, new CarCondition("stand", "on-wheels"), new CarCondition("hub", "free"));
    }

    private async Task<T> NamedAsync<T>(Func<ShopDbContext, Task<T>> ask)
    {
        await using var shop = await database.CreateDbContextAsync();
        return await ask(shop);
    }
}
