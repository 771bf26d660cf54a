using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Revisions;

/// <summary>What becomes of work under a procedure that is revised.</summary>
internal static class RevisionRules
{
    private const string Adopted = "the lead adopts a revision per job, signed";
    private const string Same = "records under another value: the same";
    private const string Outside = "records under another value: now out of range";
    private const string Gone = "records under another value: step gone";
    private const string Cleared = "A hold is cleared only by its decision";

    public static RuleBook<RevisedJob> Book() => Faults(
        new RuleBook<RevisedJob>("Revisions", default, job => job.ToString())
            .Action("Open", _ => true, job => job.Open())
            .Action("Pull", job => job is { Made: null, Hold: RevisedHold.None, By: not Revised.WithoutIt }, job => job.Pull())
            .Action("Sign", job => job.By != Revised.WithoutIt, job => job.Sign())
            .Action("Adopt", RevisedJob.Revisions, (job, revision) => revision != Revised.WithoutIt || job.Made is not null, (job, revision) => job.Adopt(revision))
            .Action("Adopt without the lead's right", _ => true, job => job.Refused())
            .Action("Use as is", _ => true, job => job.Decide(use: true))
            .Action("Rework", _ => true, job => job.Decide(use: false))
            .Whenever("revision", "ONLY-BY-THE-LEAD", Adopted, (before, after) => before.By != after.By, (_, after) => after.Granted)
            .On("Adopt without the lead's right", "revision", "NOT-WITHOUT-THE-RIGHT", Adopted, (_, _) => true, (before, after) => after == before with { Granted = false })
            .On("Adopt", "revision", "SAME-STANDS", Same, (before, after) => after.Granted && RevisedJob.AreAlike(before.By, after.By),
                (before, after) => (after.Hold, after.Signed) == (before.Hold, before.Signed))
            .On("Adopt", "revision", "OUTSIDE-IS-HELD", Outside, (before, after) => after.Granted && !RevisedJob.AreAlike(before.By, after.By) && before.Made is { } made && !RevisedJob.AreAlike(made, after.By), (_, after) => after.Hold != RevisedHold.None)
            .On("Adopt", "revision", "TOUCHED-STEP-FALLS", Outside, (before, after) => after.Granted && !RevisedJob.AreAlike(before.By, after.By), (_, after) => !after.Signed)
            .On("Adopt", "revision", "WORK-IS-NOT-LOST", Gone, (before, _) => before.Made is not null, (_, after) => after.By != Revised.WithoutIt)
            .On("Adopt", "7", "NO-REVISION-CLEARS", Cleared, (before, _) => before.Hold != RevisedHold.None, (_, after) => after.Hold != RevisedHold.None)
            .Always("revision", "SIGNED-AS-ASKED", Adopted, job => !job.Signed || job.Counts)
            .Ends("revision", "DONE-ANEW", "Held under the newer revision, reworked, pulled and signed by it", job => job is { By: Revised.OtherTorque, Made: Revised.OtherTorque, Signed: true })
            .Ends("revision", "USED-AS-IT-IS", "Held under the newer revision, used as it is and signed", job => job is { By: Revised.OtherTorque, Made: Revised.First, Signed: true }));

    private static RuleBook<RevisedJob> Faults(RuleBook<RevisedJob> book) => book
        .Fault("a refused revision is taken over", "ONLY-BY-THE-LEAD", "Adopt", (_, after) => !after.Granted && after.By == Revised.First, (_, job) => job with { By = Revised.SameAgain })
        .Fault("an author takes a revision over for a job", "NOT-WITHOUT-THE-RIGHT", "Adopt without the lead's right", (_, _) => true, (_, job) => job with { Granted = true })
        .Fault("better words cost every signature", "SAME-STANDS", "Adopt", (before, after) => after.Granted && before.Signed && after.Signed, (_, job) => job with { Signed = false })
        .Fault("a torque of the old sheet goes on counting", "OUTSIDE-IS-HELD", "Adopt", (before, after) => before.Hold == RevisedHold.None && after.Hold == RevisedHold.Waits, (_, job) => job with { Hold = RevisedHold.None })
        .Fault("a step signed by the old sheet stays signed", "TOUCHED-STEP-FALLS", "Adopt", (before, after) => before.Signed && !after.Signed, (_, job) => job with { Signed = true })
        .Fault("the pulls of a group vanish with it", "WORK-IS-NOT-LOST", "Adopt", (before, after) => before.Made is not null && !after.Granted && after.By == Revised.First, (_, job) => job with { By = Revised.WithoutIt, Granted = true })
        .Fault("the next revision lifts the hold of the last", "NO-REVISION-CLEARS", "Adopt", (before, after) => before.Hold == RevisedHold.Waits && after.Granted && after is { By: not Revised.OtherTorque, Made: null }, (_, job) => job with { Hold = RevisedHold.None })
        .Fault("a held nut is signed", "SIGNED-AS-ASKED", "Sign", (before, after) => before.Hold == RevisedHold.Waits && !after.Granted, (_, job) => job with { Signed = true });
}
