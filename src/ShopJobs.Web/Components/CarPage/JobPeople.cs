using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Who is on a job. Each command returns null, or why not and what to do.</summary>
public sealed class JobPeople(ShopChange changes, ShopClock clock)
{
    private const string NotYours = "The lead puts people on jobs; you may put yourself on. Ask the lead.";

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

    private Task<string?> ChangeAsync(
        JobId job, string? step, PersonId person, Action<ShopDbContext, Assignment?> change, CancellationToken cancellation) =>
        changes.RunAsync(
            (by, rights) => rights.Contains(Right.Lead) || (by == person && (rights.Contains(Right.Record) || rights.Contains(Right.Trainee))) ? null : NotYours,
            async (shop, _) =>
            {
                change(shop, await shop.Assignments.FirstOrDefaultAsync(
                    row => row.JobId == job && row.StepInstanceId == step && row.PersonId == person && row.To == null, cancellation));
                return null;
            },
            cancellation);
}
