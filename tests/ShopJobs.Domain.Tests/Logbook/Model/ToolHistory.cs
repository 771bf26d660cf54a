using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>The model's reading of one tool's logbook, scanned again at every question.</summary>
internal sealed class ToolHistory(IReadOnlyList<Recorded> entries)
{
    public ToolEntered? Entered => entries.Select(line => line.Entry).OfType<ToolEntered>().LastOrDefault();

    /// <summary>Out of use from a quarantine, a doubt or a bad calibration to a good calibration or a clearance.</summary>
    public bool OutOfUse => entries.LastOrDefault(line => line.Entry is Quarantined or Doubted or Cleared or Calibrated or InstrumentChecked)?.Entry switch
    {
        Quarantined or Doubted => true,
        Calibrated calibrated => !IsGood(calibrated.AsLeft),
        InstrumentChecked check => !check.LeftGood,
        _ => false,
    };

    /// <summary>It measures results; it tightens nothing.</summary>
    public bool IsInstrument => entries.Any(line => line.Entry is InstrumentEntered);

    public bool IsCalibratedOn(DateOnly day) => LastGoodBefore(entries.Count) is { } good && DatesOf(good) is var (date, due) && date <= day && day <= due;

    /// <summary>When doubts were raised on work done that day and written at that instant, lifted since or not.</summary>
    public IEnumerable<DateTime> EverDoubtedOn(DateOnly day, DateTime at) => RaisedOn(day, at).Select(index => entries[index].At);

    /// <summary>Doubts that stand on work done that day and written at that instant.</summary>
    public IEnumerable<long> DoubtsOn(DateOnly day, DateTime at) => RaisedOn(day, at).Select(index => entries[index].Number)
        .Where(number => !entries.Any(line => line.Entry is Cleared cleared && cleared.Doubts.Contains(number)));

    private IEnumerable<int> RaisedOn(DateOnly day, DateTime at)
    {
        for (var i = 0; i < entries.Count; i++)
        {
            var raises = entries[i].Entry is Doubted or InstrumentChecked { FoundGood: false } or Calibrated { AsFound.Count: > 0 }
                && !(entries[i].Entry is Calibrated calibrated && IsGood(calibrated.AsFound));
            var since = LastGoodBefore(i);
            if (raises && at <= entries[i].At && (since is null || day >= DatesOf(since).Date || at >= since.At))
            {
                yield return i;
            }
        }
    }

    private Recorded? LastGoodBefore(int index) =>
        entries.Take(index).LastOrDefault(line => line.Entry is InstrumentChecked { LeftGood: true } || (line.Entry is Calibrated calibrated && IsGood(calibrated.AsLeft)));

    private static (DateOnly Date, DateOnly Due) DatesOf(Recorded line) => line.Entry switch
    {
        Calibrated fact => (fact.Date, fact.Due),
        _ => (((InstrumentChecked)line.Entry).Date, ((InstrumentChecked)line.Entry).Due),
    };

    // The tools of the test shop are of the 4 % class.
    private static bool IsGood(IReadOnlyList<CalibrationPoint> points) =>
        points.Count > 0 && points.All(point => Math.Abs(point.SetOrShown - point.RigRead) * 100 <= 4 * point.RigRead);
}
