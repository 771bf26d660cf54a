using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Names;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>The shop's torque tools: read, entered, taken out of use and doubted.</summary>
public sealed class ToolShelf(
    IDbContextFactory<ShopDbContext> database, LogbookSnapshots snapshots, ToolDesk desk, WhoIsHere here, ShopClock clock)
{
    private static readonly DeskAnswer Locked = DeskAnswer.Failed(ShopChange.Locked);

    /// <summary>Every tool, the one with the least days to calibration first.</summary>
    public IReadOnlyList<ToolLine> All() => snapshots.Read(reader =>
        (IReadOnlyList<ToolLine>)[.. Surroundings.AllTools(reader).Keys.Select(id => Line(reader, id)).OfType<ToolLine>()
            .OrderBy(line => line.Standing.DaysLeft ?? int.MinValue).ThenBy(line => line.Tool.Name, StringComparer.OrdinalIgnoreCase)]);

    /// <summary>One tool; null when there is none of that id.</summary>
    public ToolLine? Find(ToolId id) => snapshots.Read(reader => Line(reader, id));

    /// <summary>Enters a tool or describes it again; its name on the shelf goes with the entry.</summary>
    public async Task<DeskAnswer> SaveAsync(ToolForm form, CancellationToken cancellation = default)
    {
        var tool = new TorqueTool(
            form.Id, Typed.Clean(form.Name), Typed.Clean(form.Serial), form.Kind, form.Unit,
            Typing.Torque(form.LowestMarked, form.Unit, out _)!.Value,
            Typing.Torque(form.Top, form.Unit, out _)!.Value,
            Typing.Torque(form.Graduation, form.Unit, out _)!.Value,
            string.IsNullOrWhiteSpace(form.ClassDeviation) ? null : Typing.Percent(form.ClassDeviation, out _))
        {
            LengthMm = string.IsNullOrWhiteSpace(form.Length) ? null : Typing.Length(form.Length, out _),
            CycleLimit = string.IsNullOrWhiteSpace(form.CycleLimit) ? TorqueTool.StandardCycles : Typing.Cycles(form.CycleLimit, out _)!.Value,
        };
        if (NameRules.WrongLetters(form.Name) is { } wrong)
        {
            return DeskAnswer.Failed(wrong);
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var known = await shop.Tools.AnyAsync(row => row.Id == form.Id.Value, cancellation);
        return await RunAsync(present => desk.RunAsync(
            form.Id, form.Command, present, new EnterTool(tool),
            rows: transaction => ToolRows.Write(transaction, form.Id, tool.Name, known, present.Person, clock.Now),
            cancellation: cancellation), cancellation);
    }

    /// <summary>Takes a tool out of use: a report anybody makes.</summary>
    public Task<DeskAnswer> TakeOutAsync(ToolId id, CommandId command, string why, CancellationToken cancellation = default) =>
        WithReasonAsync(id, command, why, digest => new Quarantine(digest), cancellation);

    /// <summary>Takes a tool out of use for good.</summary>
    public Task<DeskAnswer> RetireAsync(ToolId id, CommandId command, string why, CancellationToken cancellation = default) =>
        WithReasonAsync(id, command, why, digest => new RetireTool(digest), cancellation);

    /// <summary>Brings a retired tool back; it is out of use until it is calibrated or cleared.</summary>
    public Task<DeskAnswer> BringBackAsync(ToolId id, CommandId command, string why, CancellationToken cancellation = default) =>
        WithReasonAsync(id, command, why, digest => new BringToolBack(digest), cancellation);

    /// <summary>Puts everything tightened since the last good calibration in doubt.</summary>
    public Task<DeskAnswer> DoubtAsync(ToolId id, CommandId command, string why, CancellationToken cancellation = default) =>
        WithReasonAsync(id, command, why, digest => new RaiseDoubt(digest), cancellation);

    /// <summary>Says that the owner of a car was told of the recall.</summary>
    public Task<DeskAnswer> TellAsync(ToolId id, CommandId command, CarId car, string words, CancellationToken cancellation = default) =>
        WithReasonAsync(id, command, words, digest => new TellOwner(car, digest), cancellation);

    private Task<DeskAnswer> WithReasonAsync(
        ToolId id, CommandId command, string why, Func<ContentDigest, ToolReport> of, CancellationToken cancellation)
    {
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(Typed.Clean(why)));
        return RunAsync(present => desk.RunAsync(id, command, present, of(reason.Digest), [reason], cancellation: cancellation), cancellation);
    }

    private async Task<DeskAnswer> RunAsync(Func<Present, Task<DeskAnswer>> run, CancellationToken cancellation) =>
        await here.ActingAsync(cancellation) is { } present ? await run(present) : Locked;

    private ToolLine? Line(LogbookReader reader, ToolId id)
    {
        var folded = reader.FoldAsFarAsReadable(Folders.LogbookOf(id), Folders.Tool);
        var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
        var pulls = ToolUsers.PullsWith(reader, id);
        return folded.State.Tool is { } tool
            ? new ToolLine(id, tool, folded.State, folded.State.StandingOn(today, pulls), folded.Unreadable?.Message) { Pulls = pulls }
            : null;
    }
}
