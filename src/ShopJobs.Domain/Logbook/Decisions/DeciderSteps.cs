using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// A step is done, and is signed: at once, later, or together with others.
public static partial class Decider
{
    // It lets the same hand go on, and is no signature: what is asked of that is asked of it.
    private static Verdict Finish(CarState state, FinishStep finish, Circumstances now, HoldRules rules)
    {
        if (!state.Jobs.TryGetValue(finish.Job, out var job) || now.Placed(job) is not { } placed || placed.Step(finish.Step) is not { } step)
        {
            return Refuse(HoldReason.UnknownStep);
        }

        var refused = Permissions(rules, new PermissionQuestion(state, now, finish, Right.Record));
        refused.AddRange(rules.OnStep(new StepQuestion(state, now, job, placed, step, new StepAnswers(finish.Ticks, finish.Values)) { ForWork = true }));
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new StepFinished(finish.Job, finish.Step, finish.Ticks, finish.Values, SignOffs.RestsOn(state, job, placed, step), now.Session));
    }

    private static Verdict Confirm(CarState state, ConfirmStep confirm, Circumstances now, HoldRules rules)
    {
        if (!state.Jobs.TryGetValue(confirm.Job, out var job) || now.Placed(job).Step(confirm.Step) is not { } step)
        {
            return Refuse(HoldReason.UnknownStep);
        }

        if (confirm is { NotApplicable: false, With.Count: > 0 })
        {
            return ConfirmTogether(state, confirm, now, rules, job, step);
        }

        var placed = now.Placed(job);
        var question = new StepQuestion(state, now, job, placed, step, new StepAnswers(confirm.Ticks, confirm.Values));
        var refused = Permissions(rules, new PermissionQuestion(state, now, confirm, RightFor(confirm, now)));
        if (!confirm.NotApplicable)
        {
            refused.AddRange(rules.OnStep(question));
        }
        else
        {
            refused.AddRange(NotApplicableHolds(rules, question, confirm));
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new StepConfirmed(
            confirm.Job, confirm.Step, confirm.Ticks, confirm.Values, SignOffs.RestsOn(state, job, placed, step),
            confirm.NotApplicable, confirm.Reason, confirm.Shown)
        {
            ByTrainee = !confirm.NotApplicable && !now.May(Right.Record) ? true : null,
        });
    }

    // One PIN for several: each is asked for all that its own signature is, and becomes an entry of its own.
    private static Verdict ConfirmTogether(CarState state, ConfirmStep confirm, Circumstances now, HoldRules rules, JobBook job, StepInstance step)
    {
        var placed = now.Placed(job);
        var finished = state.FinishedBefore(now.Person, job, placed, step).Where(before => before.Place == step.Place && confirm.With!.Contains(before.Id)).ToList();
        var together = finished.ConvertAll(before => before.Id);
        var refused = Permissions(rules, new PermissionQuestion(state, now, confirm, Right.Record));
        if (confirm.With!.Except(together).Any())
        {
            refused.Add(new HoldPoint(HoldReason.NotFinished) { Job = confirm.Job, Step = confirm.Step });
        }

        refused.AddRange(finished.Append(step).Where(FinishedSteps.IsSignedByItself)
            .Select(alone => new HoldPoint(HoldReason.SignedByItself) { Job = confirm.Job, Step = alone.Id, Name = alone.Title() }));
        var answered = finished.ConvertAll(before => (Step: before, Answers: new StepAnswers(job.Finished[before.Id].Fact.Ticks, job.Finished[before.Id].Fact.Values)));
        var entries = new List<StepConfirmed>();
        foreach (var (signed, answers) in answered.Append((step, new StepAnswers(confirm.Ticks, confirm.Values))))
        {
            refused.AddRange(rules.OnStep(new StepQuestion(state, now, job, placed, signed, answers) { With = together }));
            entries.Add(new StepConfirmed(
                confirm.Job, signed.Id, answers.Ticks, answers.Values, SignOffs.RestsOn(state, job, placed, signed), false, null, confirm.Shown));

            // The next one rests on this one, which becomes the next entry of the book.
            var sign = new SignOff(state.Number + entries.Count, now.At, now.Person, entries[^1]);
            job = job with { SignOffs = job.SignOffs.SetItem(signed.Id, sign) };
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(entries);
    }

    // A trainee signs too: it counts once somebody who stood by has countersigned.
    private static Right RightFor(ConfirmStep confirm, Circumstances now) => confirm.NotApplicable ? Right.Lead
        : now.May(Right.Trainee) && !now.May(Right.Record) ? Right.Trainee
        : Right.Record;

    private static IEnumerable<HoldPoint> NotApplicableHolds(HoldRules rules, StepQuestion question, ConfirmStep confirm)
    {
        foreach (var point in rules.WaitsFor(question))
        {
            yield return point;
        }

        if (question.State.StandingOf(question.Job, question.Placed, question.Step) == StepStanding.Signed)
        {
            yield return new HoldPoint(HoldReason.AlreadySigned) { Job = confirm.Job, Step = confirm.Step };
        }

        if (confirm.Reason is null)
        {
            yield return new HoldPoint(HoldReason.ReasonMissing) { Job = confirm.Job, Step = confirm.Step };
        }

        var touched = question.Step.Work.SelectMany(work => work.Instance.Positions).Where(position =>
            question.State.Of(position) is { IsAsFound: false } book && !question.State.IsAtTorque(book)).ToList();
        if (touched.Count > 0)
        {
            yield return new HoldPoint(HoldReason.WorkBegun) { Job = confirm.Job, Step = confirm.Step, Position = touched[0] };
        }
    }
}
