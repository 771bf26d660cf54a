using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Signatures of witnesses, of releases and of whoever answers for another: refused with every reason, or recorded.
public static partial class Decider
{
    private static Verdict Look(CarState state, Witness witness, Circumstances now, HoldRules rules)
    {
        if (!state.Jobs.TryGetValue(witness.Job, out var job) || now.Placed(job).Group(witness.Group, witness.Place) is not { } instance)
        {
            return Refuse(HoldReason.UnknownGroup);
        }

        var books = instance.Positions.Select(state.Of).ToList();
        var refused = Permissions(rules, new PermissionQuestion(state, now, witness, Right.Witness) { Books = books });
        var pulls = Witnessing.Awaiting(state, books, witness.Stage);
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

    private static Verdict ReleaseCar(CarState state, Release release, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, release, Right.Release));
        var asked = new ReleaseQuestion(state, now, release.Kind, release.CustomerAcceptance is not null, rules.Position);
        var without = state.Undone.Keys.Where(asked.GoesWithout).Order(StringComparer.Ordinal).ToList();
        refused.AddRange(rules.OnRelease(state, now, release.Kind, release.CustomerAcceptance is not null, release.OdometerKm));
        // That a result is missing which only a drive gives, or that a re-torque is still due, the customer is told in writing.
        refused.AddRange(release.CustomerAcceptance?.Lacks(now.Today, inWriting: rules.NeedsWriting(state, now, release.Kind, release.OdometerKm)) ?? []);
        if (release.OdometerKm < state.Odometer && release.OdometerWhy is null)
        {
            refused.Add(new HoldPoint(HoldReason.OdometerBelowLast) { Km = state.Odometer });
        }

        if (release.Kind != ReleaseKind.Move && release.OdometerKm is not >= 0)
        {
            refused.Add(new HoldPoint(HoldReason.OdometerMissing));
        }

        refused.AddRange(RoadTestHolds(release));
        refused.AddRange(ClosingHolds(release));
        if (refused.Count > 0)
        {
            return new Verdict.Refused(refused);
        }

        if (release.Kind == ReleaseKind.RoadTest)
        {
            return Accept(new Released(
                release.Kind, [], NotChecked(state, now), release.OdometerKm, null, now.DayShown, release.CustomerAcceptance?.Kept, release.Shown)
            {
                Odometer = release.Odometer,
                OdometerWhy = release.OdometerWhy,
                On = now.Today,
                Closing = release.Closing,
                Driver = release.Driver,
                DistanceKm = release.DistanceKm,
                Without = without.Count > 0 ? without : null,
            });
        }

        var owed = release.Kind == ReleaseKind.Move ? [] : state.Positions.Values.Where(state.OwesReTorque).ToList();
        return Accept(new Released(
            release.Kind,
            release.Kind == ReleaseKind.Move ? [] : ReleaseRules.Finished(state, now),
            NotChecked(state, now),
            release.OdometerKm,
            owed.Min(book => state.LatestKm(book) ?? release.OdometerKm + book.Last!.Fact.Spec.ReTorque!.LatestKm),
            owed.Min(book => state.LatestDay(now, book) ?? (book.Last!.Fact.Spec.ReTorque!.WithinDays is { } days ? now.DayShown.AddDays(days) : null)),
            release.CustomerAcceptance?.Kept,
            release.Shown)
        {
            Odometer = release.Odometer,
            OdometerWhy = release.OdometerWhy,
            On = now.Today,
            Closing = release.Kind == ReleaseKind.Move ? null : release.Closing,
            Without = without.Count > 0 ? without : null,
        });
    }

    private static int NotChecked(CarState state, Circumstances now) =>
        ReleaseRules.PositionsOf(state, now).Where(position => state.Of(position).IsAsFound).Select(position => position.Joint).Distinct().Count();

    // Nobody drives before somebody has counted the tools and looked at the whole car.
    private static IEnumerable<HoldPoint> ClosingHolds(Release release) =>
        release.Kind != ReleaseKind.Move && ClosingCheck.Missing(release.Closing) is { Count: > 0 } missing
            ? [new HoldPoint(HoldReason.ClosingCheckMissing) { Choices = [.. missing.Select(item => item.Words())] }]
            : [];

    private static IEnumerable<HoldPoint> RoadTestHolds(Release release)
    {
        if (release.Kind == ReleaseKind.RoadTest && release.Driver is null)
        {
            yield return new HoldPoint(HoldReason.DriverMissing);
        }

        if (release.Kind == ReleaseKind.RoadTest && release.DistanceKm is not > 0)
        {
            yield return new HoldPoint(HoldReason.DistanceMissing);
        }
    }

    private static Verdict ComeBack(CarState state, EndRoadTest end) =>
        state.RoadTest is not { } test ? Refuse(HoldReason.NoRoadTest)
            : AgainstReading(state, end.Odometer, end.OdometerWhy, needed: true) is { Count: > 0 } against ? new Verdict.Refused(against)
            : Accept(new RoadTestEnded(test.Number, end.Odometer, end.Finding) { OdometerWhy = end.OdometerWhy });

    private static Verdict Uphold(CarState state, UpholdRelease uphold, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, uphold, Right.Lead));
        var standing = state.StandingOf(now, uphold.Kind);
        if (standing.Kind != ReleaseStandingKind.Suspended)
        {
            refused.Add(new HoldPoint(HoldReason.NotSuspended));
        }

        refused.AddRange(standing.Why);
        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new ReleaseUpheld(uphold.Kind, standing.Release!.Number, uphold.Shown));
    }

    private static Verdict Withdraw(CarState state, WithdrawRelease withdraw, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, withdraw, Right.Release));
        var release = state.Releases.GetValueOrDefault(withdraw.Kind);
        if (release is not { Withdrawn: null })
        {
            refused.Add(new HoldPoint(HoldReason.NoSuchRelease));
        }

        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new ReleaseWithdrawn(withdraw.Kind, release!.Number, withdraw.Driven, withdraw.Reason, withdraw.Shown));
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

    private static Verdict AnswerFor(CarState state, Countersign countersign, Circumstances now, HoldRules rules)
    {
        var waiting = state.Positions.Values.SelectMany(book => book.Pulls)
            .Where(pull => countersign.Records.Contains(pull.Number) && pull is { AwaitsCountersign: true, CountersignedBy: null, Voided: false }).ToList();
        var steps = state.AwaitingCountersign(now).Where(step => countersign.Records.Contains(step.Sign.Number)).ToList();
        var refused = Permissions(rules, new PermissionQuestion(state, now, countersign, Right.Record)
        {
            Doers = [.. waiting.Select(pull => pull.Person), .. steps.Select(step => step.Sign.Person)],
        });
        if (waiting.Count + steps.Count is 0 || waiting.Count + steps.Count < countersign.Records.Distinct().Count())
        {
            refused.Add(new HoldPoint(HoldReason.NothingToCountersign));
        }

        // It begins to count now: everything is asked again.
        refused.AddRange(steps.SelectMany(step => rules.OnStep(new StepQuestion(
            state, now, step.Job, now.Placed(step.Job), step.Step, new StepAnswers(step.Sign.Fact.Ticks, step.Sign.Fact.Values)))));
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new Countersigned([.. waiting.Select(pull => pull.Number).Concat(steps.Select(step => step.Sign.Number)).Order()], countersign.Shown));
    }
}
