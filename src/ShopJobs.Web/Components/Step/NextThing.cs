using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarResults;

namespace ShopJobs.Web.Components.Step;

/// <summary>The one thing of a step that is next, which the screen offers at its one place.</summary>
public abstract record NextThing
{
    private NextThing()
    {
    }

    /// <summary>Nothing is to be done here now: the step is signed, or waits for what is before it.</summary>
    public sealed record GoOn : NextThing;

    /// <summary>Somebody stopped half way: whoever goes on looks at the last fastener first.</summary>
    public sealed record TakeOver(HalfDone Half) : NextThing;

    /// <summary>A trainee signed: whoever stood by answers for it.</summary>
    public sealed record Countersign(ShopJobs.Domain.Logbook.SignOff Signed) : NextThing;

    /// <summary>A joint that this step takes apart is not open yet.</summary>
    public sealed record Open(StepJoint Joint) : NextThing;

    /// <summary>What its joints ask.</summary>
    public sealed record Work(NextAction Action) : NextThing;

    /// <summary>A tick or a value that is missing, or a result: the field stands beside, and this leads to it.</summary>
    /// <param name="Words">What is asked.</param>
    /// <param name="Field">The id of what is to be touched.</param>
    public sealed record Answer(string Words, string Field) : NextThing;

    /// <summary>All that it asks is there: it is signed, or said to be done.</summary>
    public sealed record SignOff : NextThing;

    /// <summary>What is next on a step, with the ticks and values that are given so far.</summary>
    /// <param name="half">Work that stands half done and asks to be looked at; null where none does.</param>
    public static NextThing Of(StepScene scene, StepAnswersDraft draft, HalfDone? half)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(draft);
        return scene.Standing == StepStanding.Signed || scene.Gate.Count > 0 ? new GoOn()
            : half is not null ? new TakeOver(half)
            : scene.Next is NextAction.CountersignStep { Sign: var signed } ? new Countersign(signed)
            : StepJoint.OpenedBy(scene).FirstOrDefault(joint => joint.Open < joint.Positions.Count) is { } joint ? new Open(joint)
            : IsMarkedFirst(scene) && Ticks(scene, draft).FirstOrDefault() is { } mark ? mark
            : scene.Next is not NextAction.Done ? new Work(scene.Next)
            : (NextThing?)Missing(scene, draft) ?? new SignOff();
    }

    // Whoever did it ticks what is done, the mark with it, before a second person is called to look.
    private static bool IsMarkedFirst(StepScene scene) =>
        scene.Next is NextAction.Look && scene.State.AwaitingWitness(scene.Step).Any(awaited => awaited.Workers.Contains(scene.Here.Person));

    private static IEnumerable<Answer> Ticks(StepScene scene, StepAnswersDraft draft) =>
        scene.Step.Step.Ticks.Where(tick => !draft.IsTicked(tick)).Select(tick => new Answer($"tick “{tick.Text}”", StepAnswersDraft.FieldOf(tick)));

    private static Answer? Missing(StepScene scene, StepAnswersDraft draft) =>
        Ticks(scene, draft)
            .Concat(scene.Step.Step.Measures.Where(measure => draft.Text(measure).Length == 0 || draft.Problem(measure) is not null)
                .Select(measure => new Answer($"measure “{measure.Text}”", StepAnswersDraft.FieldOf(measure))))
            .Concat(scene.Placed.RecordsAt(scene.Step)
                .Where(name => ResultLook.Of(scene.Reading).First(look => look.Name == name).Why(scene.Reading) is not null)
                .Select(name => new Answer($"record {scene.Reading.Now.Register.NameOfResult(name)}", ResultPanel.IdOf(name))))
            .FirstOrDefault();
}
