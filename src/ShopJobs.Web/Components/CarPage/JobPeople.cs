using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Who is on a job. Each command returns null, or why not and what to do.</summary>
public sealed class JobPeople(IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopClock clock)
{
    /// <summary>Puts a person on a job, or on one step of it. The lead puts anybody on; everybody may put themselves on.</summary>
    public Task<string?> PutOnAsync(JobId job, string? step, PersonId person, CancellationToken cancellation = default) =>
        ChangeAsync(job, step, person, (shop, running) =>
        {
            if (running is null)
            {
                shop.Assignments.Add(new Assignment { Id = Guid.NewGuid(), JobId = job, StepInstanceId = step, PersonId = person, From = clock.Now });
            }
        }, cancellation);

    /// <summary>Takes a person off again; the row stays as history.</summary>
    public Task<string?> TakeOffAsync(JobId job, string? step, PersonId person, CancellationToken cancellation = default) =>
        ChangeAsync(job, step, person, (_, running) =>
        {
            if (running is not null)
            {
                running.To = clock.Now;
            }
        }, cancellation);

    private async Task<string?> ChangeAsync(
        JobId job, string? step, PersonId person, Action<ShopDbContext, Assignment?> change, CancellationToken cancellation)
    {
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return "This tablet is locked. Sign in again, then do it once more.";
        }

        if (!present.May(Right.Lead) && (present.Person != person || !(present.May(Right.Record) || present.May(Right.Trainee))))
        {
            return "The lead puts people on jobs; you may put yourself on. Ask the lead.";
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
        change(shop, await shop.Assignments.FirstOrDefaultAsync(
            row => row.JobId == job && row.StepInstanceId == step && row.PersonId == person && row.To == null, cancellation));
        await shop.SaveChangesAsync(cancellation);
        await locked.CommitAsync(cancellation);
        return null;
    }
}
