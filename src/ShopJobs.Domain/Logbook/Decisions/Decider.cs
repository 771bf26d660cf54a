using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Decides what a command becomes: entries, or a refusal with every reason. Pure. Permissions are refused; facts are recorded:
/// a report of something that has happened is refused only when job or position cannot be identified.
/// </summary>
public static partial class Decider
{
    /// <summary>Decides one command on one car by the rules in force.</summary>
    public static Verdict Decide(this CarState state, Command command, Circumstances now) =>
        Decide(state, command, now, HoldRules.Standard);

    /// <summary>Decides one command on one car by the rules given.</summary>
    public static Verdict Decide(this CarState state, Command command, Circumstances now, HoldRules rules)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(rules);
        now = now.For(state);
        if (command is SignedCommand signed && LookAgain.At(state, now, signed) is { } changed)
        {
            return new Verdict.Refused(changed);
        }

        var verdict = WithWhoDidIt(command) switch
        {
            StartJob start => Start(state, start, now, rules),
            PutJobOnHold hold => OnJob(state, hold, hold.Job, now, rules),
            JobCommand job => OnJob(state, job, job.Job, now, rules),
            DeclareCondition declare => Declare(state, declare, now),
            DeclareFromPaper declare => Declare(state, declare, now),
            RecordResult result => Record(state, result, now, rules),
            OpenPositions open => Open(state, open, now),
            TreatThread treat => Treat(state, treat, now),
            FitNew fit => Fit(state, fit, now),
            HandTighten hand => ByHand(state, hand, now, rules),
            RecordTorque pull => Pull(state, pull, now, rules),
            RecordSettled settled => Settle(state, settled, now, rules),
            HoldPositions hold => Hold(state, hold, now),
            HoldWork hold => Hold(state, hold, now),
            DecideRow row => DecideOn(state, row, now, rules),
            DecideWork decide => DecideOn(state, decide, now, rules),
            FinishStep finish => Finish(state, finish, now, rules),
            ConfirmStep confirm => Confirm(state, confirm, now, rules),
            Witness witness => Look(state, witness, now, rules),
            DecideHold decide => DecideOn(state, decide, now, rules),
            VoidEntry voiding => Void(state, voiding, now),
            Restate restate => RestateOne(state, restate, now),
            Countersign countersign => AnswerFor(state, countersign, now, rules),
            ConfirmCorrection confirm => ConfirmOne(state, confirm, now, rules),
            Release release => ReleaseCar(state, release, now, rules),
            UpholdRelease uphold => Uphold(state, uphold, now, rules),
            WithdrawRelease withdraw => Withdraw(state, withdraw, now, rules),
            EndRoadTest end => ComeBack(state, end),
            ComeIn come => Arrive(state, come, now),
            RecordAsFound found => AsFound(state, found, now),
            MoveCar move => Move(state, move, now, rules),
            ReportMoved moved => Moved(state, moved, now, rules),
            LetGo let => Leave(state, let, now, rules),
            ReportGone gone => Gone(state, gone, now, rules),
            LookOver look => LookAtMoves(state, look, now, rules),
            TakePhoto take => Accept(new PhotoTaken(take.Photo, take.View) { Caption = take.Caption }),
            LeaveHalfDone leave => Leave(state, leave, now),
            TakeOver take => GoOn(state, take, now),
            AddPositions add => Add(state, add, now),
            ChangeJointList change => Change(state, change, now, rules),
            LookAtJoints look => LookAt(state, look, now, rules),
            ExtendReTorque extend => Extend(state, extend, now, rules),
            IssueSummary issue => Issue(state, issue, now, rules),
            _ => throw new ArgumentOutOfRangeException(nameof(command), command?.GetType().Name, "Not a command on a car."),
        };
        return verdict is Verdict.Accepted accepted
            ? new Verdict.Accepted([.. accepted.Entries.Select(entry => now.Shop.Stamped(entry, now.Ahead))])
            : verdict;
    }

    // Whoever did what another reports for him is a worker on it.
    private static Command WithWhoDidIt(Command command) => command switch
    {
        RecordTorque { ReportedFor: { } doer } pull => pull with { Helpers = [.. pull.Helpers, doer] },
        HandTighten { ReportedFor: { } doer } hand => hand with { Helpers = [.. hand.Helpers, doer] },
        _ => command,
    };

    private static Verdict Accept(params IReadOnlyList<Entry> entries) => new Verdict.Accepted(entries);

    private static Verdict Refuse(HoldReason reason) => Refuse(new HoldPoint(reason));

    private static Verdict Refuse(HoldPoint point) => new Verdict.Refused([point]);

    private static List<HoldPoint> Permissions(HoldRules rules, PermissionQuestion question) =>
        [.. rules.Permission.Select(rule => rule.Find(question)).OfType<HoldPoint>()];

    private static Verdict? UnknownPositions(CarState state, IReadOnlyList<JointPosition> positions, Circumstances now)
    {
        if (positions.Count == 0)
        {
            return Refuse(HoldReason.NoPosition);
        }

        // A running job keeps its register: a count that was lowered since leaves its positions known.
        JointRegister[] registers = [now.Register, .. state.RunningJobs.Select(job => now.Placed(job).Register)];
        var unknown = positions.Where(position => !Array.Exists(registers, register => register.Has(position))).ToList();
        return unknown.Count == 0
            ? null
            : Refuse(new HoldPoint(HoldReason.UnknownPosition) { Position = unknown[0] });
    }

    private static Verdict Start(CarState state, StartJob start, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, start, Right.Lead));
        if (state.Jobs.ContainsKey(start.Job))
        {
            refused.Add(new HoldPoint(HoldReason.AlreadyStarted) { Job = start.Job });
        }

        var possible = PlacedProcedure.PlacesOf(start.Procedure, now.Register);
        if (start.Places.Count == 0 || start.Places.Any(place => !possible.Contains(place)))
        {
            refused.Add(new HoldPoint(HoldReason.UnknownPlace)
            {
                Job = start.Job,
                Name = start.Places.Except(possible).FirstOrDefault(),
                Choices = [.. possible],
            });
        }

        refused.AddRange(AgainstFit(state, start.Procedure, start.Places, now));
        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new JobStarted(
            start.Job, start.Procedure.Code, start.Procedure.Revision, start.ProcedureDigest, start.RegisterDigest, [.. start.Places.Distinct()])
        {
            Joints = state.Joints.Equals(JointList.OfTheRegister) ? null : state.Joints,
        });
    }

    /// <summary>Why a procedure does not go on this car at these places: its visits are not the car's positions.</summary>
    /// <param name="now">With the register as it is for the car.</param>
    public static IEnumerable<HoldPoint> AgainstFit(CarState state, Procedure procedure, IReadOnlyCollection<string> places, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(procedure);
        ArgumentNullException.ThrowIfNull(now);
        var names = now.Register.Followed.ToDictionary(kind => kind.Key, kind => kind.Name);
        if (now.Register.Kinds.Count == 0)
        {
            return [new HoldPoint(HoldReason.NoRegister)];
        }

        return procedure.IsFor(state.Joints.Follows)
            ? PlacedProcedure.Misfits(procedure, now.Register, places).Select(misfit => new HoldPoint(HoldReason.DoesNotFit) { Misfit = misfit, Name = procedure.Code })
            : [new HoldPoint(HoldReason.NotForThisCar)
            {
                Name = names.GetValueOrDefault(state.Joints.Follows, state.Joints.Follows),
                Choices = [.. procedure.Fits.Select(fits => names.GetValueOrDefault(fits, fits))],
            }];
    }

    private static Verdict Declare(CarState state, DeclareCondition declare, Circumstances now)
    {
        if (now.IsEarlier(declare.MadeIn))
        {
            return Refuse(HoldReason.SaidEarlier);
        }

        JointRegister[] registers = [now.Register, .. state.RunningJobs.Select(job => now.Placed(job).Register)];
        if (declare.Conditions.Count == 0 || declare.Conditions.Any(condition =>
            !registers.Any(register => register.Conditions.TryGetValue(condition.Aspect, out var values) && values.Contains(condition.Value))))
        {
            return Refuse(HoldReason.UnknownCondition);
        }

        var ofPlace = declare.Conditions.Where(condition => now.Register.AspectOf(condition.Aspect).OfPlace).ToList();
        var ofCar = declare.Conditions.Except(ofPlace).ToList();
        return ofPlace.Count > 0 && declare.Places is not { Count: > 0 }
            ? Refuse(HoldReason.NoPlaceNamed)
            : Accept(
            [
                .. ofPlace.Count > 0 ? [new CarConditionDeclared(ofPlace) { Places = declare.Places }] : Array.Empty<Entry>(),
                .. ofCar.Count > 0 ? [new CarConditionDeclared(ofCar)] : Array.Empty<Entry>(),
            ]);
    }
}
