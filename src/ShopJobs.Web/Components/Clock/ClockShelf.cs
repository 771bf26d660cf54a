using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Clock;

/// <summary>The shop's clock as it stands, and the cures that wait for it.</summary>
/// <param name="OnTheWall">What the clock shows, in the shop's zone.</param>
/// <param name="Waiting">Empty while the clock is not in doubt.</param>
public sealed record ClockReading(ShopState Shop, DateTime OnTheWall, IReadOnlyList<WaitingCure> Waiting);

/// <summary>A cure that nobody knows the end of before the time is signed.</summary>
public sealed record WaitingCure(CarId Car, JobId Job, string Step, string Words);

/// <summary>Reads the shop's clock for its page.</summary>
public sealed class ClockShelf(IDbContextFactory<ShopDbContext> database, ClockDesk desk, CarDesk cars, ShopClock clock)
{
    /// <summary>The clock now.</summary>
    public async Task<ClockReading> ReadAsync()
    {
        var shop = desk.Read();
        return new ClockReading(shop, clock.OnTheWall(clock.Now), shop.ClockInDoubt ? await WaitingAsync() : []);
    }

    private async Task<IReadOnlyList<WaitingCure>> WaitingAsync()
    {
        await using var shop = await database.CreateDbContextAsync();
        var names = await shop.Cars.AsNoTracking().OrderBy(car => car.Name).Select(car => new { car.Id, car.Name }).ToListAsync();
        return
        [
            .. from row in names.Zip(cars.ReadAll(names.Select(car => car.Id), null))
               let reading = row.Second
               from job in reading.State.RunningJobs
               let placed = reading.Placed(job)
               from step in placed.Steps
               where reading.State.StandingOf(job, placed, step) != StepStanding.Signed
               from point in reading.HoldsBeforeStart(job, step)
               where point is { Reason: HoldReason.Cure, ClockInDoubt: true }
               select new WaitingCure(row.First.Id, job.Id, step.Id, $"{row.First.Name}, {step.Title()}: the cure of {point.Name}"),
        ];
    }
}
