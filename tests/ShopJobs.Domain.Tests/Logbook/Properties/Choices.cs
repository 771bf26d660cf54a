using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>Turns a move that is not the next thing into a command on the car as it stands.</summary>
internal static class Choices
{
    public static readonly IReadOnlyList<ToolId> Tools = [TestTools.Click, TestTools.Dial, TestTools.Overdue, TestTools.Small, TestTools.Strange, TestTools.Angle];

    /// <summary>Number of the procedure that asks more of the wheel nuts than procedure 0.</summary>
    private const int OtherWheels = 4;

    /// <summary>Number of the procedure that asks another angle of the bolts than <see cref="Head"/>.</summary>
    private const int OtherHead = 8;

    private const int Head = 7;
    private const int Procedures = 9;

    public static TestPerson Person(int number) => TestPerson.All[number % 10 switch { < 4 => 0, < 7 => 1, < 9 => 2, _ => 3 }];

    /// <summary>Mostly somebody who may give the command, where there is one.</summary>
    public static TestPerson Signer(CarAtWork car, Command command, Move move) =>
        move.C % 3 == 0
            ? Person(move.B)
            : TestPerson.All.Skip(move.C % 3).Concat(TestPerson.All)
                .FirstOrDefault(person => car.State.Decide(command, car.As(person), car.Rules) is Verdict.Accepted) ?? Person(move.B);

    public static Command? Of(CarAtWork car, Move move) => move.Kind switch
    {
        MoveKind.Pull => Pull(car, move),
        MoveKind.Open => Cycled(car, new OpenPositions([Position(car, move.A)], move.B % 3 == 0 ? null : Job(car, move.B)?.Id, null), move.C),
        MoveKind.Hand => Group(car, move.A) is var (job, group) ? Cycled(car, new HandTighten(job.Id, group.Group.Id, Some(group, move.B), []), move.C) : null,
        MoveKind.Fit => Group(car, move.A) is var (job, group) ? Cycled(car, new FitNew(job.Id, group.Group.Id, Some(group, move.B), null), move.C) : null,
        MoveKind.Hold => new HoldPositions([Position(car, move.A)], CarAtWork.Reason),
        MoveKind.Decide => CarWork.Decision(Troubled(car, move.A), (Disposition)(move.B % 3), accepted: move.C % 3 != 0),
        MoveKind.Correct => Correction(car, move),
        MoveKind.Confirm => Waiting(car) is { } newest
            ? new ConfirmCorrection(move.A % 9 == 0 ? 1 + (move.A % (car.Last + 1)) : newest, CarAtWork.Reason, CarAtWork.Shown)
            : move.A % 9 == 0 ? new ConfirmCorrection(1 + (move.B % (car.Last + 1)), CarAtWork.Reason, CarAtWork.Shown)
            : Correction(car, move),
        MoveKind.Look => Group(car, move.A) is var (job, group)
            ? CarWork.Looks(job.Id, group.Group.Id, group.Place, move.B % 3 == 0 ? 1 : group.Group.Stages.Count, move.C % 3 != 0) with
            {
                Finding = move.C % 12 == 0 ? null : CarAtWork.Reason,
            }
            : null,
        MoveKind.Sign => Sign(car, move),
        MoveKind.Release => CarWork.To((ReleaseKind)(move.A % 3), move.B % 12 == 0 ? null : (move.B % 3 == 0 ? (car.State.Odometer ?? 1000) + 150 : 1000) + (move.B % 200), accepted: move.C % 2 == 0) with
        {
            OdometerWhy = move.C % 3 == 0 ? CarAtWork.Reason : null,
        },
        MoveKind.Uphold => new UpholdRelease(Given(car, move.A), CarAtWork.Shown),
        MoveKind.Withdraw => new WithdrawRelease(Given(car, move.A), move.B % 2 == 0, CarAtWork.Reason, CarAtWork.Shown),
        MoveKind.Countersign => new Countersign(Awaiting(car, move), CarAtWork.Shown),
        MoveKind.Settle => Settle(car, move),
        MoveKind.Result => new RecordResult(
            (move.A % 5) switch { 0 => "alignment", 1 => "corner-weights", 2 => "setting:front-bar", 3 => "bleed", _ => "setting:ride-height" },
            [new MeasuredValue("value", move.B, "mm")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown),
        MoveKind.Declare => new DeclareCondition([move.A % 2 == 0 ? TestRegister.WheelUp : TestRegister.WheelDown])
        {
            Places = (move.C % 4) switch { 0 => null, 1 => [TestRegister.Left, TestRegister.Right], 2 => [TestRegister.Right], _ => [TestRegister.Left] },
        },
        MoveKind.Summary => new IssueSummary(CarAtWork.Reason, move.A % 4 == 0 ? move.B : car.Last, CarAtWork.Shown),
        MoveKind.Nonsense => Nonsense(car, move),
        _ => null,
    };

    /// <summary>One thing in a tool's own logbook.</summary>
    public static (ToolId Tool, Entry Entry) ToolEntry(CarAtWork car, Move move)
    {
        var tool = (move.A % 6) switch { < 2 => TestTools.Dial, < 5 => TestTools.Click, _ => TestTools.Strange };
        if (car.Tool(tool).Tool is null)
        {
            return (tool, TestTools.StrangeEntered);
        }

        var due = car.Today.AddDays(300);
        return (tool, (move.B % 7) switch
        {
            0 => new Doubted(CarAtWork.Reason),
            1 => new Quarantined(CarAtWork.Reason),
            2 => new Calibrated(car.Today, due, "Rig sheet", [new(110, 100)], [new(100, 100)]),
            3 => new Calibrated(car.Today, due, "Rig sheet", [new(100, 100)], [new(100, 110)]),
            4 => TestTools.Good(car.Today.AddDays(-(move.C % 3)), due),
            _ => new Cleared([.. car.Tool(tool).Doubts.Select(doubt => doubt.Number)], CarAtWork.Reason),
        });
    }

    /// <summary>The second job of a history that begins with this number: often one that asks something else of the same joint.</summary>
    public static int Beside(int first) => (first % (2 * Procedures)) switch
    {
        0 => OtherWheels,
        1 + Procedures => 0,
        Head + Procedures => OtherHead,
        _ => first / Procedures,
    };

    public static (Procedure Procedure, string[] Places) Procedure(int number) => (number % Procedures) switch
    {
        0 => (TestProcedures.Wheels(1, 2), [TestRegister.Left]),
        1 => (TestProcedures.Studs(1, 2), [TestRegister.Left]),
        2 => (TestProcedures.StrutWithCrowfoot(), [TestRegister.Left]),
        3 => (Soon(TestProcedures.Brake()), [TestRegister.Front]),
        OtherWheels => (TestProcedures.OtherWheels(1, 2), [TestRegister.Left]),
        5 => (TestProcedures.LinkWithRunDown(), [TestRegister.Front]),
        Head => (TestProcedures.Head(), [TestRegister.Left]),
        OtherHead => (TestProcedures.Head(92), [TestRegister.Left]),
        _ => (TestProcedures.Wheels(2, 1), [TestRegister.Left, TestRegister.Right]),
    };

    // To be done within an hour and a half of hand-tight.
    private static Procedure Soon(Procedure procedure) =>
        procedure with { Groups = [.. procedure.Groups.Select(group => group with { Within = TimeSpan.FromMinutes(90) })] };

    /// <summary>The report as a step's screen gives it: with the cycles of its positions, now and then of an earlier one.</summary>
    public static Command Cycled(CarAtWork car, Command report, int number)
    {
        return report switch
        {
            OpenPositions open => open with { Cycles = Cycles(open.Positions) },
            HandTighten hand => hand with { Cycles = Cycles(hand.Positions) },
            FitNew fit => fit with { Cycles = Cycles(fit.Positions) },
            _ => report,
        };

        IReadOnlyList<int>? Cycles(IReadOnlyList<JointPosition> positions) => number % 3 == 0
            ? null
            : [.. positions.Select((at, index) => car.State.Of(at).Cycle - (number % 8 == 7 && (index == 0 || number % 16 == 7) ? 1 : 0))];
    }

    /// <summary>A release by which the car may go now; null when there is none.</summary>
    public static ReleaseKind? Standing(CarAtWork car) => car.State.ReleaseHistory
        .FindLast(release => car.State.StandingOf(car.As(TestPerson.Lee), release.Fact.Kind).IsGood)?.Fact.Kind;

    private static ReleaseKind Given(CarAtWork car, int number) => car.State.ReleaseHistory.IsEmpty || number % 6 == 0
        ? (ReleaseKind)(number % 3)
        : car.State.ReleaseHistory[^1].Fact.Kind;

    private static IReadOnlyList<long> Awaiting(CarAtWork car, Move move)
    {
        var waiting = car.State.Positions.Values.SelectMany(book => book.Pulls).Where(pull => pull is { AwaitsCountersign: true, CountersignedBy: null })
            .Select(pull => pull.Number).Order().ToList();
        return move.B % 6 == 0 ? [.. waiting, 1 + (move.A % (car.Last + 1))] : waiting;
    }

    public static JobBook? Job(CarAtWork car, int number) => car.State.Jobs.IsEmpty
        ? null
        : car.State.Jobs.Values.OrderBy(job => job.Number).ElementAt(number % car.State.Jobs.Count);

    private static (JobBook Job, GroupInstance Group)? Group(CarAtWork car, int number)
    {
        if (Job(car, number) is not { } job)
        {
            return null;
        }

        var groups = car.Placed(job).Groups;
        return (job, groups.ElementAt(number / 7 % groups.Count));
    }

    // Mostly a joint whose re-torque is due, where there is one.
    private static (JobBook Job, GroupInstance Group)? Due(CarAtWork car, int number) =>
        number % 4 == 0 || car.State.Positions.Values.FirstOrDefault(book => car.Shows(book.Position) == PositionState.Due)?.Last is not { Fact: var fact }
            ? null
            : (car.State.Jobs[fact.Job], car.Placed(fact.Job).Group(fact.Group, fact.Position.Place)!);

    private static IReadOnlyList<JointPosition> Some(GroupInstance group, int number) =>
        number % 2 == 0 ? [.. group.Positions] : [group.Positions.ElementAt(number / 2 % group.Count)];

    private static JointPosition Position(CarAtWork car, int number)
    {
        var touched = car.State.Positions.Keys.OrderBy(at => at.ToString(), StringComparer.Ordinal).ToList();
        var all = car.Register.Kinds.Values.SelectMany(kind => kind.AllPositions()).ToList();
        return touched.Count > 0 && number % 4 != 0 ? touched[number % touched.Count] : all[number % all.Count];
    }

    private static JointPosition Troubled(CarAtWork car, int number)
    {
        var troubled = car.State.Positions.Keys.Where(at => car.Shows(at) is PositionState.Held or PositionState.Doubted)
            .OrderBy(at => at.ToString(), StringComparer.Ordinal).ToList();
        return troubled.Count > 0 && number % 6 != 0 ? troubled[number % troubled.Count] : Position(car, number);
    }

    private static long Target(CarAtWork car, int number)
    {
        var targets = car.State.Correctables.Keys.Order().ToList();
        return targets.Count == 0 ? 1 : targets[^(1 + (number % Math.Min(6, targets.Count)))];
    }

    public static EnteredTorque Value(CarAtWork car, Move move, RecordTorque? pull = null)
    {
        var target = pull is null ? (car.Book.FindLast(line => line.Entry is TorqueRecorded)?.Entry as TorqueRecorded)?.Position : pull.Position;
        var group = target is { } at ? Opening.GroupOn(car.State, car.As(TestPerson.Lee), at)?.Group : null;
        var stage = group?.Stages[Math.Min(group.Stages.Count, pull?.Stage ?? 1 + (move.C % 2)) - 1] ?? TestProcedures.Stage(1, 50, 40, 60, [1]);
        var runDown = pull?.RunDown ?? (target is { } on ? car.State.Of(on).RunDownOf() : null);
        var atFastener = (move.B / 3 % 9) switch
        {
            0 => stage.Permitted.Minimum.Value,
            1 => stage.Permitted.Maximum.Value,
            2 => stage.Permitted.Minimum.Value - 0.1m,
            3 => stage.Permitted.Maximum.Value + 0.1m,
            4 => stage.Permitted.Minimum.Value - 10,
            5 => stage.Permitted.Maximum.Value + 10,
            6 => stage.Value.Value + 0.5m,
            7 => stage.Value.Value - 0.51m,
            _ => stage.Value.Value,
        };
        return OnTool(group, CarAtWork.NewtonMetres(atFastener), runDown, pull is null ? null : car.Tool(pull.Tool).Tool);
    }

    /// <summary>An angle at the ends of what is permitted, just outside and far off.</summary>
    public static decimal Angle(CarAtWork car, Move move, RecordTorque pull)
    {
        var turn = car.Placed(pull.Job).Group(pull.Group, pull.Position.Place)!.Group.Stages[pull.Stage - 1].Turn!;
        return (move.B / 3 % 6) switch
        {
            0 => turn.Minimum,
            1 => turn.Maximum,
            2 => turn.Minimum - 0.1m,
            3 => turn.Maximum + 0.1m,
            4 => 0,
            _ => turn.Maximum + 90,
        };
    }

    /// <summary>What stands on the tool where a stage is done as asked; null where an angle is asked.</summary>
    public static EnteredTorque? Asked(JointGroup group, Stage stage, EnteredTorque? runDown, TorqueTool? tool) =>
        stage.Turn is null ? OnTool(group, stage.Value, runDown, tool) : null;

    /// <summary>What stands on the tool for a torque at the fastener.</summary>
    public static EnteredTorque OnTool(JointGroup? group, EnteredTorque atFastener, EnteredTorque? runDown, TorqueTool? tool) =>
        group?.SettingFor(TestProcedures.Stage(1, atFastener.Value, 0, 1000, [1]), runDown, tool) ?? atFastener;

    /// <summary>A run-down torque, where the group adds one and none stands on the position yet.</summary>
    public static EnteredTorque? TurnedDown(CarAtWork car, JointGroup group, JointPosition position, int number) =>
        group.RunDown == RunDown.Add && (car.State.Of(position).RunDownOf() is null || number % 5 == 0)
            ? CarAtWork.NewtonMetres((number % 4) switch { 0 => 2, 1 => 10, _ => 4.5m })
            : null;

    private static RecordTorque? Pull(CarAtWork car, Move move)
    {
        if (Group(car, move.A) is not var (job, group))
        {
            return null;
        }

        var stage = group.Group.Stages[move.B % group.Group.Stages.Count];
        var visit = move.C % stage.Visits.Count;
        var position = group.Joint.At(stage.Visits[visit]);
        var tool = Guide.ToolFor(car, stage, move.B % 2 == 0);
        var runDown = TurnedDown(car, group.Group, position, move.C);
        var value = Asked(group.Group, stage, runDown ?? car.State.Of(position).RunDownOf(), car.Tool(tool.Id).Tool);
        return new RecordTorque(
            job.Id, group.Group.Id, position, car.State.Of(position).Cycle, stage.Number, visit, tool.Kind, value, tool.Id, [])
        { RunDown = runDown, AngleDegrees = stage.Turn?.Degrees };
    }

    private static Command Correction(CarAtWork car, Move move)
    {
        var target = car.Last == 0 ? 1 : move.A % 9 == 0 ? 1 + (move.B % car.Last) : Target(car, move.A);
        return move.B % 2 == 0
            ? new VoidEntry(target, (move.C % 3) switch { 0 => null, 1 => true, _ => false }, CarAtWork.Reason)
            : new Restate(target, Value(car, move), CarAtWork.Reason, CarAtWork.Shown);
    }

    private static long? Waiting(CarAtWork car) =>
        car.State.Corrections.Values.Where(correction => !correction.Confirmed).Max(correction => (long?)correction.Number);

    private static ConfirmStep? Sign(CarAtWork car, Move move)
    {
        if (Job(car, move.A) is not { } job)
        {
            return null;
        }

        var step = car.Placed(job).Steps.ElementAt(move.B % car.Placed(job).Steps.Count);
        return new ConfirmStep(
            job.Id, step.Id, [.. step.Step.Ticks.Select(tick => tick.Id)],
            [.. step.Step.Measures.Select(measure => new MeasuredValue(measure.Id, measure.Minimum ?? 0, measure.Unit))],
            move.C % 4 == 0, move.C % 12 == 0 ? null : CarAtWork.Reason, CarAtWork.Shown);
    }

    private static RecordSettled? Settle(CarAtWork car, Move move)
    {
        if ((Due(car, move.A) ?? Group(car, move.A)) is not var (job, group))
        {
            return null;
        }

        var stage = group.Group.Final;
        var tool = move.B % 4 == 0 ? (Tools[move.C % Tools.Count], TorqueKind.Reading) : Guide.GoodTool(car, stage.Evidence, move.B % 2 == 0) ?? (TestTools.Dial, TorqueKind.Reading);
        var positions = Some(group, move.B);
        var value = move.C % 3 == 0 ? Value(car, move) : OnTool(group.Group, stage.Value, car.State.Of(positions[0]).RunDownOf(), car.Tool(tool.Item1).Tool);
        decimal? angle = (move.C % 7) switch { 0 => 31, 1 => 30, 2 => 7.5m, _ => null };
        decimal? odometer = (move.A % 11) switch { 0 => null, 1 => -1, < 4 => 1049, < 6 => 1300, _ => 1000 + (move.B % 200) };
        return new RecordSettled(job.Id, group.Group.Id, positions, angle is not null, angle, tool.Item2, value, tool.Item1, odometer, CarAtWork.Shown);
    }

    private static Command Nonsense(CarAtWork car, Move move)
    {
        var known = Job(car, move.B)?.Id ?? new JobId(Guid.Empty);
        var nowhere = new JointPosition(TestRegister.Nut, TestRegister.Left, 9);
        var (procedure, places) = Procedure(move.B);
        return (move.A % 10) switch
        {
            0 => new OpenPositions([nowhere], null, null),
            1 => new OpenPositions([Position(car, move.B)], new JobId(Guid.Empty), null),
            2 => new HandTighten(known, "no-such-group", [Position(car, move.B)], []),
            3 => new DeclareCondition([new CarCondition("roof", "open")]),
            4 => new RecordResult("", [], ResultBasis.Declared, null, [], null, null, CarAtWork.Shown),
            5 => CarWork.Sign(known, "no-such-step"),
            6 => car.ToStart(known, procedure, places),
            7 => car.ToStart(new JobId(new Guid(99, 0, 0, new byte[8])), procedure, ["roof"]),
            8 => CarWork.Looks(known, "no-such-group", TestRegister.Left, 1),
            _ => new HoldPositions([], CarAtWork.Reason),
        };
    }
}
