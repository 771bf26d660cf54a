using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.JobEnds;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Floor;

/// <summary>Reads the whole shop. A car that nothing changed on is not looked over again.</summary>
public sealed class FloorBoard(IDbContextFactory<ShopDbContext> database, CarDesk desk, ToolDesk toolDesk, JobStates states, ShopClock clock)
{
    private readonly ConcurrentDictionary<CarId, (GlanceKey Key, CarGlance Glance)> glances = [];

    /// <summary>Every car of the shop by name, but those that are not coming back.</summary>
    public async Task<FloorScene> ReadAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var cars = await shop.Cars.AsNoTracking().Where(car => car.RetiredAt == null).OrderBy(car => car.Name).ToListAsync(cancellation);
        var people = await PeopleOnAsync(shop, cancellation);
        var readings = desk.ReadAll(cars.Select(car => car.Id), null);
        var tools = readings is [var first, ..] ? first.Tools : toolDesk.ReadAll();
        var inUse = string.Join(',', tools.Values.Select(tool => tool.Number));
        var now = clock.Now;
        var words = await states.OfAsync(readings.Select(reading => reading.State));
        return new FloorScene(
            [
                .. cars.Zip(readings, (car, reading) =>
                    Look(car, reading, [.. people[car.Id].Where(on => reading.State.Jobs.TryGetValue(on.Job, out var job) && job.IsRunning)], inUse, now) with
                    {
                        Resting = [.. reading.State.RunningJobs.Where(job => !job.IsAtWork).Select(job => $"{job.Fact.Procedure}: {words.Of(job)}")],
                    }),
            ],
            [.. tools.Values.Where(tool => tool is { Tool: not null, RetiredBy: 0 })],
            now,
            clock.Today)
        {
            Places = readings is [var one, ..] ? one.Now.Places : ShopPlaces.None,
        };
    }

    private FloorCar Look(Car car, CarReading reading, List<Manned> people, string tools, DateTime now)
    {
        var manned = people.Select(on => (on.Job, on.Step)).ToHashSet();
        // A cure runs out without an entry: a glance is good for a minute.
        var key = new GlanceKey(
            reading.HeadHash, tools, reading.Now.Register, reading.Now.Shop.Number, now.Ticks / TimeSpan.TicksPerMinute,
            string.Join(',', manned.Select(on => $"{on.Job.Value:N}{on.Step}").Order(StringComparer.Ordinal)));
        if (!glances.TryGetValue(car.Id, out var known) || known.Key != key)
        {
            known = (key, CarGlance.Of(
                reading.State, reading.Now, reading.Tools.Values, (job, step) => manned.Contains((job, null)) || manned.Contains((job, step))));
            glances[car.Id] = known;
        }

        return new FloorCar(car, reading, known.Glance, [.. people.Select(on => on.Who).Distinct()])
        {
            IsHere = Whereabouts.Of(car, reading, clock).IsHere,
        };
    }

    private static async Task<ILookup<CarId, Manned>> PeopleOnAsync(ShopDbContext shop, CancellationToken cancellation)
    {
        var rows = await (
            from assignment in shop.Assignments.AsNoTracking()
            where assignment.To == null
            join job in shop.Jobs on assignment.JobId equals job.Id
            join person in shop.People on assignment.PersonId equals person.Id
            orderby person.Name
            select new { job.CarId, job.Id, assignment.StepInstanceId, Person = person.Id, person.Name, person.Initials })
            .ToListAsync(cancellation);
        return rows.ToLookup(row => row.CarId, row => new Manned(row.Id, row.StepInstanceId, new OnIt(row.Person, row.Name, row.Initials)));
    }

    private sealed record Manned(JobId Job, string? Step, OnIt Who);

    private sealed record GlanceKey(string Head, string Tools, JointRegister Register, long Clock, long Minute, string Manned);
}
