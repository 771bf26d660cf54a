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
    IDbContextFactory<ShopDbContext> database, CarDesk desk, WhoIsHere who, PeopleBook people)
{
    /// <summary>The step as it stands now; null when there is no such car, job or step, or nobody is signed in.</summary>
    public async Task<StepScene?> SceneAsync(CarId car, JobId job, string step, CancellationToken cancellation = default)
    {
        if (await who.LookingAsync(cancellation) is not { } here)
        {
            return null;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var row = await shop.Cars.AsNoTracking().SingleOrDefaultAsync(candidate => candidate.Id == car, cancellation);
        var reading = desk.Read(car, here.Person);
        return row is not null && reading.State.Jobs.TryGetValue(job, out var book) && reading.Placed(book).Step(step) is { } instance
            ? new StepScene(row, reading, book, instance, here, await people.NamesAsync(cancellation))
            : null;
    }

    /// <summary>Everybody who works here but this person.</summary>
    public async Task<IReadOnlyList<PeopleBook.Named>> OthersAsync(PersonId person, CancellationToken cancellation = default) =>
        [.. (await people.WithRightAsync(null, cancellation)).Where(one => one.Id != person)];

    /// <summary>Runs a command nobody signs; <paramref name="reason"/> is kept outside the entry.</summary>
    /// <param name="command">The command, given the digest of the reason.</param>
    public async Task<DeskAnswer> RunAsync(
        CarId car, CommandId id, string reason, Func<ContentDigest, Command> command, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(command);
        var content = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return await RunAsync(car, id, command(content.Digest), [content], cancellation);
    }

    /// <summary>Runs a command nobody signs and that names no text.</summary>
    public Task<DeskAnswer> RunAsync(CarId car, CommandId id, Command command, CancellationToken cancellation = default) =>
        RunAsync(car, id, command, [], cancellation);

    /// <summary>Runs a command somebody signed for this screen.</summary>
    /// <param name="shown">Digest of what was shown.</param>
    /// <param name="finding">A text the command names by digest; null when there is none.</param>
    public Task<DeskAnswer> SignAsync(
        CarId car, SignatureProof proof, byte[] shown, string? finding, Func<string, ContentDigest?, Command> command,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(command);
        var hex = Convert.ToHexStringLower(shown);
        var content = finding is null ? null : NewContent.Of(Encoding.UTF8.GetBytes(finding));
        return desk.SignAsync(car, proof, hex, command(hex, content?.Digest), content is null ? [] : [content], cancellation);
    }

    private async Task<DeskAnswer> RunAsync(
        CarId car, CommandId id, Command command, IReadOnlyList<NewContent> contents, CancellationToken cancellation) =>
        await who.ActingAsync(cancellation) is { } here
            ? await desk.RunAsync(car, id, here, command, contents, cancellation: cancellation)
            : DeskAnswer.Failed("Not saved: this tablet is locked. Sign in again, then do it again.");
}
