using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Reads options, wheel stacks and choices.</summary>
public sealed class PartShelf(IDbContextFactory<ShopDbContext> database)
{
    /// <summary>Everything compared for a group of a job on a car; null where the car has no such job, or the group is not covered.</summary>
    public async Task<PartsOnJob?> ReadAsync(CarReading car, JobId job, string group, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await ReadAsync(shop, car, job, group, cancellation);
    }

    /// <summary>The choices that count on a car's jobs, by job and group.</summary>
    public async Task<IReadOnlyDictionary<(JobId Job, string Group), PartChoice>> ChosenAsync(CarId car, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var all = await (
            from choice in shop.PartChoices.AsNoTracking()
            join job in shop.Jobs on choice.JobId equals job.Id
            where job.CarId == car
            select choice).ToListAsync(cancellation);
        return all.GroupBy(choice => (choice.JobId, choice.GroupId)).ToDictionary(same => same.Key, same => same.MaxBy(choice => choice.Number)!);
    }

    internal static async Task<PartsOnJob?> ReadAsync(ShopDbContext shop, CarReading car, JobId job, string group, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (!car.State.Jobs.TryGetValue(job, out var book) || car.Placed(book) is not { } placed
            || placed.Procedure.Groups.FirstOrDefault(known => known.Id == group) is not { } found || !PartsOnJob.Covers(placed, found))
        {
            return null;
        }

        var options = await shop.PartOptions.AsNoTracking().Include(option => option.Values)
            .Where(option => option.JobId == job && option.GroupId == group)
            .OrderBy(option => option.Maker).ThenBy(option => option.Name).ToListAsync(cancellation);
        var stacks = await shop.WheelStacks.AsNoTracking().Where(stack => stack.CarId == car.Car).OrderBy(stack => stack.Name).ToListAsync(cancellation);
        var choices = await shop.PartChoices.AsNoTracking()
            .Where(choice => choice.JobId == job && choice.GroupId == group).OrderByDescending(choice => choice.Number).ToListAsync(cancellation);
        var joint = JointToFill.Of(placed, found, [.. stacks.Select(StoredParts.Stack)]);
        return new PartsOnJob(found, joint, options, stacks, choices, PartComparison.Of(joint, [.. options.Select(StoredParts.Option)]));
    }
}
