using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Signatures and decisions: refused with every reason, or recorded.
public static partial class Decider
{
    private static Verdict Confirm(CarState state, ConfirmStep confirm, Circumstances now, HoldRules rules)
    {
        if (!state.Jobs.TryGetValue(confirm.Job, out var job) || now.Placed(job).Step(confirm.Step) is not { } step)
        {
            return Refuse(HoldReason.UnknownStep);
        }

        var placed = now.Placed(job);
        var question = new StepQuestion(state, now, job, placed, step, new StepAnswers(confirm.Ticks, confirm.Values));
        var refused = Permissions(rules, new PermissionQuestion(state, now, confirm, confirm.NotApplicable ? Right.Lead : Right.Record));
        if (!confirm.NotApplicable)
        {
            refused.AddRange(rules.OnStep(question));
        }
        else
        {
            refused.AddRange(NotApplicableHolds(rules, question, confirm));
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new StepConfirmed(
            confirm.Job, confirm.Step, confirm.Ticks, confirm.Values, StepRestsOn(state, job, placed, step),
            confirm.NotApplicable, confirm.Reason, confirm.Shown));
    }

    private static IEnumerable<HoldPoint> NotApplicableHolds(HoldRules rules, StepQuestion question, ConfirmStep confirm)
    {
        foreach (var point in rules.BeforeStart(question))
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

    private static IReadOnlyList<long> StepRestsOn(CarState state, JobBook job, PlacedProcedure placed, StepInstance step)
    {
        var numbers = new SortedSet<long>(placed.Before(step).Select(before => job.SignOffs.GetValueOrDefault(before.Id)?.Number ?? 0));
        foreach (var work in step.Work.Where(work => !work.Instance.Group.Temporary))
        {
            var pulls = work.Instance.Positions.Select(state.Of).SelectMany(book => work.Stages.SelectMany(book.Newest));
            numbers.UnionWith(pulls.SelectMany(pull => pull.Fact.RestsOn.Append(pull.Number).Append(pull.WitnessedBy ?? 0)));
        }

        var results = step.Step.WaitsFor.OfType<WaitsFor.ForResult>().Select(wait => wait.Name).Concat(step.Step.Records);
        numbers.UnionWith(results.Select(name => state.Results.GetValueOrDefault(name)?.Number ?? 0));
        numbers.Remove(0);
        return [.. numbers];
    }

    private static Verdict Look(CarState state, Witness witness, Circumstances now, HoldRules rules)
    {
        if (!state.Jobs.TryGetValue(witness.Job, out var job) || now.Placed(job).Group(witness.Group, witness.Place) is not { } instance)
        {
            return Refuse(HoldReason.UnknownGroup);
        }

        var books = instance.Positions.Select(state.Of).ToList();
        var refused = Permissions(rules, new PermissionQuestion(state, now, witness, Right.Witness) { Books = books });
        var pulls = books.SelectMany(book => book.Newest(witness.Stage)).Where(pull => state.Passes(pull) && pull.WitnessedBy is null).ToList();
        if (pulls.Count == 0)
        {
            refused.Add(new HoldPoint(HoldReason.NothingToWitness) { Job = witness.Job, Name = $"{instance.Group.Name} {witness.Place}" });
        }

        if (!witness.Accepted && witness.Finding is null)
        {
            refused.Add(new HoldPoint(HoldReason.FindingMissing) { Job = witness.Job });
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new Witnessed(
            witness.Job, witness.Group, instance.Joint, witness.Stage, [.. pulls.Select(pull => pull.Number).Order()],
            witness.Method, witness.Accepted, witness.Finding, witness.Shown));
    }

    private static Verdict DecideOn(CarState state, DecideHold decide, Circumstances now, HoldRules rules)
    {
        if (UnknownPositions([decide.Position], now) is { } unknown)
        {
            return unknown;
        }

        var book = state.Of(decide.Position);
        var about = book.Holds.Where(hold => hold.Decision is null).ToList();
        var doubts = Judging.DoubtsOn(book, now.Tool).Select(found => found.Doubt).Distinct().ToList();
        var refused = Permissions(rules, new PermissionQuestion(state, now, decide, Right.Decide)
        {
            Books = [book],
            Doers = [.. about.SelectMany(hold => hold.Workers.Add(hold.By))],
            Group = Opening.GroupOn(state, now, decide.Position)?.Group,
        });
        var foreign = OtherSpecifications.OfRunningJobs(state, now, book).Select(pull => pull.Number);
        long[] numbers = [.. about.Select(hold => hold.Number).Union(foreign)];
        if (numbers.Length == 0 && doubts.Count == 0)
        {
            refused.Add(new HoldPoint(HoldReason.NothingToDecide) { Position = decide.Position });
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new Decided(
            decide.Position, decide.Disposition, numbers, doubts, decide.Reason, decide.Acceptance, decide.Shown));
    }

    private static Verdict ReleaseCar(CarState state, Release release, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, release, Right.Release));
        refused.AddRange(rules.OnRelease(state, now, release.Kind, release.CustomerAcceptance is not null));
        if (release.Kind != ReleaseKind.Move && release.OdometerKm is not >= 0)
        {
            refused.Add(new HoldPoint(HoldReason.OdometerMissing));
        }

        if (refused.Count > 0)
        {
            return new Verdict.Refused(refused);
        }

        var owed = state.Positions.Values.Where(state.OwesReTorque).Select(book => book.Last!.Fact.Spec.ReTorque!).ToList();
        var onRoad = release.Kind != ReleaseKind.Move && owed.Count > 0;
        return Accept(new Released(
            release.Kind,
            release.Kind == ReleaseKind.Move ? [] : ReleaseRules.Finished(state, now),
            ReleaseRules.PositionsOf(state, now.Register).Where(position => state.Of(position).IsAsFound).Select(p => p.Joint).Distinct().Count(),
            release.OdometerKm,
            onRoad ? release.OdometerKm + owed.Min(rule => rule.BeforeKm ?? rule.AfterKm) : null,
            onRoad && owed.Min(rule => rule.WithinDays) is { } days ? now.Today.AddDays(days) : null,
            release.CustomerAcceptance,
            release.Shown));
    }

    private static Verdict Issue(CarState state, IssueSummary issue, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, issue, Right.Release));
        if (state.Jobs.IsEmpty)
        {
            refused.Add(new HoldPoint(HoldReason.NoJobYet));
        }

        if (issue.AsOf != state.Number)
        {
            refused.Add(new HoldPoint(HoldReason.Superseded));
        }

        var last = state.Summaries.IsEmpty ? (int?)null : state.Summaries[^1].Fact.Version;
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new SummaryIssued((last ?? 0) + 1, last, issue.Snapshot, state.Number, issue.Shown));
    }
}
