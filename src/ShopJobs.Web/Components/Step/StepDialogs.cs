using System.Globalization;
using System.Text;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Step;

/// <summary>What the dialogs of a step show, and so what is signed.</summary>
internal static class StepDialogs
{
    /// <summary>The sign-off: car, step, every tick, value and record it rests on.</summary>
    public static ToSign<SignedCommand> ToSign(StepScene scene, StepAnswers answers) => ToSign(scene, scene.Step, answers, scene.SignedWith);

    /// <summary>The sign-off of steps that were finished before: each is named, with all of its own.</summary>
    public static ToSign<SignedCommand> ToSign(StepScene scene, IReadOnlyList<StepInstance> finished) =>
        ToSign(scene, finished[^1], Said(scene, finished[^1]), [.. finished.SkipLast(1)]);

    /// <summary>What stands on the button that signs so many.</summary>
    public static string SignWords(int steps) => steps == 1 ? "SIGN: done by me" : FormattableString.Invariant($"SIGN {steps} STEPS: done by me");

    /// <summary>What is said where the work goes on after the step, and those finished before it, are signed.</summary>
    public static string Signed(StepScene scene) => $"Signed: {string.Join("; ", scene.SignedWith.Append(scene.Step).Select(step => step.Title()))}.";

    private static ToSign<SignedCommand> ToSign(StepScene scene, StepInstance step, StepAnswers answers, IReadOnlyList<StepInstance> with) => new(
        new SignRequest(
            SignWords(with.Count + 1),
            with.Count == 0 ? $"{CarOf(scene)}: {step.Title()}" : $"{CarOf(scene)}: {with.Count + 1} steps{(step.Place is null ? "" : $", {step.Place}")}",
            [
                ProcedureOf(scene),
                .. with.Select(one => LineOf(scene, one, Said(scene, one))),
                .. with.Count == 0 ? LinesOf(scene, step, answers) : [LineOf(scene, step, answers)],
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = Right.Record, OrNeeds = with.Count == 0 ? Right.Trainee : null, Only = with.Count == 0 ? null : scene.Here.Person },
        shown => scene.State.AsShown(
            scene.Reading.Now,
            new ConfirmStep(scene.Job.Id, step.Id, answers.Ticks, answers.Values, false, null, shown) { With = with.Count == 0 ? null : [.. with.Select(one => one.Id)] }));

    private static StepAnswers Said(StepScene scene, StepInstance finished) =>
        scene.Job.Finished[finished.Id].Fact is var said ? new StepAnswers(said.Ticks, said.Values) : StepAnswers.None;

    /// <summary>The answer for a step that a trainee signed: all that he signed, and who it was.</summary>
    public static ToSign<SignedCommand> ToCountersign(StepScene scene, SignOff sign) => new(
        new SignRequest(
            "COUNTERSIGN: I stood by",
            $"{CarOf(scene)}: {scene.Step.Title()}",
            [
                $"Signed by {scene.NameOf(sign.Person)}, a trainee",
                ProcedureOf(scene),
                .. LinesOf(scene, scene.Step, new StepAnswers(sign.Fact.Ticks, sign.Fact.Values)),
                "Whoever signs has the right to record, stood by at this step and answers for it like the doer.",
            ],
            new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Record,
            NotThese = new HashSet<PersonId> { sign.Person },
        },
        shown => scene.State.AsShown(scene.Reading.Now, new Countersign([sign.Number], shown)));

    private static string ProcedureOf(StepScene scene) => $"{scene.Placed.Procedure.Code} {scene.Placed.Procedure.Title}, revision {scene.Placed.Procedure.Revision}";

    // Several steps stand above one PIN pad: a line each.
    private static string LineOf(StepScene scene, StepInstance step, StepAnswers answers)
    {
        var ticked = TickedOf(step, answers).ToList();
        IReadOnlyList<string> all = [.. ticked.Count == 0 ? [] : new[] { $"ticked {string.Join(", ", ticked.Select(tick => $"“{tick}”"))}" }, .. FiguresOf(scene, step, answers)];
        return all.Count == 0 ? step.Step.Title : $"{step.Step.Title}: {string.Join("; ", all)}";
    }

    private static IEnumerable<string> LinesOf(StepScene scene, StepInstance step, StepAnswers answers) =>
        [.. TickedOf(step, answers).Select(tick => $"Ticked: {tick}"), .. FiguresOf(scene, step, answers)];

    private static IEnumerable<string> TickedOf(StepInstance step, StepAnswers answers) =>
        step.Step.Ticks.Where(tick => answers.Ticks.Contains(tick.Id)).Select(tick => tick.Text);

    private static IEnumerable<string> FiguresOf(StepScene scene, StepInstance step, StepAnswers answers) =>
    [
        .. answers.Values.Select(value => $"{step.Step.Measures.First(measure => measure.Id == value.Name).Text}: {value.Amount()}"),
        .. from work in step.Work
           where !work.Instance.Group.Temporary
           from stage in work.Stages
           select $"{StepScene.NameOf(work.Instance)}{NextWords.StageOf(work.Instance.Group, work.Instance.Group.Stages[stage - 1])}: {RecordsOf(scene, work.Instance, stage)}",
    ];

    /// <summary>The witness's signature: which records, how they were looked at, and what was found.</summary>
    /// <summary>What a second person looks at: the paint marks, where the procedure names nothing else.</summary>
    public static string MarkOf(JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return group.Mark ?? "the paint marks";
    }

    /// <summary>What a witness checked: "these 5", or "it".</summary>
    public static string These(GroupInstance instance) => instance.Count == 1 ? "it" : FormattableString.Invariant($"these {instance.Count}");

    public static ToSign<SignedCommand> ToWitness(StepScene scene, WitnessAsked asked, string? finding)
    {
        var (instance, stage) = (asked.Awaited.Instance, asked.Awaited.Stage);
        var text = finding is null ? null : NewContent.Of(Encoding.UTF8.GetBytes(finding));
        return new ToSign<SignedCommand>(
            new SignRequest(
                asked.Accepted ? $"WITNESS: I checked {These(instance)}" : "WITNESS: not good",
                $"{CarOf(scene)}: {StepScene.NameOf(instance)}{NextWords.StageOf(instance.Group, stage)}",
                [
                    RecordsOf(scene, asked.Awaited.Pulls),
                    asked.Method == WitnessMethod.LookedAtMark ? $"Checked: {MarkOf(instance.Group)}, every one" : "Checked: first movement with a wrench",
                    .. finding is null ? Array.Empty<string>() : [$"Finding: {finding}"],
                ],
                new CommandId(Guid.NewGuid()))
            {
                Needs = Right.Witness,
                NotThese = asked.Awaited.Workers,
            },
            shown => scene.State.AsShown(scene.Reading.Now, new Witness(
                scene.Job.Id, instance.Group.Id, instance.Place, stage.Number, asked.Method, asked.Accepted, text?.Digest, shown)),
            text);
    }

    /// <summary>The sign-off of a step that does not apply to this car.</summary>
    public static ToSign<SignedCommand> ToSkip(StepScene scene, string reason)
    {
        var text = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return new ToSign<SignedCommand>(
            new SignRequest(
                "SIGN: does not apply",
                $"{CarOf(scene)}: {scene.Step.Title()}",
                [$"Not applicable on this car: {reason}", "It is no result for the steps after it."],
                new CommandId(Guid.NewGuid()))
            { Needs = Right.Lead },
            shown => scene.State.AsShown(scene.Reading.Now, new ConfirmStep(scene.Job.Id, scene.Step.Id, [], [], true, text.Digest, shown)),
            text);
    }

    /// <summary>What the witness found wrong.</summary>
    public static ReasonAsked Finding(WitnessAsked asked) => new(
        "Not good", $"What is wrong with {StepScene.NameOf(asked.Awaited.Instance)}? All its records of this stage are held.", "Go on to sign",
        ["a mark is missing", "a mark has moved", "it moved before the torque", "wrong hardware"]);

    /// <summary>Why a step does not apply.</summary>
    public static ReasonAsked NotApplicable(StepScene scene) => new(
        "Does not apply", $"Why does “{scene.Step.Title()}” not apply to this car?", "Go on to sign", ["the car has no such part", "done by another procedure"]);

    /// <summary>Why the last entry is undone.</summary>
    public static ReasonAsked Undo(LastEntry entry) => new(
        "Undo the last record", $"Recorded: {entry.Words}. {entry.AboutTurn}".TrimEnd(), entry.AboutTurn is null ? "VOID IT" : "VOID AND HOLD IT", ["wrong position", "not done yet", "wrong tool"])
    {
        Restates = entry.Unit,
        AsksPulled = !entry.IsPull ? null : entry.AboutTurn is null ? "Was it pulled?" : "Was it turned?",
    };

    /// <summary>The right value of a pull that was typed wrong.</summary>
    public static ToSign<SignedCommand> ToRestate(StepScene scene, LastEntry entry, EnteredTorque value, string reason)
    {
        var text = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return new ToSign<SignedCommand>(
            new SignRequest(
                "SIGN: corrected by me",
                $"{CarOf(scene)}: the number was typed wrong",
                [
                    $"Recorded: {entry.Words}",
                    $"It should read {value}",
                    $"Why: {reason}",
                    "If it did not count, the right number counts when a second person has confirmed it.",
                ],
                new CommandId(Guid.NewGuid()))
            { Only = scene.Here.Person },
            shown => new Restate(entry.Number, value, text.Digest, shown) { Covers = entry.Covers },
            text);
    }

    /// <summary>The answer for pulls of somebody without the right.</summary>
    public static ToSign<SignedCommand> ToCountersign(StepScene scene, IReadOnlyList<Pull> pulls) => new(
        new SignRequest(
            "COUNTERSIGN: I stood by",
            $"{CarOf(scene)}: {scene.Step.Title()}",
            [
                RecordsOf(scene, pulls),
                "Whoever signs has the right to record, stood by at every one of these pulls and answers for them like the doer.",
            ],
            new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Record,
            NotThese = pulls.Select(pull => pull.Person).ToHashSet(),
        },
        shown => scene.State.AsShown(scene.Reading.Now, new Countersign([.. pulls.Select(pull => pull.Number).Order()], shown)));

    /// <summary>Why the work is stopped, and what of it.</summary>
    public static ReasonAsked Hold(IReadOnlyList<HoldOffer> offers) => new(
        "Hold, call the lead",
        "Nothing goes on there until somebody with the right, who did not do it, decides.",
        "HOLD",
        ["thread is damaged", "it broke", "it keeps turning (thread stripped?)", "wrong part", "I am not sure"])
    {
        Abouts = [.. offers.Select(offer => new ReasonAbout(offer.Words, offer.AsksLot))],
    };

    /// <summary>What can be held from this step: the fasteners in question first, where it has any; the step; a part in hand.</summary>
    /// <param name="touched">The fastener that was touched on the picture; null where none was.</param>
    public static IReadOnlyList<HoldOffer> ToHold(StepScene scene, JointPosition? touched)
    {
        var fasteners = scene.Step.Work.Count == 0 ? [] : touched is { } one ? [one] : ToHold(scene);
        var step = new HoldOffer($"This step: {scene.Step.Title()}", given => new HoldWork(given.Reason) { Job = scene.Job.Id, Step = scene.Step.Id });
        var nuts = fasteners.Count == 0 ? null : new HoldOffer(
            fasteners.Count == 1 ? scene.Reading.Now.Name(fasteners[0]) : $"{fasteners.Count} fasteners: {JointLineWords.NamesOf(scene.Reading, scene.Names).Positions(fasteners)}",
            given => new HoldPositions(fasteners, given.Reason));
        var part = new HoldOffer(
            "A part in hand: lot or kit",
            given => new HoldWork(given.Reason) { Lot = given.Lot, Job = scene.Job.Id, Group = scene.Shown?.Instance.Group.Id })
        { AsksLot = true };
        return [.. new[] { scene.Standing == StepStanding.Signed && touched is null ? null : nuts, step, scene.Standing == StepStanding.Signed && touched is null ? nuts : null, part }.OfType<HoldOffer>()];
    }

    /// <summary>What HOLD is about: the position that is next, else all of the group on the screen.</summary>
    private static IReadOnlyList<JointPosition> ToHold(StepScene scene) => scene.Next switch
    {
        NextAction.PullNow { Cell: var cell } => [cell.Position],
        NextAction.TakeOff off => off.Positions,
        NextAction.Fit fit => fit.Positions,
        NextAction.Prepare prepare => prepare.Positions,
        NextAction.ByHand hand => hand.Positions,
        NextAction.Stopped stopped => [stopped.Position],
        _ => [.. scene.Shown!.Instance.Positions],
    };

    private static string CarOf(StepScene scene) => scene.Car.Mark.Length > 0
        ? $"{scene.Car.Name}, {scene.Car.Model}, {scene.Car.Mark}"
        : $"{scene.Car.Name}, {scene.Car.Model}";

    private static string RecordsOf(StepScene scene, GroupInstance instance, int stage) =>
        RecordsOf(scene, instance.Positions.SelectMany(position => scene.State.Of(position).Newest(stage)));

    // Fasteners with the same words stand together: "1 to 5 clicked at 110 N·m (W7, Jorn)".
    private static string RecordsOf(StepScene scene, IEnumerable<Pull> pulls) => string.Join(
        "; ",
        pulls.GroupBy(pull => $"{RecordWords.Of(pull)} ({scene.Reading.Now.Tool(pull.Fact.Tool).Tool?.Name ?? "unknown tool"}, {scene.NameOf(pull.Person)})")
            .Select(same => $"{EntryNames.Numbers(same.Select(pull => (long)pull.Fact.Position.Number))} {same.Key}"));
}
