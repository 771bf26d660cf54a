using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Procedures;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>One of the shop's own procedures on a car: Tess works as the screens lead, Theo looks.</summary>
internal sealed class SeedJob
{
    /// <summary>The run-down torque of every self-locking nut, where a test gives no other.</summary>
    public const decimal RunDown = 4;

    private const int MostActions = 200;

    public SeedJob(string file, params string[] places)
        : this(new CarAtWork(shelf: SeedTools.Shelf(CarAtWork.Start), register: Seed.Register), file, places)
    {
    }

    /// <summary>One more procedure on a car.</summary>
    public SeedJob(CarAtWork car, string file, params string[] places)
    {
        Car = car;
        var loaded = Seed.Procedure(file);
        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        Id = Car.StartJob(loaded.Value!, places);
    }

    public CarAtWork Car { get; }

    public JobId Id { get; }

    public PlacedProcedure Placed => Car.Placed(Id);

    /// <summary>Every pull of the job, in the order of the book.</summary>
    public IReadOnlyList<TorqueRecorded> Pulls => [.. Car.Book.Select(line => line.Entry).OfType<TorqueRecorded>()];

    /// <summary>Positions of a joint, all of them or those named.</summary>
    public IReadOnlyList<JointPosition> At(string key, string place, params int[] numbers) =>
        [.. Car.Positions(key, place).Where(position => numbers.Length == 0 || numbers.Contains(position.Number))];

    /// <summary>Says how the car is at every place of the job, as the panel of a step does.</summary>
    public void Stand(string aspect, string value) => Car.Do(
        Tess, new DeclareCondition([new CarCondition(aspect, value)]) { Places = Car.State.Jobs[Id].Fact.Places });

    // What was said of this place and has ended since is asked again, in one touch.
    private void SayAgain(Cell cell)
    {
        var now = Car.As(Tess);
        var ended = cell.Stage.Conditions.Where(condition =>
            Car.State.LastSaid(now, condition.Aspect, cell.Instance.Place) is { } said && said.Value == condition.Value && Car.State.HasEnded(now, said)).ToList();
        if (ended.Count > 0)
        {
            Car.Do(Tess, new DeclareCondition(ended) { Places = [cell.Instance.Place] });
        }
    }

    /// <summary>Reports as open what a step opens outside its own work.</summary>
    public void Open(string step)
    {
        var instance = Placed.Step(step)!;
        foreach (var key in instance.Step.Opens)
        {
            foreach (var place in Car.Register.Kinds[key].Places.Where(place => instance.Place is null ? Car.State.Jobs[Id].Fact.Places.Contains(place) : place == instance.Place))
            {
                Car.Open(Tess, Id, Car.Positions(key, place));
            }
        }
    }

    /// <summary>Does on a step what the screen asks for, one action after the other, with one wrench; stops where a witness must look.</summary>
    public void Work(string step, params ToolId[] wrenches)
    {
        for (var count = 0; count < MostActions; count++)
        {
            switch (Car.Next(Id, step))
            {
                case NextAction.TakeOff off:
                    Car.Open(Tess, Id, off.Positions);
                    break;
                case NextAction.Fit fit:
                    Car.FitNew(Tess, Id, fit.Instance.Group.Id, fit.Positions);
                    break;
                case NextAction.Prepare prepare:
                    Car.Do(Tess, new TreatThread(prepare.Positions, prepare.Instance.Group.Condition, null, null, Id));
                    break;
                case NextAction.ByHand hand:
                    Assert.Empty(Car.ByHand(Tess, Id, hand.Instance.Group.Id, hand.Positions).Problems);
                    break;
                case NextAction.PullNow { Cell: var cell }:
                    Assert.Empty(Pull(cell, wrenches.First(wrench => Fits(Car.Tool(wrench).Tool!, cell))).Problems);
                    break;
                default:
                    return;
            }
        }

        Assert.Fail($"“{step}” has no end.");
    }

    private static bool Fits(TorqueTool tool, Cell cell) => cell.Stage.Turn is not null
        ? tool.Kind == ToolKind.Angle
        : tool.IsInRange(cell.Instance.Group.SettingFor(cell.Stage, CarAtWork.NewtonMetres(RunDown), tool));

    /// <summary>Pulls a cell at the number that the screen shows, set to the wrench's graduation; a run-down torque that is added is read first.</summary>
    public TorqueRecorded Pull(Cell cell, ToolId wrench, decimal? runDown = RunDown, decimal? setTo = null)
    {
        SayAgain(cell);
        var group = cell.Instance.Group;
        if (cell.Stage.Turn is { } turn)
        {
            return (TorqueRecorded)Car.Do(Tess, new RecordTorque(
                Id, group.Id, cell.Position, cell.Cycle, cell.Stage.Number, cell.Visit, TorqueKind.AngleTurned, null, wrench, [])
            { AngleDegrees = setTo ?? turn.Degrees });
        }

        var known = Car.State.Of(cell.Position).RunDownOf();
        var read = group.RunDown == Domain.Fasteners.RunDown.Add && known is null && runDown is { } torque ? CarAtWork.NewtonMetres(torque) : (EnteredTorque?)null;
        var graduation = Car.Tool(wrench).Tool!.Graduation;
        var setting = setTo ?? Math.Round(group.SettingFor(cell.Stage, known ?? read, Car.Tool(wrench).Tool).Value / graduation) * graduation;
        return (TorqueRecorded)Car.Do(Tess, new RecordTorque(
            Id, group.Id, cell.Position, cell.Cycle, cell.Stage.Number, cell.Visit, Car.Tool(wrench).Tool!.Kind.Evidence(), CarAtWork.NewtonMetres(setting), wrench, [])
        { RunDown = read });
    }

    /// <summary>Pulls the cell that is next on a step.</summary>
    public TorqueRecorded PullNext(string step, ToolId wrench, decimal? runDown = RunDown, decimal? setTo = null) =>
        Pull(Assert.IsType<NextAction.PullNow>(Car.Next(Id, step)).Cell, wrench, runDown, setTo);

    /// <summary>Theo looks at everything of a step that waits for a second person, and accepts it.</summary>
    public void Look(string step)
    {
        while (Car.Next(Id, step) is NextAction.Look look)
        {
            Car.Do(Theo, CarWork.Looks(Id, look.Instance.Group.Id, look.Instance.Place, look.Stage.Number));
        }
    }

    /// <summary>The sign-off with every tick, and with a value inside the limits for each measure that is not given.</summary>
    public ConfirmStep ToSign(string step, params (string Measure, decimal Value)[] given)
    {
        var instance = Placed.Step(step)!.Step;
        return CarWork.Sign(Id, step, [.. instance.Ticks.Select(tick => tick.Id)]) with
        {
            Values = Values(instance.Measures, given),
        };
    }

    private static List<MeasuredValue> Values(IReadOnlyList<Measure> measures, (string Measure, decimal Value)[] given) =>
    [
        .. measures.Select(measure => new MeasuredValue(
            measure.Id,
            given.Where(value => value.Measure == measure.Id).Select(value => (decimal?)value.Value).FirstOrDefault()
                ?? measure.Minimum ?? measure.Maximum ?? 1,
            measure.Unit)),
    ];

    /// <summary>Records a result that a step asks for.</summary>
    public Entry Result(string step, string name, params (string Measure, decimal Value)[] given) => Car.Do(Tess, ToRecord(step, name, given));

    /// <summary>Every value and note that the register asks for: those given, else a value inside its limits.</summary>
    public RecordResult ToRecord(string step, string name, params (string Measure, decimal Value)[] given)
    {
        var kind = Car.Register.ResultOf(name);
        return new RecordResult(
            kind.At(Placed.Step(step)!.Place), Values(kind.Measures, given), ResultBasis.Measured, null, [], Id, step, CarAtWork.Shown)
        {
            Notes = [.. kind.Notes.Select(note => new WrittenNote(note.Id, note.IsDay ? "2026-11-02" : note.OneOf.Count > 0 ? note.OneOf[0] : "4471"))],
            Tool = kind.NeedsInstrument ? SeedTools.Gauge : null,
        };
    }

    /// <summary>The sign-off, tried: the reasons why it is refused.</summary>
    public IReadOnlyList<HoldReason> Refusals(string step, params (string Measure, decimal Value)[] given) => Car.Refused(Tess, ToSign(step, given));

    public void Sign(string step, params (string Measure, decimal Value)[] given) => Car.Do(Tess, ToSign(step, given));

    /// <summary>Opens, works, lets the second person look, records what the step records and signs.</summary>
    public void Finish(string step, params ToolId[] wrenches)
    {
        Open(step);
        Work(step, wrenches);
        Look(step);
        foreach (var name in Placed.Step(step)!.Step.Records)
        {
            Result(step, name);
        }

        Sign(step);
    }

    /// <summary>Finishes every step that comes before this one.</summary>
    public void FinishUpTo(string step, params ToolId[] wrenches)
    {
        foreach (var earlier in Placed.Steps.TakeWhile(earlier => earlier.Step.Id != step).Where(earlier => Car.Standing(Id, earlier.Id) != StepStanding.Signed).ToList())
        {
            Finish(earlier.Id, wrenches);
        }
    }

    /// <summary>True when every step of the job is signed.</summary>
    public bool IsSigned => Placed.Steps.All(step => Car.Standing(Id, step.Id) == StepStanding.Signed);
}
