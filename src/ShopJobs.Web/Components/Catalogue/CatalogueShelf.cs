using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Bench;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Catalogue;

/// <summary>Lists every page of the app, each in the states that something in this shop is in. A new page adds its line.</summary>
public sealed class CatalogueShelf(IDbContextFactory<ShopDbContext> database, CarDesk desk, WhoIsHere who)
{
    private const string Doors = "Doors", Shop = "The shop", People = "People and places", OneCar = "One car", Jobs = "Jobs and parts", Procedures = "Procedures",
        Tools = "Torque tools and instruments", Bench = "Bench", Odd = "When something is wrong";

    /// <summary>Every page by feature, in order.</summary>
    public async Task<IReadOnlyList<CatalogueEntry>> ReadAsync()
    {
        await using var shop = await database.CreateDbContextAsync();
        var person = (await who.LookingAsync())?.Person;
        var cars = await shop.Cars.AsNoTracking().OrderBy(car => car.Name).ToListAsync();
        var readings = desk.ReadAll(cars.Select(car => car.Id), person);
        var customer = await FirstAsync(shop.Customers.OrderBy(one => one.Name).Select(one => one.Id), id => $"/customers/{id.Value}");
        return
        [
            new(Doors, "/start", "First start; leads to the floor once the shop is open", "/start"),
            new(Doors, "/enrol", "A tablet nobody knows", "/enrol"),
            new(Doors, "/sign-in", "Who works here now", "/sign-in"),
            new(Shop, "/", "Floor", "/"),
            new(Shop, "/my-work", "My work", "/my-work"),
            new(Shop, "/open-joints", "Not finished", "/open-joints"),
            new(Shop, "/clock", "The time", "/clock"),
            new(Shop, "/shop/logbook", "The shop's own logbook", "/shop/logbook"),
            new(Shop, "/my-pin", "A new PIN", "/my-pin"),
            new(Shop, "/cars", "Cars and customers", "/cars"),
            new(Shop, "/cars/new", "A new car", "/cars/new"),
            new(Shop, "/customers/new", "A new customer", "/customers/new"),
            new(Shop, "/customers/{Id:guid}", "A customer", customer),
            new(Shop, "/customers/{Id:guid}/data", "What is kept of a customer", customer is null ? null : customer + "/data"),
            .. cars.Zip(readings).SelectMany(one => OfCar(one.First, one.Second)),
            .. One(cars.Zip(readings).SelectMany(one => OfJobs(one.First, one.Second))),
            .. await OptionsAsync(shop),
            new(Jobs, "/parts", "Parts", "/parts"),
            new(Jobs, "/parts/new", "A new part", "/parts/new"),
            new(Jobs, "/parts/{Id:guid}", "A part", await FirstAsync(shop.Parts.OrderBy(part => part.Key).Select(part => part.Id), id => $"/parts/{id.Value}")),
            new(Jobs, "/parts/import", "Parts from a file", "/parts/import"),
            new(Procedures, "/procedures", "Procedures", "/procedures"),
            new(Procedures, "/procedures/upload", "Take one in", "/procedures/upload"),
            .. (await shop.Procedures.AsNoTracking().OrderBy(row => row.Code).Select(row => new { row.Code, row.Digest }).ToListAsync())
                .Select(row => new CatalogueEntry(Procedures, "/procedures/{Digest:length(64)}", row.Code, $"/procedures/{row.Digest}")),
            .. OfTools(readings),
            new(People, "/people", "People and places", "/people"),
            new(People, "/people/new", "Somebody new", "/people/new"),
            new(People, "/people/{Id:guid}", "A person", await FirstAsync(shop.People.OrderBy(one => one.Name).Select(one => one.Id), id => $"/people/{id.Value}")),
            new(People, "/people/places/new", "A new place", "/people/places/new"),
            new(People, "/people/places/{Key}", "A place", await FirstAsync(shop.Places.OrderBy(place => place.Key).Select(place => place.Key), key => $"/people/places/{key}")),
            new(Bench, "/bench", "Bench", "/bench"),
            .. BenchCards.Groups.SelectMany(group => group.Cards).Select(card => new CatalogueEntry(Bench, "/bench/{Key}", card.Key, BenchAddress.Of(card))),
            new(Odd, "/not-found", "No such page", "/not-found"),
            new(Odd, "/not-allowed", "A right that is missing", "/not-allowed"),
            new(Odd, "/error", "The page broke", "/error"),
            new(Odd, "/cars/{Id:guid}", "A car that is not there", $"/cars/{Guid.Empty}"),
        ];
    }

    private static IEnumerable<CatalogueEntry> OfCar(Car car, CarReading reading)
    {
        var own = $"/cars/{car.Id.Value}";
        CatalogueEntry At(string rest, string state) => new(OneCar, "/cars/{Id:guid}" + rest, $"{car.Name}: {state}", own + rest);
        yield return At("", "the car");
        yield return At("/change", "its description");
        yield return At("/visit", "in the shop");
        yield return At("/as-found", "as it was found");
        yield return At("/photos", "photographs");
        yield return At("/joints", "its joints");
        yield return At("/results", "measured");
        yield return At("/release", "release");
        yield return At("/re-torque", "re-torque");
        yield return At("/summary", "summary");
        yield return new(OneCar, "/cars/{CarId:guid}/logbook", $"{car.Name}: logbook", own + "/logbook");
        yield return At("/held", "everything held");
        var held = reading.State.Positions.Values.Where(book => !book.Holds.IsEmpty).Select(book => (JointPosition?)book.Position).FirstOrDefault();
        yield return new(OneCar, "/cars/{Id:guid}/held/{Key}/{Place}/{Number:int}", $"{car.Name}: one held", held is { } at ? Links.Held(car.Id, at) : null);
        var work = reading.State.UndecidedWork().Select(hold => (long?)hold.Number).FirstOrDefault();
        yield return new(OneCar, "/cars/{Id:guid}/held-work/{Number:long}", $"{car.Name}: a step held", work is { } number ? Links.HeldWork(car.Id, number) : null);
        yield return new(OneCar, "/cars/{Id:guid}/summary/{Number:int}", $"{car.Name}: issued", reading.State.Summaries.IsEmpty ? null : own + "/summary/1");
    }

    // Every step by what its screen shows: the first of each kind in the shop is enough.
    private static IEnumerable<CatalogueEntry> OfJobs(Car car, CarReading reading) =>
        from job in reading.State.Jobs.Values
        let placed = reading.Placed(job)
        from step in placed.Steps
        let shows = reading.State.StandingOf(job, placed, step) is StepStanding.Signed ? "signed"
            : reading.HoldsBeforeStart(job, step).Count > 0 ? "waits"
            : $"next is {reading.State.NextOn(reading.Now, job, placed, step).GetType().Name}{(step.Work.Count == 0 ? ", no joint" : "")}"
        select new CatalogueEntry(Jobs, "/cars/{Car:guid}/jobs/{Job:guid}/steps/{Step}", $"Step: {shows}", Links.Step(car.Id, job.Id, step.Id));

    private static IEnumerable<CatalogueEntry> One(IEnumerable<CatalogueEntry> entries) => entries.DistinctBy(entry => entry.State);

    private static async Task<IEnumerable<CatalogueEntry>> OptionsAsync(ShopDbContext shop)
    {
        var option = await shop.PartOptions.AsNoTracking().OrderBy(row => row.Name).FirstOrDefaultAsync();
        var jobs = shop.Jobs.AsNoTracking().OrderBy(row => row.StartedAt);
        var job = option is { JobId: var chosen } ? await jobs.SingleAsync(row => row.Id == chosen) : await jobs.FirstOrDefaultAsync();
        var stack = await shop.WheelStacks.AsNoTracking().OrderBy(row => row.Name).FirstOrDefaultAsync();
        var options = job is null || option is null ? null : Links.Options(job.CarId, job.Id, option.GroupId);
        const string Route = "/cars/{Id:guid}/jobs/{Job:guid}/options/{Group}";
        return
        [
            new(Jobs, Route, "Options side by side", options),
            new(Jobs, Route + "/new", "A new option", options is null ? null : options + "/new"),
            new(Jobs, Route + "/{Option:guid}", "An option", options is null ? null : $"{options}/{option!.Id.Value}"),
            new(Jobs, Route + "/stacks/new", "A new wheel stack", options is null ? null : options + "/stacks/new"),
            new(Jobs, Route + "/stacks/{Stack:guid}", "A wheel stack", options is null || stack is null ? null : $"{options}/stacks/{stack.Id}"),
            new(Jobs, "/cars/{Id:guid}/jobs/{Job:guid}/card", "A job card to print", job is null ? null : Links.Card(job.CarId, job.Id)),
            new(Jobs, "/cars/{Id:guid}/jobs/{Job:guid}/card/enter", "A job card is entered", job is null ? null : $"{Links.Card(job.CarId, job.Id)}/enter"),
            new(Jobs, "/cars/{Id:guid}/jobs/{Job:guid}/revision", "A newer revision", job is null ? null : Links.Revision(job.CarId, job.Id)),
        ];
    }

    private static IEnumerable<CatalogueEntry> OfTools(IReadOnlyList<CarReading> readings)
    {
        var day = readings is [var reading, ..] ? reading.Now.DayShown : default;
        var all = readings is [var first, ..] ? first.Tools : new Dictionary<ToolId, ToolState>();
        yield return new(Tools, "/tools", "Torque tools", "/tools");
        yield return new(Tools, "/tools/labels", "Labels of every tool", "/tools/labels");
        yield return new(Tools, "/tools/new", "A new tool", "/tools/new");
        foreach (var (id, state) in all.Where(tool => tool.Value.Instrument is null).DistinctBy(tool => tool.Value.StandingOn(day).Use))
        {
            yield return new(Tools, "/tools/{Id:guid}", $"A tool: {state.StandingOn(day).Words}", $"/tools/{id.Value}");
        }

        var tool = all.Where(one => one.Value.Instrument is null).Select(one => $"/tools/{one.Key.Value}").FirstOrDefault();
        yield return new(Tools, "/tools/{Id:guid}/change", "Its description", tool is null ? null : tool + "/change");
        yield return new(Tools, "/tools/{Id:guid}/label", "A tool's label", tool is null ? null : tool + "/label");
        yield return new(Tools, "/tools/{Id:guid}/calibrate", "A calibration", tool is null ? null : tool + "/calibrate");
        yield return new(Tools, "/tools/{ToolId:guid}/logbook", "A tool's logbook", tool is null ? null : tool + "/logbook");
        yield return new(Tools, "/instruments", "Instruments", "/instruments");
        foreach (var (id, state) in all.Where(tool => tool.Value.Instrument is not null).DistinctBy(tool => tool.Value.StandingOn(day).Use))
        {
            yield return new(Tools, "/instruments/{Id:guid}", $"An instrument: {state.StandingOn(day).Words}", $"/instruments/{id.Value}");
        }
    }

    private static async Task<string?> FirstAsync<T>(IQueryable<T> rows, Func<T, string> address) => await rows.Take(1).ToListAsync() is [var first] ? address(first) : null;
}
