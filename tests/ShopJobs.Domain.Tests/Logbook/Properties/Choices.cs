using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>Turns a move that is not the next thing into a command on the car as it stands.</summary>
internal static partial class Choices
{
    public static readonly IReadOnlyList<ToolId> Tools = [TestTools.Click, TestTools.Dial, TestTools.Overdue, TestTools.Small, TestTools.Strange, TestTools.Angle];

    public static readonly ReleaseKind[] Kinds = [.. ReleaseKinds.All];

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
        MoveKind.Release => CarWork.To(Kinds[move.A % Kinds.Length], move.B % 12 == 0 ? null : (move.B % 3 == 0 ? (car.State.Odometer ?? 1000) + 150 : 1000) + (move.B % 200), accepted: move.C % 2 == 0) with
        {
            OdometerWhy = move.C % 3 == 0 ? CarAtWork.Reason : null,
            Closing = move.C % 13 == 0 ? [.. ClosingCheck.All.Skip(move.B % 3)] : ClosingCheck.All,
            Driver = move.C % 7 == 0 ? null : TestPerson.Tess.Id,
            DistanceKm = move.C % 5 == 0 ? 0 : 20,
        },
        MoveKind.ComeBack => new EndRoadTest(new OdometerReading((car.State.Odometer ?? 1000) + (move.B % 40) - 5, DistanceUnit.Kilometre), null) { OdometerWhy = move.C % 3 == 0 ? CarAtWork.Reason : null },
        MoveKind.Treat => new TreatThread([Position(car, move.A)], (ThreadCondition)(move.B % 5), "oil", null, move.C % 2 == 0 ? Job(car, move.C)?.Id : null),
        MoveKind.Uphold => new UpholdRelease(Given(car, move.A), CarAtWork.Shown),
        MoveKind.Withdraw => new WithdrawRelease(Given(car, move.A), move.B % 2 == 0, CarAtWork.Reason, CarAtWork.Shown),
        MoveKind.Countersign => new Countersign(Awaiting(car, move), CarAtWork.Shown),
        MoveKind.Settle => Settle(car, move),
        MoveKind.Result => new RecordResult(
            (move.A % 6) switch { 0 => "alignment", 1 => "corner-weights", 2 => "setting:front-bar", 3 => "bleed", 4 => "bed-in", _ => "setting:ride-height" },
            [new MeasuredValue("value", move.B, "mm")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown)
        {
            Tool = move.C % 5 == 0 ? null : TestTools.Scales,
            Notes = move.C % 7 == 0 ? null : [new WrittenNote("grade", move.C % 7 == 1 ? "DOT 3" : "DOT 4")],
        },
        MoveKind.Declare => new DeclareCondition([move.A % 2 == 0 ? TestRegister.WheelUp : TestRegister.WheelDown])
        {
            Places = (move.C % 4) switch { 0 => null, 1 => [TestRegister.Left, TestRegister.Right], 2 => [TestRegister.Right], _ => [TestRegister.Left] },
        },
        MoveKind.Summary => new IssueSummary(CarAtWork.Reason, move.A % 4 == 0 ? move.B : car.Last, CarAtWork.Shown),
        MoveKind.End => End(car, move),
        MoveKind.Visit => Visit(car, move),
        MoveKind.Nonsense => Nonsense(car, move),
        _ => null,
    };

    /// <summary>One thing in a tool's own logbook.</summary>
    public static (ToolId Tool, Entry Entry) ToolEntry(CarAtWork car, Move move)
    {
        var due = car.Today.AddDays(300);
        if (move.A % 7 == 6)
        {
            return (TestTools.Scales, (move.B % 6) switch
            {
                0 => new Doubted(CarAtWork.Reason),
                1 => TestTools.Checked(car.Today, due, false, true),
                2 => TestTools.Checked(car.Today, due, null, false),
                3 => TestTools.Checked(car.Today, due, true, true),
                4 => new InstrumentEntered(TestTools.Scales, "S1", "NB-S1", InstrumentKind.Scales),
                _ => new Cleared([.. car.Tool(TestTools.Scales).Doubts.Select(doubt => doubt.Number)], CarAtWork.Reason),
            });
        }

        var tool = (move.A % 7) switch { < 2 => TestTools.Dial, < 5 => TestTools.Click, _ => TestTools.Strange };
        if (car.Tool(tool).Tool is null)
        {
            return (tool, TestTools.StrangeEntered);
        }

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

    /// <summary>A step that was finished, signed with those before it that the same person finished; now and then with one too many or too few.</summary>
    public static ConfirmStep SignTogether(CarAtWork car, JobBook job, TestPerson person, StepInstance step, Move move)
    {
        var placed = car.Placed(job);
        var with = car.State.FinishedBefore(person.Id, job, placed, step).Select(before => before.Id).ToList();
        var said = job.Finished.GetValueOrDefault(step.Id)?.Fact;
        return new ConfirmStep(job.Id, step.Id, said?.Ticks ?? [], said?.Values ?? [], false, null, CarAtWork.Shown)
        {
            With = (move.A % 7) switch
            {
                0 => [.. with.Skip(1)],
                1 => [.. with, placed.Steps.ElementAt(move.B % placed.Steps.Count).Id],
                _ => with,
            },
        };
    }

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
            move.C % 4 == 0, move.C % 12 == 0 ? null : CarAtWork.Reason, CarAtWork.Shown)
        {
            With = move.C % 5 == 1 ? [car.Placed(job).Steps.ElementAt(move.A % car.Placed(job).Steps.Count).Id] : null,
        };
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
        return new RecordSettled(job.Id, group.Group.Id, positions, angle is not null, angle, tool.Item2, value, tool.Item1, odometer, CarAtWork.Shown)
        {
            OdometerWhy = move.C % 5 == 0 ? null : CarAtWork.Reason,
        };
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
