using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// What the rules say of a command: refused for these reasons, or recorded as these lines.
internal sealed partial class Ledger
{
    public IReadOnlySet<Reason> RefusalsOf(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, Command command, DateTime at) =>
        command is SignedCommand signed && MustLookAgain(signed)
            ? new HashSet<Reason> { new(command is DecideHold { Position: var position } && NothingAsks(position) && WasDecided(position) ? HoldReason.DecidedBefore : HoldReason.LookAgain) }
            : Refusals(person, rights, ties, command, at).ToHashSet();

    private IEnumerable<Reason> Refusals(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, Command command, DateTime at)
    {
        var today = DateOnly.FromDateTime(at);
        if (Unknown(command) is { } unknown)
        {
            return [new(unknown)];
        }

        return command switch
        {
            StartJob start => Those(
                (HoldReason.NoRight, !rights.Contains(Right.Lead)),
                (HoldReason.AlreadyStarted, jobs.ContainsKey(start.Job) && lines.Any(line => line.Entry is JobStarted fact && fact.Job == start.Job)),
                (HoldReason.UnknownPlace, !start.Places.Any() || start.Places.Any(place => !PlacesOf(start.Procedure).Contains(place))))
                .Select(why => new Reason(why)),
            FinishStep finish => OfFinishing(person, rights, finish, at).Concat(OfResting(finish.Job)).Concat(OfGivenUp(finish.Job)),
            ConfirmStep confirm => OfSigning(person, rights, confirm, at).Concat(OfResting(confirm.Job)).Concat(OfGivenUp(confirm.Job)),
            Witness witness => OfWitness(person, rights, ties, witness).Concat(OfResting(witness.Job)),
            PutJobOnHold or JobCommand => OfJob(rights, command),
            DecideHold decide => OfDecision(person, rights, ties, decide, at),
            VoidEntry voiding => OfCorrection(person, rights, voiding.Target, restates: false),
            Restate restate => OfCorrection(person, rights, restate.Target, restates: true),
            ConfirmCorrection confirm => OfConfirmation(person, rights, ties, confirm),
            Countersign countersign => OfCountersigning(person, rights, ties, countersign, at),
            RecordSettled settled => Those(
                (HoldReason.NoRight, !rights.Contains(Right.Record)),
                (HoldReason.OdometerMissing, settled.OdometerKm is null or < 0),
                (HoldReason.OdometerBelowLast, settled.OdometerKm >= 0 && IsBelowLast(settled.OdometerKm, settled.OdometerWhy)))
                .Select(why => new Reason(why)),
            RecordResult result => OfResult(rights, result).Concat(OfResting(result.Job)),
            EndRoadTest end => Those(
                (HoldReason.NoRoadTest, RoadTest is null),
                (HoldReason.OdometerBelowLast, RoadTest is not null && IsBelowLast(end.Odometer.Km, end.OdometerWhy))).Select(why => new Reason(why)),
            Release release => WaitsOf(release, today)
                .Concat(release.Kind == ReleaseKind.Move || release.Closing is { Count: 5 } ? [] : [new Reason(HoldReason.ClosingCheckMissing)])
                .Concat(release.CustomerAcceptance is { } said ? OfAcceptance(said, at, inWriting: IsByWriting(release, today)).Select(why => new Reason(why)) : [])
                .Concat(rights.Contains(Right.Release) ? [] : [new Reason(HoldReason.NoRight)]),
            UpholdRelease uphold => OfUpholding(rights, uphold, today),
            WithdrawRelease withdraw => OfWithdrawing(rights, withdraw),
            ComeIn or MoveCar or ReportMoved or LetGo or ReportGone or LookOver or ExtendReTorque => OfVisiting(person, rights, ties, command, today),
            IssueSummary issue => Those((HoldReason.NoRight, !rights.Contains(Right.Release)), (HoldReason.Superseded, issue.AsOf != lines.Count), (HoldReason.NoJobYet, !lines.Any(line => line.Entry is JobStarted)))
                .Select(why => new Reason(why)),
            _ => [],
        };
    }

    private static IEnumerable<string> PlacesOf(Procedure procedure) => procedure.Steps.SelectMany(step => step.Places);

    // A report is refused only when person, car or position cannot be identified.
    private HoldReason? Unknown(Command command) => command switch
    {
        OpenPositions open => Unknown(open.Positions, open.Job, null),
        HoldPositions hold => Unknown(hold.Positions, null, null),
        FitNew fit => Unknown(fit.Positions, fit.Job, fit.Group),
        TreatThread treat => Unknown(treat.Positions, treat.Job, null),
        HandTighten hand => Unknown(hand.Positions, hand.Job, hand.Group),
        RecordSettled settled => Unknown(settled.Positions, settled.Job, settled.Group),
        RecordTorque pull => Unknown([pull.Position], pull.Job, pull.Group) ?? (IsCell(pull) ? null : HoldReason.NotInGroup),
        DecideHold decide => Unknown([decide.Position], null, null),
        ExtendReTorque extend => Unknown(extend.Positions, null, null),
        DeclareCondition { MadeIn: { } made } when IsOfAnotherSession(made) => HoldReason.SaidEarlier,
        DeclareCondition declare => declare.Conditions.Count > 0
            && declare.Conditions.All(one => register.Conditions.TryGetValue(one.Aspect, out var values) && values.Contains(one.Value))
            ? declare.Places is null or [] && declare.Conditions.Any(one => register.Aspects.GetValueOrDefault(one.Aspect)?.OfPlace == true) ? HoldReason.NoPlaceNamed : null
            : HoldReason.UnknownCondition,
        FinishStep finish => IsStarted(finish.Job) && jobs[finish.Job].Step(finish.Step) is not null ? null : HoldReason.UnknownStep,
        ConfirmStep confirm => IsStarted(confirm.Job) && jobs[confirm.Job].Step(confirm.Step) is not null ? null : HoldReason.UnknownStep,
        PutJobOnHold hold => IsStarted(hold.Job) ? null : HoldReason.UnknownJob,
        JobCommand job => IsStarted(job.Job) ? null : HoldReason.UnknownJob,
        Witness witness => IsStarted(witness.Job) && jobs[witness.Job].Group(witness.Group, witness.Place) is not null ? null : HoldReason.UnknownGroup,
        _ => null,
    };

    private HoldReason? Unknown(IReadOnlyList<JointPosition> positions, JobId? job, string? group) =>
        positions.Count == 0 ? HoldReason.NoPosition
        : positions.Any(at => !register.Kinds.TryGetValue(at.Key, out var kind) || !kind.AllPositions().Contains(at)) ? HoldReason.UnknownPosition
        : job is null ? null
        : !IsStarted(job.Value) ? HoldReason.UnknownJob
        : group is null || positions.All(at => jobs[job.Value].Group(group, at.Place)?.Rules.Key == at.Key) ? null
        : HoldReason.NotInGroup;

    private bool IsStarted(JobId job) => lines.Any(line => line.Entry is JobStarted fact && fact.Job == job);

    private bool IsCell(RecordTorque pull)
    {
        var stages = jobs[pull.Job].Group(pull.Group, pull.Position.Place)!.Rules.Stages;
        return pull.Stage >= 1 && pull.Stage <= stages.Count
            && pull.Visit >= 0 && pull.Visit < stages[pull.Stage - 1].Visits.Count
            && stages[pull.Stage - 1].Visits[pull.Visit] == pull.Position.Number;
    }

    private IEnumerable<Reason> OfSigning(PersonId person, IReadOnlySet<Right> rights, ConfirmStep confirm, DateTime at)
    {
        var job = jobs[confirm.Job];
        var step = job.Step(confirm.Step)!;
        if (confirm is { NotApplicable: false, With.Count: > 0 })
        {
            return OfSigningTogether(person, rights, confirm, at);
        }

        if (!confirm.NotApplicable)
        {
            return WaitsOf(job, step, confirm.Ticks, confirm.Values, rights, at).Concat(rights.Contains(Right.Record) || rights.Contains(Right.Trainee) ? [] : [new Reason(HoldReason.NoRight)]);
        }

        var touched = job.WorkOf(step).SelectMany(work => work.Group.Positions).Where(position => !IsAsFound(position) && !IsAtTorque(position)).ToList();
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Lead)),
            (HoldReason.ReasonMissing, confirm.Reason is null),
            (HoldReason.AlreadySigned, StandingOf(job, step) == StepStanding.Signed)).Select(why => new Reason(why))
            .Concat(GatesOf(job, step, at))
            .Concat(touched.Take(1).Select(position => new Reason(HoldReason.WorkBegun)));
    }

    // Rule 4.
    private IEnumerable<Reason> OfWitness(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, Witness witness)
    {
        var workers = jobs[witness.Job].Group(witness.Group, witness.Place)!.Positions.SelectMany(WorkersOn).ToHashSet();
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Witness)),
            (HoldReason.OwnWork, workers.Contains(person)),
            (HoldReason.Tied, workers.Overlaps(ties)),
            (HoldReason.NothingToWitness, SeenNow(witness).Count == 0),
            (HoldReason.FindingMissing, !witness.Accepted && witness.Finding is null)).Select(why => new Reason(why));
    }

    private IReadOnlyList<long> SeenNow(Witness witness) =>
    [
        .. jobs[witness.Job].Group(witness.Group, witness.Place)!.Positions.SelectMany(position => Newest(position, witness.Stage))
            .Where(pull => Passes(pull) && SeenBy(pull) is null).Select(pull => pull.Number).Order(),
    ];

    // Rule 7.
    private IEnumerable<Reason> OfDecision(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, DecideHold decide, DateTime at)
    {
        var position = decide.Position;
        var holds = HoldsOn(position).Where(hold => !hold.IsDecided).ToList();
        var last = Since(position).LastOrDefault(line => line.Entry is TorqueRecorded fact && fact.Position == position);
        var risk = last is null ? GroupInForce(position)?.Rules.Risk ?? RiskClass.A : GroupOf(last).Rules.Risk;
        IEnumerable<JointPosition> joint = DoubtsOn(position).Count > 0 && GroupInForce(position) is { } inForce ? inForce.Positions : [];
        var workers = joint.Append(position).SelectMany(WorkersOn).Concat(holds.SelectMany(hold => hold.Doers)).ToHashSet();
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Decide)),
            (HoldReason.OwnWork, workers.Contains(person)),
            (HoldReason.Tied, workers.Overlaps(ties)),
            (HoldReason.NotUsableAsIs, decide.Disposition == Disposition.UseAsIs && (holds.SelectMany(hold => ReasonsOf(hold, position)).Any(IsMissing) || holds.Any(hold => IsOfALowerStage(hold, position)))),
            (HoldReason.AcceptanceMissing, decide.Disposition == Disposition.UseAsIs && decide.Acceptance is null && risk == RiskClass.A),
            (HoldReason.ReuseNotAllowed, decide.Disposition == Disposition.Rework && GroupInForce(position)?.Rules.Hardware.Reuse == HardwareReuse.SingleUse),
            (HoldReason.VoidedTurn, decide.Disposition == Disposition.UseAsIs && PullsOn(position).Any(pull => IsTurn(pull) && IsVoid(pull.Number))),
            (WasDecided(position) ? HoldReason.DecidedBefore : HoldReason.NothingToDecide, NothingAsks(position)))
            .Concat(decide is { Disposition: Disposition.UseAsIs, Acceptance: { } said } ? OfAcceptance(said, at, risk == RiskClass.A) : [])
            .Select(why => new Reason(why));
    }

    private bool NothingAsks(JointPosition position) => AboutNow(position).Count == 0 && DoubtsOn(position).Count == 0;

    private bool WasDecided(JointPosition position) => lines.Any(line => line.Entry is Decided fact && fact.Position == position);

    // Who, when, how, and where the writing is.
    private IEnumerable<HoldReason> OfAcceptance(Acceptance said, DateTime at, bool inWriting)
    {
        var spoken = said.How is SaidHow.ByTelephone or SaidHow.InPerson;
        return Those(
            (HoldReason.AcceptanceWho, said.Who.Length < 2),
            (HoldReason.AcceptanceWhen, said.On is null || said.On > clock.Day(at)),
            (HoldReason.AcceptanceHow, said.How is null),
            (HoldReason.AcceptanceNotWritten, inWriting && spoken),
            (HoldReason.AcceptanceKept, said.How == SaidHow.InWriting && said.KeptAt.Trim().Length == 0),
            (HoldReason.AcceptanceWords, said.Words.Length < 3));
    }

    /// <summary>A missing pull, stage or opening: no decision stands in for it.</summary>
    private static bool IsMissing(HoldReason reason) => reason is HoldReason.LowerStageMissing or HoldReason.BackOffFirst or HoldReason.CellMoved
        or HoldReason.NotHandTight or HoldReason.RidesOnLoose or HoldReason.StillOn or HoldReason.UnfinishedBehind or HoldReason.NotOpened;

    private IReadOnlyList<long> AboutNow(JointPosition position) =>
    [
        .. HoldsOn(position).Where(hold => !hold.IsDecided).Select(hold => hold.Number)
            .Concat(
                from job in Running
                from @group in job.Groups
                where @group.Joint == position.Joint
                from stage in @group.Rules.Stages
                from pull in ForeignOn(position, stage.Number, job, @group)
                select pull.Number)
            .Distinct().Order(),
    ];

    // Rule 8.
    private IEnumerable<Reason> OfCorrection(PersonId person, IReadOnlySet<Right> rights, long number, bool restates)
    {
        var target = number >= 1 && number <= lines.Count ? At(number) : null;
        HoldReason? why = target?.Entry is not (StepConfirmed or StepFinished or ResultRecorded or HandTightened or TorqueRecorded or Settled or Witnessed or Countersigned or Opened or CarConditionDeclared or FittedNew) ? HoldReason.NotCorrectable
            : target.Person != person && !rights.Contains(Right.Lead) ? HoldReason.OthersEntry
            : IsVoid(number) ? HoldReason.AlreadyVoid
            : target.Entry is Opened && !CanBeTakenBack(target) ? HoldReason.OpenedAndGoneOn
            : restates && target.Entry is not TorqueRecorded { AngleDegrees: null } ? HoldReason.NotRestatable
            : null;
        return why is { } reason ? [new(reason)] : [];
    }

    private IEnumerable<Reason> OfConfirmation(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, ConfirmCorrection confirm)
    {
        var correction = confirm.Correction >= 1 && confirm.Correction <= lines.Count ? At(confirm.Correction) : null;
        if (correction?.Entry is not Corrected fact || IsConfirmed(correction) || CorrectionsOf(fact.Target).Any(line => line.Number > correction.Number))
        {
            return [new(HoldReason.NoSuchCorrection)];
        }

        var target = At(fact.Target);
        HashSet<PersonId> workers = [.. target.Entry is TorqueRecorded pull ? WorkersOn(pull.Position) : [], correction.Person, target.Person];
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Decide)),
            (HoldReason.Tied, workers.Overlaps(ties)),
            (HoldReason.OwnWork, workers.Contains(person)),
            (HoldReason.OpenedAndGoneOn, target.Entry is Opened && !CanBeTakenBack(target))).Select(why => new Reason(why));
    }

    /// <summary>
    /// Rule 12: an opening taken back as never done. Nothing came after it on what it opened, nothing but openings was corrected, nothing released. A pull on
    /// a nut says nothing of the stud below it, unless it holds that too.
    /// </summary>
    private bool CanBeTakenBack(Line opening) => opening is { BySetting: false, Late.Count: 0, Reopens.Count: 0, Opens.Count: > 0 }
        && !opening.Opens.Any(at => HoldsOn(at).Any(hold => hold.Number > opening.Number))
        && !lines.Skip((int)opening.Number).Any(later => later.Names.Where(at => at != later.RidesOn).Intersect(opening.Opens).Any() || later.Entry switch
        {
            Released => true,
            Corrected fact => At(fact.Target).Entry is not Opened,
            CorrectionConfirmed fact => At(((Corrected)At(fact.Correction).Entry).Target).Entry is not Opened,
            _ => false,
        });
}
