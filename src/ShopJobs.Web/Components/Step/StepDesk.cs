using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>Gets what the step's screen shows, and runs what is pressed on it.</summary>
public sealed class StepDesk(
    IDbContextFactory<ShopDbContext> database, CarDesk desk, WhoIsHere who, PeopleShelf people)
{
    /// <summary>The step as it is now; null when there is no such car, job or step, or nobody is signed in.</summary>
    public async Task<StepScene?> SceneAsync(CarId car, JobId job, string step, CancellationToken cancellation = default)
    {
        if (await who.LookingAsync(cancellation) is not { } here)
        {
            return null;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var row = await shop.Cars.AsNoTracking().SingleOrDefaultAsync(candidate => candidate.Id == car, cancellation);
        var reading = desk.Read(car, here.Person, here.Session);
        return row is not null && reading.State.Jobs.TryGetValue(job, out var book) && reading.Placed(book).Step(step) is { } instance
            ? new StepScene(row, reading, book, instance, here, await people.NamesAsync(cancellation))
            : null;
    }

    /// <summary>Everybody who works here but this person.</summary>
    public async Task<IReadOnlyList<PeopleShelf.Named>> OthersAsync(PersonId person, CancellationToken cancellation = default) =>
        [.. (await people.WithRightAsync(null, cancellation: cancellation)).Where(one => one.Id != person)];

    /// <summary>Everybody who may decide what is held.</summary>
    public Task<IReadOnlyList<PeopleShelf.Named>> DecidersAsync(CancellationToken cancellation = default) => people.WithRightAsync(Right.Decide, cancellation: cancellation);

    /// <summary>Runs a report without a text.</summary>
    public async Task<DeskAnswer> RunAsync(CarId car, Report report, CancellationToken cancellation = default) =>
        await who.ActingAsync(cancellation) is { } here
            ? await desk.RunAsync(car, new CommandId(Guid.NewGuid()), here, report, cancellation: cancellation)
            : DeskAnswer.Failed(ShopChange.Locked);

    /// <summary>Runs a report; <paramref name="reason"/> is kept outside the entry.</summary>
    /// <param name="command">The report, given the digest of the reason.</param>
    public async Task<DeskAnswer> RunAsync(
        CarId car, CommandId id, string reason, Func<ContentDigest, Report> command, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(command);
        var content = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return await who.ActingAsync(cancellation) is { } here
            ? await desk.RunAsync(car, id, here, command(content.Digest), [content], cancellation: cancellation)
            : DeskAnswer.Failed(ShopChange.Locked);
    }
}
