using System.Collections.Immutable;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Pulls made with a tool from this day up to this instant are in doubt.</summary>
/// <param name="Number">Entry in the tool's logbook that raised it.</param>
/// <param name="From">Date of the last good as-left calibration before it, or of the one withdrawn; null from first use.</param>
/// <param name="Until">Instant of the entry.</param>
/// <param name="FromEntry">Entry of that calibration; 0 from first use.</param>
/// <param name="ByReadings">Raised by readings as found, not by somebody's word.</param>
/// <param name="LiftedBy">Entry that lifted it; 0 while it holds.</param>
public sealed record DoubtRaised(long Number, DateOnly? From, DateTime Until, long FromEntry, bool ByReadings, long LiftedBy = 0)
{
    /// <summary>The entry itself.</summary>
    public required Entry Raised { get; init; }

    /// <summary>
    /// True when work done with the tool falls under it: recorded before it, and since the calibration. The tool's own entry numbers
    /// say which came first; older records, without one, are told apart by the instant.
    /// </summary>
    public bool Covers(ToolWork use)
    {
        ArgumentNullException.ThrowIfNull(use);
        return (use.ToolEntry is { } entry ? entry < Number : use.At <= Until)
            && (From is null || use.On >= From || use.ToolEntry >= FromEntry);
    }
}

/// <summary>One use of a tool, as a record tells it.</summary>
/// <param name="On">The shop's date.</param>
/// <param name="At">Instant of the record.</param>
/// <param name="ToolEntry">Newest entry of the tool's logbook then; null in older records.</param>
public sealed record ToolWork(ToolId Tool, DateOnly On, DateTime At, long? ToolEntry)
{
    /// <summary>The use that a pull records.</summary>
    public static ToolWork Of(TorqueRecorded pull, DateTime at)
    {
        ArgumentNullException.ThrowIfNull(pull);
        return new(pull.Tool, pull.On, at, pull.ToolEntry);
    }

    /// <summary>The use that a result records; null where no instrument of the shop is named.</summary>
    public static ToolWork? Of(ResultRecorded result, DateTime at)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result is { Tool: { } tool, On: { } on } ? new(tool, on, at, result.ToolEntry) : null;
    }
}

/// <summary>A calibration as it was entered.</summary>
/// <param name="Left">Good or not, by its readings as left; null without any.</param>
/// <param name="Found">Good or not, by its readings as found; null without any.</param>
public sealed record CalibrationBook(long Number, DateTime At, PersonId Person, Calibration Fact, bool? Left, bool? Found)
{
    /// <summary>True when nobody adjusted the tool: no readings as left, or the same as those as found.</summary>
    public required bool LeftAsFound { get; init; }

    /// <summary>Entry that withdrew it, for it was entered by mistake; 0 while it counts.</summary>
    public long WithdrawnBy { get; init; }
}

/// <summary>An owner that was told of what the tool tightened.</summary>
public sealed record ToldOwner(long Number, DateTime At, PersonId By, OwnerTold Fact)
{
    public CarId Car => Fact.Car;
}

/// <summary>Everything the entries of one tool say.</summary>
public sealed record ToolState
{
    /// <summary>A tool nobody entered yet.</summary>
    public static readonly ToolState Empty = new();

    private ToolState()
    {
    }

    /// <summary>Number of the newest entry.</summary>
    public long Number { get; init; }

    /// <summary>The tool as last entered; null before it was.</summary>
    public TorqueTool? Tool { get; init; }

    /// <summary>The instrument as last entered; null for a torque tool, and before it was.</summary>
    public Instrument? Instrument { get; init; }

    /// <summary>What the shop calls it; null before it was entered.</summary>
    public string? Name => Tool?.Name ?? Instrument?.Name;

    /// <summary>Entry that took it out of use for good; 0 while it is the shop's.</summary>
    public long RetiredBy { get; init; }

    /// <summary>Calibrations, oldest first, those withdrawn too.</summary>
    public ImmutableList<CalibrationBook> Calibrations { get; init; } = [];

    /// <summary>The last calibration whose as-left readings were good.</summary>
    public Calibration? LastGood { get; init; }

    /// <summary>Entry of that calibration; 0 without one.</summary>
    public long LastGoodBy { get; init; }

    /// <summary>Instant of that entry: pulls since it are counted. Null without one.</summary>
    public DateTime? LastGoodAt => Calibrations.Find(book => book.Number == LastGoodBy)?.At;

    /// <summary>Entry that took it out of use; 0 while it may be used.</summary>
    public long OutOfUseBy { get; init; }

    /// <summary>Doubts in force.</summary>
    public ImmutableList<DoubtRaised> Doubts { get; init; } = [];

    /// <summary>Owners that were told, oldest first.</summary>
    public ImmutableList<ToldOwner> Told { get; init; } = [];

    /// <summary>When the owner of a car was last told since the newest doubt; null where he was not.</summary>
    public ToldOwner? ToldOf(CarId car) => Told.FindLast(told => told.Car == car && told.Number > Doubts.Select(doubt => doubt.Number).DefaultIfEmpty().Max());

    /// <summary>Doubts that were lifted.</summary>
    public ImmutableList<DoubtRaised> Lifted { get; init; } = [];

    /// <summary>True when its last good calibration is valid on this day.</summary>
    public bool IsCalibratedOn(DateOnly day) => LastGood is { } good && good.IsValidOn(day);

    /// <summary>The doubts that cover work done with it.</summary>
    public IEnumerable<DoubtRaised> DoubtsOn(ToolWork use) => Doubts.Where(doubt => doubt.Covers(use));

    /// <summary>
    /// True when readings as found, taken since the doubt and before anybody adjusted the tool, were good. Only these say what it was
    /// like when it did the work.
    /// </summary>
    public bool WasFoundGoodSince(DoubtRaised doubt)
    {
        ArgumentNullException.ThrowIfNull(doubt);
        var since = Calibrations.Where(calibration => calibration.Number >= doubt.Number && calibration.WithdrawnBy == 0).ToList();
        var good = since.FindIndex(calibration => calibration.Found == true);
        return good >= 0 && since.Take(good).All(calibration => calibration.LeftAsFound);
    }

    /// <summary>Pure and total over the known entries: the state after one more entry.</summary>
    public ToolState Apply(Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        var next = recorded.Entry switch
        {
            ToolEntered fact => this with
            {
                Tool = new TorqueTool(
                    fact.Tool, fact.Name, fact.Serial, fact.Kind, fact.Unit,
                    fact.LowestMarked, fact.Top, fact.Graduation, fact.ClassDeviationPercent, LastGood)
                { LengthMm = fact.LengthMm, CycleLimit = fact.CycleLimit ?? TorqueTool.StandardCycles },
            },
            InstrumentEntered fact => this with { Instrument = new Instrument(fact.Tool, fact.Name, fact.Serial, fact.Kind) },
            Calibrated fact => WithCalibration(recorded, fact),
            InstrumentChecked fact => WithCheck(
                recorded, new Calibration(fact.Date, fact.Due, fact.Certificate, [], []), fact.FoundGood, fact.LeftGood, fact.FoundGood == fact.LeftGood),
            Quarantined => this with { OutOfUseBy = recorded.Number },
            CalibrationWithdrawn fact => Without(recorded, fact),
            ToolRetired => this with { RetiredBy = recorded.Number, OutOfUseBy = recorded.Number },
            ToolBroughtBack => this with { RetiredBy = 0, OutOfUseBy = recorded.Number },
            Doubted => WithDoubt(recorded, byReadings: false) with { OutOfUseBy = recorded.Number },
            OwnerTold fact => this with { Told = Told.Add(new ToldOwner(recorded.Number, recorded.At, recorded.Person, fact)) },
            Cleared fact => this with
            {
                OutOfUseBy = 0,
                Lifted = Lifted.AddRange(Doubts.Where(doubt => fact.Doubts.Contains(doubt.Number)).Select(doubt => doubt with { LiftedBy = recorded.Number })),
                Doubts = Doubts.RemoveAll(doubt => fact.Doubts.Contains(doubt.Number)),
            },
            _ => throw new ArgumentException($"{recorded.Entry.GetType().Name} is not an entry of a tool's logbook.", nameof(recorded)),
        };
        return next with { Number = recorded.Number };
    }

    private ToolState WithCalibration(Recorded recorded, Calibrated fact)
    {
        var tool = Tool ?? throw new InvalidOperationException("A tool is entered before its calibration.");
        return WithCheck(
            recorded,
            new Calibration(fact.Date, fact.Due, fact.Certificate, fact.AsFound, fact.AsLeft),
            fact.AsFound.Count > 0 ? IsGood(tool, fact.AsFound) : null,
            fact.AsLeft.Count > 0 ? IsGood(tool, fact.AsLeft) : null,
            fact.AsLeft.Count == 0 || fact.AsLeft.SequenceEqual(fact.AsFound));
    }

    private ToolState WithCheck(Recorded recorded, Calibration calibration, bool? found, bool? left, bool untouched)
    {
        var next = found == false ? WithDoubt(recorded, byReadings: true) : this;
        next = next with
        {
            Calibrations = Calibrations.Add(new CalibrationBook(recorded.Number, recorded.At, recorded.Person, calibration, left, found) { LeftAsFound = untouched }),
        };
        return left == true
            ? next with
            {
                LastGood = calibration,
                LastGoodBy = recorded.Number,
                Tool = Tool is { } tool ? tool with { Calibration = calibration } : null,
                OutOfUseBy = 0,
            }
            : next with { OutOfUseBy = recorded.Number };
    }

    // What relied on it was never covered: its work since is in doubt where it had been left good.
    private ToolState Without(Recorded recorded, CalibrationWithdrawn fact)
    {
        var place = Calibrations.FindIndex(book => book.Number == fact.Calibration);
        var gone = Calibrations[place];
        var kept = Calibrations.SetItem(place, gone with { WithdrawnBy = recorded.Number });
        var good = kept.FindLast(book => book is { Left: true, WithdrawnBy: 0 });
        var doubts = gone.Left == true
            ? Doubts.Add(new DoubtRaised(recorded.Number, gone.Fact.Date, recorded.At, gone.Number, ByReadings: false) { Raised = recorded.Entry })
            : Doubts;
        return this with
        {
            Calibrations = kept,
            Doubts = doubts,
            LastGood = good?.Fact,
            LastGoodBy = good?.Number ?? 0,
            Tool = Tool is { } tool ? tool with { Calibration = good?.Fact } : null,
            OutOfUseBy = recorded.Number,
        };
    }

    private static bool IsGood(TorqueTool tool, IReadOnlyList<CalibrationPoint> points) => points.All(point =>
        Math.Abs(point.DeviationPercent) <= (tool.ClassDeviationPercent
            ?? ToolDeviation.ClassLimitPercent(new EnteredTorque(point.SetOrShown, tool.Unit))));

    private ToolState WithDoubt(Recorded recorded, bool byReadings) =>
        this with { Doubts = Doubts.Add(new DoubtRaised(recorded.Number, LastGood?.Date, recorded.At, LastGoodBy, byReadings) { Raised = recorded.Entry }) };
}
