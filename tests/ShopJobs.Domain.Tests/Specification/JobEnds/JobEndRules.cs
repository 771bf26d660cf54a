using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.JobEnds;

/// <summary>How a job ends, rests, goes on and is given up.</summary>
internal static class JobEndRules
{
    private const string Lead = "The lead ends a job, puts it on hold, resumes it and cancels it";
    private const string All = "it ends when every step is signed";
    private const string Rests = "while it is on hold what is reported is recorded and does not count, and nothing is signed";
    private const string Holds = "a job on hold holds the releases as before";
    private const string Back = "when it is resumed what was said of the car's condition has ended, and what is not at torque is run down again";
    private const string Stays = "what is at torque and what was signed stands";
    private const string Given = "Cancelled, its unsigned steps fall and what it opened stays open";

    public static RuleBook<RestingJob> Book() => Faults(
        new RuleBook<RestingJob>("Ends of a job", default, job => job.ToString())
            .Action("Open", job => job.Nut != Nut.Open && job.Nut != Nut.Held, job => job.Open())
            .Action("Decide and back off", job => job.Nut == Nut.Held, job => job.Open())
            .Action("Run down by hand", job => job is { Nut: Nut.Open, Asks: true }, job => job.RunDown())
            .Action("Say the condition", job => job is { Condition: false, Released: false }, job => job with { Condition = true })
            .Action("Pull", job => job is { Nut: Nut.HandTight, Asks: true, Condition: true }, job => job.Pull())
            .Action("Sign", _ => true, job => job.Sign())
            .Action("Put on hold", RestingJob.Askers, (_, _) => true, (job, by) => job.PutOnHold(by))
            .Action("Resume", RestingJob.Askers, (_, _) => true, (job, by) => job.Resume(by))
            .Action("Cancel", RestingJob.Askers, (_, _) => true, (job, by) => job.Cancel(by))
            .Action("End", RestingJob.Askers, (_, _) => true, (job, by) => job.End(by))
            .Action("Close by another job", job => job is { Asks: false, Nut: Nut.Open or Nut.HandTight }, job => job with { Nut = Nut.AtTorque, Condition = true })
            .Action("Release", _ => true, job => job.AskRelease())
            .On("End", "ends", "END-ALL-SIGNED", All, (_, after) => after.Granted, (before, _) => before is { Signed: true, Job: Job.Runs })
            .Whenever("ends", "THE-LEADS", Lead, (before, after) => before.Job != after.Job, (_, after) => after.Granted)
            .On("Run down by hand", "ends", "ON-HOLD-COUNTS-NOTHING", Rests, (before, _) => before.Job == Job.OnHold, (_, after) => after.Nut == Nut.Open)
            .On("Pull", "ends", "ON-HOLD-PULL-IS-HELD", Rests, (before, _) => before.Job == Job.OnHold, (_, after) => after.Nut == Nut.Held)
            .On("Sign", "ends", "ON-HOLD-SIGNS-NOTHING", Rests, (before, _) => before.Job == Job.OnHold, (before, after) => after.Signed == before.Signed && !after.Granted)
            .On("Release", "ends", "ON-HOLD-HOLDS", Holds, (before, _) => before is { Job: Job.OnHold, Begun: true, Signed: false }, (_, after) => !after.Granted)
            .On("Resume", "ends", "CONDITION-SAID-ANEW", Back, (_, after) => after.Granted, (_, after) => !after.Condition)
            .On("Resume", "ends", "RUN-DOWN-AGAIN", Back, (before, after) => after.Granted && before.Nut == Nut.HandTight, (_, after) => after.Nut == Nut.Open)
            .On("Resume", "ends", "WHAT-COUNTS-STANDS", Stays, (before, after) => after.Granted && before.Nut != Nut.HandTight,
                (before, after) => (after.Nut, after.Signed) == (before.Nut, before.Signed))
            .On("Cancel", "ends", "OPEN-STAYS-OPEN", Given, (_, after) => after.Granted, (before, after) => after.Nut == before.Nut)
            .On("Release", "ends", "NOTHING-CLOSES-IT", "\"nothing closes this joint\" holds every release", (_, after) => after.Granted, (before, _) => before.IsClosed)
            .On("Release", "ends", "STEPS-FALL", Given, (before, _) => before is { Job: Job.Cancelled, IsClosed: true }, (_, after) => after.Granted)
            .Ends("ends", "AFTER-A-HOLD", "Three months on hold: resumed, run down again, pulled, signed and released",
                job => job is { Job: Job.Ended, Nut: Nut.AtTorque, Released: true })
            .Ends("ends", "GIVEN-UP", "Cancelled half done, closed by another job, the car goes",
                job => job is { Job: Job.Cancelled, Begun: true, Nut: Nut.AtTorque, Released: true }));

    private static RuleBook<RestingJob> Faults(RuleBook<RestingJob> book) => book
        .Fault("a job is ended with a step unsigned", "END-ALL-SIGNED", "End", (before, _) => before is { Job: Job.Runs, Signed: false }, (_, job) => job with { Job = Job.Ended, Granted = true })
        .Fault("a technician cancels a job", "THE-LEADS", "Cancel", (before, after) => before.Asks && !after.Granted, (_, job) => job with { Job = Job.Cancelled })
        .Fault("hand-tight counts while the job rests", "ON-HOLD-COUNTS-NOTHING", "Run down by hand", (before, _) => before.Job == Job.OnHold, (_, job) => job with { Nut = Nut.HandTight })
        .Fault("a pull counts while the job rests", "ON-HOLD-PULL-IS-HELD", "Pull", (before, _) => before.Job == Job.OnHold, (_, job) => job with { Nut = Nut.AtTorque })
        .Fault("a step is signed while the job rests", "ON-HOLD-SIGNS-NOTHING", "Sign", (before, _) => before is { Job: Job.OnHold, Signed: false }, (_, job) => job with { Signed = true, Granted = true })
        .Fault("the steps of a job on hold ask no more", "ON-HOLD-HOLDS", "Release", (before, _) => before is { Job: Job.OnHold, Begun: true, Signed: false, IsClosed: true }, (_, job) => job with { Released = true, Granted = true })
        .Fault("the condition of before lasts over a hold", "CONDITION-SAID-ANEW", "Resume", (before, after) => after.Granted && before.Condition, (_, job) => job with { Condition = true })
        .Fault("hand-tight for three months and pulled on", "RUN-DOWN-AGAIN", "Resume", (before, after) => after.Granted && before.Nut == Nut.HandTight, (_, job) => job with { Nut = Nut.HandTight })
        .Fault("a hold voids what counts", "WHAT-COUNTS-STANDS", "Resume", (before, after) => after.Granted && before.Nut == Nut.AtTorque, (_, job) => job with { Nut = Nut.Open })
        .Fault("cancelling closes what the job opened", "OPEN-STAYS-OPEN", "Cancel", (before, after) => after.Granted && before.Nut == Nut.Open, (_, job) => job with { Nut = Nut.AsFound })
        .Fault("the car goes with what a cancelled job opened", "NOTHING-CLOSES-IT", "Release", (before, _) => before is { Job: Job.Cancelled, Nut: Nut.Open }, (_, job) => job with { Released = true, Granted = true })
        .Fault("the steps of a cancelled job ask for ever", "STEPS-FALL", "Release", (before, _) => before is { Job: Job.Cancelled, IsClosed: true }, (_, job) => job with { Released = false, Granted = false });
}
