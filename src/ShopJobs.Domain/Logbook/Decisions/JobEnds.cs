using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is against ending, holding, resuming or giving up a job, and what of it comes undone. The screens ask the same.</summary>
public static class JobEnds
{
    /// <summary>Why a job is not ended now: every step has to be signed.</summary>
    public static IReadOnlyList<HoldPoint> AgainstEnding(CarState state, Circumstances now, JobBook job)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(job);
        var placed = now.Placed(job);
        return
        [
            .. Against(job),
            .. from step in placed.Steps
               let standing = state.StandingOf(job, placed, step)
               where standing != StepStanding.Signed
               select new HoldPoint(standing is StepStanding.NotSigned or StepStanding.AwaitsCountersign ? HoldReason.StepNotSigned : HoldReason.StepToReconfirm)
               {
                   Job = job.Id,
                   Step = step.Id,
                   Unsigned = new UnsignedStep(step, standing),
               },
        ];
    }

    /// <summary>Hand-tight entries of a job that are no longer valid when it goes on after a hold: of fasteners that are not at torque.</summary>
    public static IReadOnlyList<long> RunDownAgain(CarState state, JobBook job)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(job);
        return
        [
            .. state.Positions.Values.Where(book => book.HandTightBy > 0 && !state.IsAtTorque(book)).Select(book => book.HandTightBy)
                .Where(number => state.Correctables[number].Entry is HandTightened hand && hand.Job == job.Id)
                .Distinct().Order(),
        ];
    }

    /// <summary>Every position that is to be backed off or run down again for that, as the register names them.</summary>
    public static IReadOnlyList<JointPosition> RunDownAgainAt(CarState state, JobBook job) =>
        [.. RunDownAgain(state, job) is var numbers ? state.Positions.Values.Where(book => numbers.Contains(book.HandTightBy)).Select(book => book.Position) : []];

    /// <summary>Lasting positions that a job opened and that nobody has closed.</summary>
    public static IReadOnlyList<JointPosition> LeftOpen(CarState state, Circumstances now, JobBook job)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(job);
        return
        [
            .. from book in state.Positions.Values
               where state.OpenedIt(job.Id, book) && !state.IsClosed(book)
               where now.KindOf(state, book.Position.Key) is not { Temporary: true }
               orderby book.Position.Key, book.Position.Place, book.Position.Number
               select book.Position,
        ];
    }

    /// <summary>Why nobody works on a job now: it is on hold, or was given up. Empty while it runs, or where it ended with every step signed.</summary>
    public static IReadOnlyList<HoldPoint> BeforeWork(JobBook job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return job.OnHold is not null ? [new HoldPoint(HoldReason.ResumeFirst) { Job = job.Id }]
            : job is { IsRunning: false, End: JobEnd.Cancelled or JobEnd.TakenBack } ? [new HoldPoint(HoldReason.JobNotRunning) { Job = job.Id }]
            : [];
    }

    /// <summary>Why nothing more is said of a job: it has ended, or is on hold.</summary>
    internal static IEnumerable<HoldPoint> Against(JobBook job, bool mayBeOnHold = false) =>
        job.ClosedBy > 0 ? [new HoldPoint(HoldReason.JobNotRunning) { Job = job.Id }]
        : job.OnHold is not null && !mayBeOnHold ? [new HoldPoint(HoldReason.ResumeFirst) { Job = job.Id }]
        : [];
}
