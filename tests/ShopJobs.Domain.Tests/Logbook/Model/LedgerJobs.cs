using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// How jobs end, rest, go on, are given up and taken back.
internal sealed partial class Ledger
{
    private Line? Newest<T>(JobId job, Func<T, JobId> of)
        where T : Entry => lines.LastOrDefault(line => line.Entry is T fact && of(fact) == job);

    /// <summary>Put on hold, and neither resumed nor ended since.</summary>
    private bool IsOnHold(JobId job) => Newest<JobPutOnHold>(job, fact => fact.Job) is { } hold
        && !lines.Skip((int)hold.Number).Any(line => line.Closes.Contains(job) || (line.Entry is JobResumed fact && fact.Job == job));

    private bool IsCancelled(JobId job) => Newest<JobCancelled>(job, fact => fact.Job) is not null;

    private Line? TakenBackBy(JobId job) => Newest<JobTakenBack>(job, fact => fact.Job);

    /// <summary>Something that it had opened when it was taken back is not closed: the job asks for it.</summary>
    private bool IsUnclosed(JobId job) => TakenBackBy(job) is { } taken && taken.LeftOpen.Any(at => IsOpenedBy(job, at) && !IsClosed(at));

    private bool IsOpenedBy(JobId job, JointPosition position) => LastOpened(position) is > 0 and var number && At(number).Entry is Opened fact && fact.Job == job;

    private bool IsClosed(JointPosition position) => HoldsOn(position).Count == 0 && IsAtTorque(position)
        && IsWitnessed(position, GroupOf(LastPull(position)!).Rules.Stages.Count, asked: false);

    private IReadOnlyList<JointPosition> LeftOpenBy(JobId job) =>
    [
        .. register.Kinds.Values.Where(kind => !kind.Temporary).SelectMany(kind => kind.AllPositions()).Where(at => IsOpenedBy(job, at) && !IsClosed(at)),
    ];

    /// <summary>Hand-tight lines of a job that no longer stand when it goes on: of what is not at torque.</summary>
    private IReadOnlyList<long> RunDownAgain(JobId job) =>
    [
        .. register.Kinds.Values.SelectMany(kind => kind.AllPositions()).Where(at => !IsAtTorque(at)).Select(HandTightBy)
            .Where(number => number > 0 && At(number).Entry is HandTightened fact && fact.Job == job).Distinct(),
    ];

    private IEnumerable<Reason> OfJob(IReadOnlySet<Right> rights, Command command)
    {
        var id = command switch { JobCommand one => one.Job, PutJobOnHold hold => hold.Job, _ => default };
        var ended = IsCancelled(id) || TakenBackBy(id) is not null || IsClosed(id);
        var unsigned = jobs[id].Steps.Select(step => StandingOf(jobs[id], step)).Where(standing => standing != StepStanding.Signed).ToList();
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Lead)),
            (HoldReason.JobNotRunning, ended),
            (HoldReason.ResumeFirst, !ended && command is EndJob or PutJobOnHold && IsOnHold(id)),
            (HoldReason.NotOnHold, command is ResumeJob && !ended && !IsOnHold(id)),
            (HoldReason.StepNotSigned, command is EndJob && unsigned.Exists(standing => standing is StepStanding.NotSigned or StepStanding.AwaitsCountersign)),
            (HoldReason.StepToReconfirm, command is EndJob && unsigned.Exists(standing => standing is StepStanding.Void or StepStanding.ToReconfirm))).Select(why => new Reason(why));
    }

    private IEnumerable<Reason> OfResting(JobId? job) => job is { } id && IsOnHold(id) ? [new(HoldReason.ResumeFirst)] : [];

    private IEnumerable<Reason> OfGivenUp(JobId job) =>
        (IsCancelled(job) || TakenBackBy(job) is not null) && !Running.Any(one => one.Id == job) ? [new(HoldReason.JobNotRunning)] : [];
}
