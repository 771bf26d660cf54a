using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>What became of a record made with a tool.</summary>
public enum TraceClass
{
    /// <summary>The position stands on this record now.</summary>
    Live,

    /// <summary>The position was opened since, or the record was voided.</summary>
    VoidedSince,
}

/// <summary>One record made with a tool on one position.</summary>
/// <param name="Entry">The entry: a pull or a re-torque.</param>
/// <param name="Kind">A setting confirmed, a reading, or an angle turned.</param>
/// <param name="Value">The torque that counts now; null where an angle was turned.</param>
/// <param name="Stage">Stage of the pull; null for a re-torque.</param>
/// <param name="Stages">Stages of its group; null for a re-torque.</param>
/// <param name="Truly">What was truly delivered, by the tool's readings as found; unknown without any around this value.</param>
/// <param name="InDoubt">A doubt of the tool stands on it and is not decided.</param>
public sealed record TracedRecord(
    long Entry, DateTime At, PersonId Person, TorqueKind Kind, EnteredTorque? Value, int? Stage, int? Stages,
    TraceClass Class, TorqueReview Truly, bool InDoubt)
{
    /// <summary>The angle turned, in degrees: how true the tool reads an angle is not told by its torque readings.</summary>
    public decimal? AngleDegrees { get; init; }
}

/// <summary>One position and all records made on it with a tool, newest first.</summary>
public sealed record TracedPosition(JointPosition Position, IReadOnlyList<TracedRecord> Records)
{
    /// <summary>Live when any of its records is.</summary>
    public TraceClass Class => Records.Min(record => record.Class);

    /// <summary>The newest live record, else the newest.</summary>
    public TracedRecord Newest => Records.FirstOrDefault(record => record.Class == TraceClass.Live) ?? Records[0];

    /// <summary>True when an undecided doubt stands on it.</summary>
    public bool InDoubt => Records.Any(record => record.InDoubt);
}

/// <summary>Finds what a tool tightened. The verdict is the fold's; the entries only name the candidates.</summary>
public static class ToolTraces
{
    /// <summary>
    /// Since when records are traced: the last good as-left calibration, or earlier where a doubt in force reaches back
    /// further; null from first use.
    /// </summary>
    public static DateOnly? TraceFrom(this ToolState tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        var starts = tool.Doubts.Select(doubt => doubt.From).Append(tool.LastGood?.Date).ToList();
        return starts.Contains(null) ? null : starts.Min();
    }

    /// <summary>Positions of one car that a tool tightened since <see cref="TraceFrom"/>, live ones first.</summary>
    /// <param name="tool">The tool's state.</param>
    /// <param name="id">The tool.</param>
    /// <param name="car">The car's state.</param>
    /// <param name="entries">Entries of the car's logbook; those that name other tools or none are passed over.</param>
    public static IReadOnlyList<TracedPosition> Trace(this ToolState tool, ToolId id, CarState car, IEnumerable<Recorded> entries)
    {
        ArgumentNullException.ThrowIfNull(tool);
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(entries);
        var from = tool.TraceFrom();
        return
        [
            .. entries.SelectMany(entry => RecordsOf(tool, id, car, from, entry))
                .GroupBy(found => found.Position, found => found.Record)
                .Select(found => new TracedPosition(found.Key, [.. found.OrderByDescending(record => record.Entry)]))
                .OrderBy(found => found.Class)
                .ThenBy(found => found.Position.Key, StringComparer.Ordinal)
                .ThenBy(found => found.Position.Place, StringComparer.Ordinal)
                .ThenBy(found => found.Position.Number),
        ];
    }

    private static IEnumerable<(JointPosition Position, TracedRecord Record)> RecordsOf(
        ToolState tool, ToolId id, CarState car, DateOnly? from, Recorded entry)
    {
        switch (entry.Entry)
        {
            // A stud that two nuts of this tool drove stands on them.
            case TorqueRecorded stud when stud.Tool != id && DrivenWith(id, car, stud, from) is { } work:
                var driven = car.Of(stud.Position);
                var drive = driven.Pulls.Find(record => record.Number == entry.Number);
                yield return (stud.Position, new TracedRecord(
                    entry.Number, entry.At, entry.Person, stud.Kind, drive?.Value ?? stud.Value, stud.Stage, stud.Spec.Stages,
                    drive is { Voided: false } ? TraceClass.Live : TraceClass.VoidedSince,
                    new TorqueReview.Unknown(), drive is { IsGone: false } && Undecided(tool, driven, work)));
                break;
            case TorqueRecorded pull when pull.Tool == id && (from is null || pull.On >= from):
                var book = car.Of(pull.Position);
                var live = book.Pulls.Find(record => record.Number == entry.Number);
                var value = live?.Value ?? pull.Value;
                yield return (pull.Position, new TracedRecord(
                    entry.Number, entry.At, entry.Person, pull.Kind, value, pull.Stage, pull.Spec.Stages,
                    live is { Voided: false } ? TraceClass.Live : TraceClass.VoidedSince,
                    Review(tool, pull.On, entry.At, value, pull),
                    live is { IsGone: false } && Undecided(tool, book, ToolWork.Of(pull, entry.At)))
                { AngleDegrees = pull.AngleDegrees });
                break;
            case Settled settled when settled.Tool == id && (from is null || settled.On >= from):
                foreach (var position in settled.Positions)
                {
                    var settledBook = car.Of(position);
                    var stands = settledBook.SettledBy == entry.Number;
                    yield return (position, new TracedRecord(
                        entry.Number, entry.At, entry.Person, settled.Kind, settled.Value, null, null,
                        stands ? TraceClass.Live : TraceClass.VoidedSince,
                        Review(tool, settled.On, entry.At, settled.Value, settledBook.Last?.Fact),
                        stands && Undecided(tool, settledBook, new ToolWork(id, settled.On, entry.At, settled.ToolEntry))));
                }

                break;
            default:
                break;
        }
    }

    private static ToolWork? DrivenWith(ToolId id, CarState car, TorqueRecorded stud, DateOnly? from) => (stud.DrivenBy ?? [])
        .Select(number => car.Correctables[number])
        .Select(pair => ToolWork.Of((TorqueRecorded)pair.Entry, pair.At))
        .FirstOrDefault(work => work.Tool == id && (from is null || work.On >= from));

    /// <summary>By the first readings as found made and entered after the record: what the tool was like when it left the shelf.</summary>
    /// <param name="pull">The pull whose permitted range, adapter and run-down torque count.</param>
    private static TorqueReview Review(ToolState tool, DateOnly on, DateTime at, EnteredTorque? value, TorqueRecorded? pull) =>
        value is { } recorded && pull is { Spec: var spec } && tool.Tool is { } known
        && tool.Calibrations.Find(entered => entered.WithdrawnBy == 0 && entered.At >= at && entered.Fact.Date >= on && entered.Fact.AsFound.Count > 0) is { Fact: var next }
            ? TorqueReview.Of(
                recorded,
                known.Unit,
                next.AsFound,
                new TorqueRange(InNewtonMetres(spec.Minimum), InNewtonMetres(spec.Maximum)),
                delivered => InNewtonMetres(Judging.AtFastener(delivered.NewtonMetres, spec, pull.RunDown)))
            : new TorqueReview.Unknown();

    private static EnteredTorque InNewtonMetres(decimal value) => new(value, TorqueUnit.NewtonMetre);

    private static bool Undecided(ToolState tool, PositionBook book, ToolWork work) =>
        tool.DoubtsOn(work).Any(doubt => !book.DoubtsDecided.Contains(new ToolDoubt(work.Tool, doubt.Number)));
}
