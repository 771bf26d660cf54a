namespace ShopJobs.Domain.Logbook;

// Ends of jobs, their holds and their ways back: the lead's.
public static partial class Decider
{
    private static Verdict OnJob(CarState state, Command command, JobId id, Circumstances now, HoldRules rules)
    {
        if (UnknownJob(state, id) is { } unknown)
        {
            return unknown;
        }

        var job = state.Jobs[id];
        var refused = Permissions(rules, new PermissionQuestion(state, now, command, Right.Lead));
        refused.AddRange(command switch
        {
            EndJob => JobEnds.AgainstEnding(state, now, job),
            ResumeJob when job is { ClosedBy: 0, OnHold: null } => [new HoldPoint(HoldReason.NotOnHold) { Job = id }],
            PutJobOnHold => JobEnds.Against(job),
            _ => JobEnds.Against(job, mayBeOnHold: true),
        });
        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept((Entry)(command switch
        {
            EndJob end => new JobEnded(id, end.Shown),
            PutJobOnHold hold => new JobPutOnHold(id, hold.Reason),
            ResumeJob resume => new JobResumed(id, JobEnds.RunDownAgain(state, job), resume.Shown),
            CancelJob cancel => new JobCancelled(id, cancel.Reason, cancel.Shown),
            TakeJobBack wrong => new JobTakenBack(id, JobEnds.LeftOpen(state, now, job), wrong.Reason, wrong.Shown),
            _ => throw new ArgumentOutOfRangeException(nameof(command), command.GetType().Name, "Not a command on a job."),
        }));
    }
}
