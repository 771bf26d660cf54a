using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.WrongCars;

/// <summary>A job put on the wrong car and taken back.</summary>
internal static class WrongCarRules
{
    private const string TakenBack = "A job taken back leaves its openings standing unless each is voided and confirmed";
    private const string Fall = "its unsigned steps fall when no joint it opened is unclosed";

    private static readonly int[] Joints = [1, 2];

    public static RuleBook<WrongJob> Book() => Faults(
        new RuleBook<WrongJob>("Wrong car", WrongJob.Start, job => job.ToString())
            .Action("Open", Joints, (job, joint) => job.Of(joint) == Touched.Not && !job.TakenBack, (job, joint) => job.With(joint, Touched.Open, People.Nobody))
            .Action("Take the job back", job => !job.TakenBack, job => job.TakeBack())
            .Action("Say it was never opened", Word.All, (job, word) => job.Of(word.Joint) == Touched.Open, (job, word) => job.With(word.Joint, Touched.OpenVoided, word.By))
            .Action("Confirm", Word.All, (job, word) => job.Of(word.Joint) == Touched.OpenVoided, (job, word) => job.Confirm(word))
            .Action("Close by another job", Joints, (job, joint) => job.Of(joint) is Touched.Open or Touched.OpenVoided, (job, joint) => job.With(joint, Touched.Closed, People.Nobody))
            .Action("Release", _ => true, job => job.AskRelease())
            .On("Take the job back", "wrong car", "OPENINGS-STAND", TakenBack,
                (before, _) => before.Unclosed, (before, after) => (after.First, after.Second) == (before.First, before.Second))
            .On("Confirm", "wrong car", "VOIDED-AND-CONFIRMED", TakenBack,
                (before, after) => after.First != before.First || after.Second != before.Second,
                (before, after) => (after.First == before.First || after.First == Touched.Not) && (after.Second == before.Second || after.Second == Touched.Not))
            .On("Say it was never opened", "wrong car", "ONE-WORD-IS-NOT-ENOUGH", TakenBack,
                (_, _) => true, (before, after) => after.Unclosed == before.Unclosed)
            .Whenever("wrong car", "STEPS-FALL", Fall,
                (_, after) => after is { TakenBack: true, Unclosed: false }, (_, after) => !after.Unsigned)
            .Always("wrong car", "STEPS-STAY", Fall, job => job.Unsigned || job is { TakenBack: true, Unclosed: false })
            .On("Release", "11", "NOTHING-CLOSES-IT", "\"nothing closes this joint\" holds until then", (_, after) => after.Released, (before, _) => !before.Unclosed)
            .Ends("wrong car", "WAY-BACK", "Job on the wrong car with two joints opened: one closed, one taken back, the car goes",
                job => job is { First: Touched.Closed, Second: Touched.Not, TakenBack: true, Released: true }));

    private static RuleBook<WrongJob> Faults(RuleBook<WrongJob> book) => book
        .Fault("a job taken back closes what it opened", "OPENINGS-STAND", "Take the job back",
            (before, _) => before.Unclosed, (_, job) => job with { First = Touched.Not, Second = Touched.Not, Unsigned = false })
        .Fault("a confirmed word makes a joint closed that nobody closed", "VOIDED-AND-CONFIRMED", "Confirm",
            (before, after) => before.First == Touched.OpenVoided && after.First == Touched.Not, (_, job) => job with { First = Touched.Closed })
        .Fault("one person says that it was never opened", "ONE-WORD-IS-NOT-ENOUGH", "Say it was never opened",
            (_, _) => true, (_, job) => job with { First = Touched.Not, Second = Touched.Not })
        .Fault("steps of a job that was taken back ask for ever", "STEPS-FALL", "Take the job back",
            (before, _) => !before.Unclosed, (_, job) => job with { Unsigned = true })
        .Fault("steps fall while a joint is open", "STEPS-STAY", "Take the job back",
            (before, _) => before.Unclosed, (_, job) => job with { Unsigned = false })
        .Fault("the car is released with an opened joint", "NOTHING-CLOSES-IT", "Release",
            (before, _) => before.Unclosed, (_, job) => job with { Released = true });
}
