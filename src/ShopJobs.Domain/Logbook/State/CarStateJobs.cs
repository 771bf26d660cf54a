using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How the ends of jobs, their holds and their ways back change the state.
public sealed partial record CarState
{
    /// <summary>Jobs that were put on the wrong car and taken back.</summary>
    public ImmutableHashSet<JobId> WrongCars { get; init; } = [];

    /// <summary>Newest entry by which a job went on after a hold: what was said of the car's condition before it has ended. 0 when none did.</summary>
    public long ResumedBy { get; init; }

    // What is not signed when a job rests, ends or asks something else is said again before it is.
    private static readonly ImmutableDictionary<string, FinishedStep> NoneFinished = ImmutableDictionary<string, FinishedStep>.Empty;

    private CarState WithJob(JobId job, Func<JobBook, JobBook> change) => this with { Jobs = Jobs.SetItem(job, change(Jobs[job])) };

    private static JobWord WordOf(Recorded recorded, ContentDigest? reason) => new(recorded.Number, recorded.At, recorded.Person, reason);

    private CarState WithEnd(Recorded recorded, JobId id, JobEnd end, ContentDigest? reason) =>
        WithJob(id, job => job with { ClosedBy = recorded.Number, End = end, Word = WordOf(recorded, reason), OnHold = null, Finished = NoneFinished }) with
        {
            Summaries = Superseded(recorded.Number),
        };

    // Signed steps that ask something else now are signed again. What is outside the newer revision is held, by nobody's hand; where it is to
    // be redone already, that is enough.
    private CarState WithRevision(Recorded recorded, RevisionAdopted fact)
    {
        var job = Jobs[fact.Job];
        var outside = fact.Outside.Select(number => ((TorqueRecorded)Correctables[number].Entry).Position).Distinct().ToList();
        var hold = new Hold(recorded.Number, recorded.At, default, HoldReason.OlderRevision);
        return WithJob(fact.Job, book => book with
        {
            Fact = book.Fact with { Revision = fact.Revision, ProcedureDigest = fact.ProcedureDigest, RegisterDigest = fact.RegisterDigest, Joints = fact.Joints },
            Finished = NoneFinished,
        })
            .Fell(recorded.Number, fact.Steps.Select(step => job.SignOffs[step].Number))
            .Put(outside, book => book.Holds.Exists(decided => decided.Decision is not null) ? book : book with { Holds = book.Holds.Add(hold with { Workers = book.Workers }) })
            .SuspendReleases(recorded.Number);
    }

    private CarState WithHold(Recorded recorded, JobPutOnHold fact) =>
        WithJob(fact.Job, job => job with { OnHold = WordOf(recorded, fact.Reason), Finished = NoneFinished }) with { Summaries = Superseded(recorded.Number) };

    // Nobody knows what happened to a nut that was only run down by hand: it is no longer valid, nor is what was pulled on it.
    private CarState WithResumption(Recorded recorded, JobResumed fact)
    {
        var next = WithJob(fact.Job, job => job with { OnHold = null }) with { ResumedBy = recorded.Number, Summaries = Superseded(recorded.Number) };
        return fact.RunDownAgain.Count == 0
            ? next
            : fact.RunDownAgain
                .Aggregate(next, (state, number) => state.TakeBack(recorded.Number, number).Untighten(number, (HandTightened)Correctables[number].Entry))
                .RunAgain(recorded.Number).SuspendReleases(recorded.Number);
    }

    private CarState WithTakenBack(Recorded recorded, JobTakenBack fact) =>
        WithEnd(recorded, fact.Job, JobEnd.TakenBack, fact.Reason).WithJob(fact.Job, job => job with { LeftOpen = fact.LeftOpen }) with
        {
            WrongCars = WrongCars.Add(fact.Job),
        };

    // Its steps ask while something that it opened is not closed, and again where what closed it fell.
    private CarState WhileUnclosed()
    {
        var next = this;
        foreach (var job in WrongCars.Select(id => Jobs[id]).Where(job => job.IsUnclosed != IsUnclosed(job)))
        {
            next = next.WithJob(job.Id, book => book with { IsUnclosed = !book.IsUnclosed });
        }

        return next;
    }

    private bool IsUnclosed(JobBook job) => job.LeftOpen.Select(Of).Any(book => OpenedIt(job.Id, book) && !IsClosed(book));

    /// <summary>True where this job began the cycle that a position is in.</summary>
    internal bool OpenedIt(JobId job, PositionBook book) =>
        book.OpenedBy > 0 && Correctables.TryGetValue(book.OpenedBy, out var opening) && opening.Entry is Opened { Job: { } opener } && opener == job;

    /// <summary>At torque, looked at where that is asked, and not held.</summary>
    internal bool IsClosed(PositionBook book) =>
        book.Holds.IsEmpty && this.IsAtTorque(book) && book.IsWitnessed(book.Last!.Fact.Spec.Stages);
}
