using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>What was done, in plain words: only what is valid now.</summary>
internal static class DoneWork
{
    /// <summary>The jobs, with their signed steps that are no tightening.</summary>
    public static IReadOnlyList<CoveredWork> Jobs(SummarySubject car, IReadOnlyList<Recorded> entries) =>
    [
        .. from job in car.Jobs
           let placed = car.Now.Placed(job)
           let ended = entries.FirstOrDefault(entry => entry.Number == job.ClosedBy)
           select new CoveredWork(
               $"{placed.Procedure.Title}: {string.Join(", ", job.Fact.Places)}{How(car, job)}",
               $"{placed.Procedure.Code}, revision {placed.Procedure.Revision}{(placed.Procedure.DemoData ? ", demo data" : "")}",
               car.Facts.Day(job.StartedAt),
               ended is null ? null : car.Facts.Day(ended.At),
               car.Facts.AskedFor.GetValueOrDefault(job.Id, ""),
               SummarySubject.StepWords(Signed(car, job, placed).Where(found => found.Step.Work.Count == 0)
                   .Select(found => (found.Step, found.Sign.Fact.NotApplicable)))),
    ];

    /// <summary>Step instances whose sign-off is valid.</summary>
    public static IEnumerable<(StepInstance Step, SignOff Sign)> Signed(SummarySubject car, JobBook job, PlacedProcedure placed) =>
        from step in placed.Steps
        where car.State.StandingOf(job, placed, step) == StepStanding.Signed
        select (step, job.SignOffs[step.Id]);

    /// <summary>Joints of the covered work that are tight, by system of the car.</summary>
    public static IReadOnlyList<SystemWork> BySystem(SummarySubject car) =>
    [
        .. from joint in car.Joints
           where joint.All(book => car.IsTight(book) && car.Covers(book))
           let kind = car.Now.Register.Kinds.GetValueOrDefault(joint.Key.Key)
           group joint by (System: kind?.System ?? "other", joint.Key.Key) into same
           let fasteners = same.SelectMany(joint => joint).ToList()
           let words = $"{car.KindName(same.Key.Key)}, {string.Join(", ", same.Select(joint => joint.Key.Place))}: "
               + $"tightened to torque ({SummarySubject.Count(fasteners.Count, "fastener")}){More(fasteners)}"
           group words by same.Key.System into system
           select new SystemWork(system.Key, [.. system]),
    ];

    /// <summary>New hardware recorded in the covered work and still on.</summary>
    public static IReadOnlyList<PartFitted> Parts(SummarySubject car, IReadOnlyList<Recorded> entries) =>
    [
        .. from entry in entries
           where entry.Number >= car.Since
           let fact = entry.Entry as FittedNew
           where fact is not null
           from position in fact.Positions
           let book = car.State.Of(position)
           where book.FittedNewBy == entry.Number && book.OpenedBy < entry.Number && car.Covers(book)
           where !car.Now.Register.Kinds.TryGetValue(position.Key, out var kind) || !kind.Temporary
           group position by (fact.Hardware, fact.Lot) into same
           select new PartFitted(
               $"{same.Count()} × {same.Key.Hardware}, new",
               same.Key.Lot ?? "",
               string.Join("; ", same.Select(position => car.Name(position.Joint)).Distinct())),
    ];

    private static string How(SummarySubject car, JobBook job) => job switch
    {
        { OnHold: { } hold } => $"; on hold since {car.DayWords(hold.At)}",
        { End: JobEnd.Cancelled } => "; given up, not finished",
        { End: JobEnd.TakenBack } => "; begun on this car by mistake, and taken back",
        _ => "",
    };

    private static string More(IReadOnlyList<PositionBook> fasteners)
    {
        var asked = fasteners.Where(book => SummarySubject.FinalPulls(book).Any(pull => pull.Fact.Spec.AsksWitness)).ToList();
        var looked = asked.Count > 0 && asked.TrueForAll(book => book.IsWitnessed(book.Last!.Fact.Spec.Stages)
            && SummarySubject.FinalPulls(book).All(pull => pull.WitnessedBy is not null))
            ? ", checked by a second person"
            : "";
        return looked + (fasteners.All(book => book.SettledBy > 0) ? ", re-torqued after the drive" : "");
    }
}
