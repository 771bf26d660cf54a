using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Names;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Instruments;

/// <summary>One instrument as it stands today.</summary>
public sealed record InstrumentLine(ToolId Id, Instrument Instrument, ToolState State, ToolStanding Standing);

/// <summary>One result measured with an instrument.</summary>
/// <param name="Stands">It is the newest of its name on that car, and not void.</param>
public sealed record MeasuredLine(Recorded Recorded, string Name, bool Stands);

/// <summary>What an instrument measured on one car, newest first, and whose car it is.</summary>
/// <param name="Owner">Who owns the car, and how the owner is reached.</param>
/// <param name="Told">When the owner was told since the newest doubt; null where nobody did.</param>
public sealed record MeasuredCar(CarId Car, string Name, string Owner, ToldOwner? Told, IReadOnlyList<MeasuredLine> Lines);

/// <summary>The shop's gauges, scales and rigs: read, entered, and what was measured with them.</summary>
public sealed class InstrumentShelf(
    IDbContextFactory<ShopDbContext> database, LogbookSnapshots snapshots, ToolDesk desk, Surroundings surroundings, WhoIsHere here, ShopClock clock)
{
    /// <summary>Every instrument, by name.</summary>
    public IReadOnlyList<InstrumentLine> All() => snapshots.Read(reader =>
        (IReadOnlyList<InstrumentLine>)[.. Surroundings.AllTools(reader).Select(tool => Line(reader, tool.Key, tool.Value)).OfType<InstrumentLine>()
            .OrderBy(line => line.Instrument.Name, StringComparer.OrdinalIgnoreCase)]);

    /// <summary>One instrument; null when there is none of that id.</summary>
    public InstrumentLine? Find(ToolId id) => snapshots.Read(reader =>
        Line(reader, id, reader.FoldAsFarAsReadable(Folders.LogbookOf(id), Folders.Tool).State));

    /// <summary>Enters an instrument or describes it again.</summary>
    public async Task<DeskAnswer> SaveAsync(InstrumentForm form, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        var instrument = new Instrument(form.Id, Typed.Clean(form.Name), Typed.Clean(form.Serial), form.Kind);
        if (await here.ActingAsync(cancellation) is not { } present)
        {
            return DeskAnswer.Failed(ShopChange.Locked);
        }

        if (NameRules.WrongLetters(form.Name) is { } wrong)
        {
            return DeskAnswer.Failed(wrong);
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var known = await shop.Tools.AnyAsync(row => row.Id == form.Id.Value, cancellation);
        return await desk.RunAsync(
            form.Id, new CommandId(Guid.NewGuid()), present, new EnterInstrument(instrument),
            rows: transaction => ToolRows.Write(transaction, form.Id, instrument.Name, known, present.Person, clock.Now),
            cancellation: cancellation);
    }

    /// <summary>Takes it out of use, or puts what was measured with it in doubt too.</summary>
    public async Task<DeskAnswer> ReportAsync(ToolId id, string why, Func<ContentDigest, ToolReport> report, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(Typed.Clean(why)));
        return await here.ActingAsync(cancellation) is { } present
            ? await desk.RunAsync(id, new CommandId(Guid.NewGuid()), present, report(reason.Digest), [reason], cancellation: cancellation)
            : DeskAnswer.Failed(ShopChange.Locked);
    }

    /// <summary>Everything that was measured with it, by car, the car measured last first.</summary>
    public IReadOnlyList<MeasuredCar> MeasuredWith(ToolId id) => snapshots.Read(reader =>
    {
        var register = surroundings.Of(reader, default).Register;
        var state = reader.FoldAsFarAsReadable(Folders.LogbookOf(id), Folders.Tool).State;
        return (IReadOnlyList<MeasuredCar>)[.. Candidates(reader, id).GroupBy(entry => new CarId(entry.Owner), entry => entry.Number)
            .Select(car => new MeasuredCar(
                car.Key,
                ToolRecall.NameOf(reader, car.Key),
                ToolRecall.OwnerOf(reader, car.Key),
                state.ToldOf(car.Key),
                [.. OnCar(reader, register, car.Key, [.. car]).OrderByDescending(line => line.Recorded.At)]))
            .Where(car => car.Lines.Count > 0)
            .OrderByDescending(car => car.Lines[0].Recorded.At)];
    });

    private InstrumentLine? Line(LogbookReader reader, ToolId id, ToolState state) => state.Instrument is { } instrument
        ? new InstrumentLine(id, instrument, state, state.StandingOn(DateOnly.FromDateTime(clock.OnTheWall(reader.At))))
        : null;

    private static IEnumerable<MeasuredLine> OnCar(LogbookReader reader, Domain.Procedures.JointRegister register, CarId car, IReadOnlyList<long> numbers)
    {
        var state = reader.FoldAsFarAsReadable(Folders.LogbookOf(car), Folders.Car).State;
        return from number in numbers
               where number <= state.Number
               let recorded = Folders.Read(reader.Entries(Folders.LogbookOf(car), number - 1, 1)[0])
               where recorded.Entry is ResultRecorded
               let result = (ResultRecorded)recorded.Entry
               select new MeasuredLine(
                   recorded, register.NameOfResult(result.Name),
                   state.Results.TryGetValue(result.Name, out var book) && book.Number == number && book.VoidBy == 0);
    }

    private static List<(Guid Owner, long Number)> Candidates(LogbookReader reader, ToolId tool) => [.. reader.Row(
            $"measured-with:{tool.Value}",
            "SELECT group_concat(owner || ' ' || number, ';') FROM (SELECT owner, number FROM entries WHERE tool = $1 AND owner_kind = 'car' ORDER BY owner, number)",
            [tool.Value],
            found => found as string ?? "")
        .Split(';', StringSplitOptions.RemoveEmptyEntries)
        .Select(entry => entry.Split(' '))
        .Select(parts => (Guid.Parse(parts[0], CultureInfo.InvariantCulture), long.Parse(parts[1], CultureInfo.InvariantCulture)))];
}
