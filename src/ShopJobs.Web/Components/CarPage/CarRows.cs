using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Somebody on a job or a step, and what else that person is on.</summary>
/// <param name="Elsewhere">Other cars and jobs, in words.</param>
public sealed record AssignedPerson(Assignment Assignment, string Name, string Initials, IReadOnlyList<string> Elsewhere);

/// <summary>The ordinary rows behind a car's page.</summary>
public sealed class CarRows(IDbContextFactory<ShopDbContext> database, CarDesk desk)
{
    public async Task<Car?> FindAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Cars.AsNoTracking().Include(row => row.Customer).FirstOrDefaultAsync(row => row.Id == car, cancellation);
    }

    /// <summary>The jobs of a car, by id.</summary>
    public async Task<IReadOnlyDictionary<JobId, Job>> JobsAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Jobs.AsNoTracking().Where(job => job.CarId == car).ToDictionaryAsync(job => job.Id, cancellation);
    }

    /// <summary>Who is on the running jobs of a car now.</summary>
    public async Task<IReadOnlyList<AssignedPerson>> AssignedAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var running = await (
            from assignment in shop.Assignments.AsNoTracking()
            where assignment.To == null
            join job in shop.Jobs on assignment.JobId equals job.Id
            join row in shop.Cars on job.CarId equals row.Id
            join person in shop.People on assignment.PersonId equals person.Id
            orderby person.Name
            select new { Assignment = assignment, job.CarId, Where = row.Name + ": " + job.Title, person.Name, person.Initials })
            .ToListAsync(cancellation);
        var atWork = Running(running.Select(row => row.CarId));
        running = [.. running.Where(row => atWork.Contains(row.Assignment.JobId))];
        return
        [
            .. running.Where(row => row.CarId == car).Select(row => new AssignedPerson(
                row.Assignment,
                row.Name,
                row.Initials,
                [.. running.Where(other => other.Assignment.PersonId == row.Assignment.PersonId && other.CarId != car).Select(other => other.Where).Distinct()])),
        ];
    }

    /// <summary>What everybody who works here is on now, in words, by person.</summary>
    public async Task<IReadOnlyDictionary<PersonId, string>> OnNowAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var rows = await (
            from assignment in shop.Assignments.AsNoTracking()
            where assignment.To == null
            join job in shop.Jobs on assignment.JobId equals job.Id
            join row in shop.Cars on job.CarId equals row.Id
            select new { assignment.PersonId, assignment.JobId, job.CarId, row.Name })
            .ToListAsync(cancellation);
        var atWork = Running(rows.Select(row => row.CarId));
        return rows.Where(row => atWork.Contains(row.JobId)).GroupBy(row => row.PersonId)
            .ToDictionary(person => person.Key, person => string.Join(", ", person.Select(row => row.Name).Distinct().Order(StringComparer.Ordinal)));
    }

    // A job's end is in its car's logbook; whoever was on it then is on it no more.
    private HashSet<JobId> Running(IEnumerable<CarId> cars) =>
        [.. desk.ReadAll(cars.Distinct(), null).SelectMany(reading => reading.State.RunningJobs).Select(job => job.Id)];

    /// <summary>The newest revision of each procedure that goes on cars; retired ones are left out.</summary>
    public async Task<IReadOnlyList<ProcedureRevision>> ProceduresAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var all = await shop.Procedures.AsNoTracking().ToListAsync(cancellation);
        return
        [
            .. all.GroupBy(procedure => procedure.Code).Select(same => same.MaxBy(procedure => procedure.CurrentSince)!)
                .Where(procedure => procedure.RetiredAt is null)
                .OrderBy(procedure => procedure.Code, CodeOrder.Natural),
        ];
    }
}
