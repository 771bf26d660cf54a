using System.Globalization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>The work in a few sentences that say no more than the logbook does.</summary>
internal static class PlainWords
{
    /// <summary>Each job: what the procedure says of it once every step of it stands signed and none was left out.</summary>
    public static IReadOnlyList<ToldWork> Told(SummarySubject car) =>
    [
        .. from job in car.Jobs
           let placed = car.Now.Placed(job)
           let places = CustomerNames.Where(job.Fact.Places, [.. placed.Procedure.Steps.SelectMany(step => step.Places).Distinct()])
           select IsDone(car, job, placed)
               ? new ToldWork($"{placed.Procedure.Customer?.Title ?? placed.Procedure.Title}{places}", placed.Procedure.Customer?.Says ?? [])
               : new ToldWork($"{placed.Procedure.Title}{places}: {Reached(car, job)}", []),
    ];

    /// <summary>How the tightening is known, and what was not looked at.</summary>
    public static IReadOnlyList<string> Known(SummarySubject car, EvidenceCounts counts)
    {
        var tight = car.Joints.SelectMany(joint => joint).Where(book => car.IsTight(book) && car.Covers(book)).ToList();
        return [.. How(car, tight, counts), .. Witnessed(tight.Count, counts.Witnessed), .. NotChecked(counts)];
    }

    /// <summary>The names of fasteners, counted: "20 wheel nuts"; of several kinds "34 nuts and bolts".</summary>
    public static string Counted(SummarySubject car, int count, IEnumerable<PositionBook> books)
    {
        var kinds = books.Select(book => book.Position.Key).Distinct().ToList();
        var name = kinds is [var only] ? CustomerNames.Plural(car.KindName(only), count) : count == 1 ? "nut or bolt" : "nuts and bolts";
        return string.Create(CultureInfo.InvariantCulture, $"{count} {name}");
    }

    private static IEnumerable<string> How(SummarySubject car, List<PositionBook> tight, EvidenceCounts counts)
    {
        if (counts.SettingConfirmed > 0)
        {
            yield return $"{Counted(car, counts.SettingConfirmed, tight)} {Were(counts.SettingConfirmed)} tightened with a click wrench in calibration, which gives no reading.";
        }

        if (counts.Measured > 0)
        {
            yield return $"{Counted(car, counts.Measured, tight)} {Were(counts.Measured)} tightened with a tool in calibration that shows torque or angle.";
        }
    }

    private static IEnumerable<string> Witnessed(int tight, int witnessed) => (tight, witnessed) switch
    {
        (0, _) => [],
        (_, 0) => ["No second person has checked them."],
        (1, 1) => ["A second person checked it."],
        var (all, looked) when all == looked => ["A second person checked every one of them."],
        _ => [string.Create(CultureInfo.InvariantCulture, $"A second person checked {witnessed} of these {tight}.")],
    };

    private static IEnumerable<string> NotChecked(EvidenceCounts counts) => counts.NotChecked == 0
        ? []
        : [string.Create(CultureInfo.InvariantCulture, $"We did not check the rest of the car: {counts.NotChecked} nuts and bolts are as the car came to us.")];

    private static string Were(int count) => count == 1 ? "was" : "were";

    private static bool IsDone(SummarySubject car, JobBook job, Procedures.PlacedProcedure placed) =>
        job is { OnHold: null, End: not (JobEnd.Cancelled or JobEnd.TakenBack) }
        && placed.Steps.All(step => car.State.StandingOf(job, placed, step) == StepStanding.Signed && !job.SignOffs[step.Id].Fact.NotApplicable);

    private static string Reached(SummarySubject car, JobBook job) => job switch
    {
        { OnHold: { } hold } => $"on hold since {car.DayWords(hold.At)}",
        { End: JobEnd.Cancelled } => "given up, not finished",
        { End: JobEnd.TakenBack } => "begun on this car by mistake, and taken back",
        { Begun: false } => "not started",
        { IsRunning: true } => "not finished",
        _ => "done in part, see the record below",
    };
}
