using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Visits;

/// <summary>A visit in words.</summary>
public static class VisitLines
{
    /// <summary>"3 Mar 2026 to 9 Mar 2026", "since 3 Mar 2026", "until 9 Mar 2026".</summary>
    public static string When(VisitBook visit, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(now);
        return (visit.At, visit.End) switch
        {
            ({ } from, { } end) => $"{Day(now, from)} to {Day(now, end.At)}",
            ({ } from, null) => $"Here since {Day(now, from)}",
            (null, { } end) => $"Until {Day(now, end.At)}; visits were not kept before",
            _ => "Here",
        };
    }

    /// <summary>The odometer in and out, as it was read.</summary>
    public static string Odometers(VisitBook visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return string.Join("; ", new[]
        {
            visit.Arrived?.Odometer is { } came ? $"in at {came.Words}" : null,
            visit.Left?.Odometer is { } left ? $"out at {left.Words}" : null,
        }.OfType<string>());
    }

    /// <summary>How it came, was moved, was released and left, a line each, with the texts kept beside them.</summary>
    public static IReadOnlyList<string> Facts(
        IEnumerable<Recorded> entries,
        VisitBook visit,
        CarReading reading,
        IReadOnlyDictionary<PersonId, string> people,
        Func<IEnumerable<ContentDigest>, IReadOnlyDictionary<ContentDigest, string>> read)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(read);
        var found = entries.Where(recorded => visit.Holds(recorded.Number)
            && recorded.Entry is (Arrived or AsFoundRecorded or Left or CarMoved or LookedOver or Released or ReTorqueExtended)).ToList();
        var texts = read(found.SelectMany(recorded => recorded.Entry.Facets().Texts).Select(text => text.Digest));
        var names = JointLineWords.NamesOf(reading, people);
        return [.. found.Select(recorded => $"{Minute(reading.Now, recorded.At)}, {names.Person(recorded.Person)}: {EntryWords.Of(recorded.Entry, names)}{Texts(recorded.Entry, texts)}")];
    }

    /// <summary>What was done to a joint, and when: "opened 3 Mar 2026, 08:12; 1 to 5 brought to torque 3 Mar 2026, 08:40 to 09:10".</summary>
    public static string Of(JointVisit joint, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(joint);
        return string.Join("; ", joint.Done.Select(done =>
            $"{(done.Numbers.Count == 0 ? "" : $"{EntryNames.Numbers(done.Numbers.Select(number => (long)number))} ")}{Word(done.Work)} {Span(now, done)}"));
    }

    private static string Texts(Entry entry, IReadOnlyDictionary<ContentDigest, string> texts) =>
        string.Concat(entry.Facets().Texts.Select(text => $" {text.Label}: “{texts.GetValueOrDefault(text.Digest, "not read")}”"));

    private static string Word(JointWork work) => work switch
    {
        JointWork.Opened => "opened",
        JointWork.FittedNew => "fitted new",
        JointWork.RunDown => "run down by hand",
        JointWork.Torqued => "brought to torque",
        JointWork.PulledInVain => "pulled without counting",
        JointWork.LookedAt => "witnessed",
        JointWork.ReTorqued => "re-torqued after the drive",
        JointWork.Held => "stopped by hand",
        _ => "decided",
    };

    private static string Span(Circumstances now, WorkDone done) => WallTime.Span(now.OnTheWall(done.From), now.OnTheWall(done.To));

    private static string Day(Circumstances now, DateTime at) => WallTime.Day(now.OnTheWall(at));

    private static string Minute(Circumstances now, DateTime at) => WallTime.Minute(now.OnTheWall(at));
}
