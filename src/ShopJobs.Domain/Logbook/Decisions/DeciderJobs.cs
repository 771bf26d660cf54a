using ShopJobs.Domain.Procedures;

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
            AdoptRevision adopt => AgainstAdopting(state, adopt, job, now),
            ResumeJob when job is { ClosedBy: 0, OnHold: null } => [new HoldPoint(HoldReason.NotOnHold) { Job = id }],
            PutJobOnHold => JobEnds.Against(job),
            _ => JobEnds.Against(job, mayBeOnHold: true),
        });
        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept((Entry)(command switch
        {
            AdoptRevision adopt => Adopted(state, adopt, job, now),
            EndJob end => new JobEnded(id, end.Shown),
            PutJobOnHold hold => new JobPutOnHold(id, hold.Reason),
            ResumeJob resume => new JobResumed(id, JobEnds.RunDownAgain(state, job), resume.Shown),
            CancelJob cancel => new JobCancelled(id, cancel.Reason, cancel.Shown),
            TakeJobBack wrong => new JobTakenBack(id, JobEnds.LeftOpen(state, now, job), wrong.Reason, wrong.Shown),
            _ => throw new ArgumentOutOfRangeException(nameof(command), command.GetType().Name, "Not a command on a job."),
        }));
    }

    private static IEnumerable<HoldPoint> AgainstAdopting(CarState state, AdoptRevision adopt, JobBook job, Circumstances now)
    {
        var against = JobEnds.Against(job, mayBeOnHold: true).Concat(AgainstFit(state, adopt.Procedure, job.Fact.Places, now)).ToList();
        if (adopt.Procedure.Code != job.Fact.Procedure)
        {
            return [.. against, new HoldPoint(HoldReason.OtherProcedure) { Name = job.Fact.Procedure }];
        }

        if (adopt.ProcedureDigest == job.Fact.ProcedureDigest)
        {
            return [.. against, new HoldPoint(HoldReason.SameRevision) { Name = job.Fact.Revision }];
        }

        // Where the procedure does not fit the car it is not placed on it.
        return against.Count > 0 ? against
            : RevisionEffect.Of(state, now, job, new PlacedProcedure(adopt.Procedure, now.Register, [.. job.Fact.Places])).Gone
                .Select(group => new HoldPoint(HoldReason.WorkIsGone) { Name = group.Name });
    }

    private static RevisionAdopted Adopted(CarState state, AdoptRevision adopt, JobBook job, Circumstances now)
    {
        var effect = RevisionEffect.Of(state, now, job, new PlacedProcedure(adopt.Procedure, now.Register, [.. job.Fact.Places]));
        return new RevisionAdopted(
            job.Id, adopt.Procedure.Revision, adopt.ProcedureDigest, adopt.RegisterDigest,
            [.. effect.Steps.Select(step => step.Id)],
            [.. effect.Pulls.Where(pull => pull.Match != RevisionMatch.Passes).Select(pull => pull.Pull.Number).Order()],
            adopt.Shown)
        {
            Joints = state.Joints.Equals(JointList.OfTheRegister) ? null : state.Joints,
        };
    }
}
