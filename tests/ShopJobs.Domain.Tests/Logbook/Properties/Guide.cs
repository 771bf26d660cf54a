using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>What somebody who follows the screens does next.</summary>
internal static class Guide
{
    /// <summary>The next command and who gives it. Null when all is signed.</summary>
    public static (TestPerson Person, Command Command)? Next(CarAtWork car, JobBook job, Move move)
    {
        var placed = car.Placed(job);
        return Next(car, job, move, step => car.State.StandingOf(job, placed, step) == StepStanding.Signed);
    }

    /// <summary>The same for somebody who goes on over what he has finished himself.</summary>
    public static (TestPerson Person, Command Command)? NextInOneGo(CarAtWork car, JobBook job, TestPerson person, Move move)
    {
        var placed = car.Placed(job);
        return Next(car, job, move, step => car.State.StandingOf(job, placed, step) == StepStanding.Signed
            || car.State.FinishedOf(job, placed, step)?.Person == person.Id);
    }

    private static (TestPerson Person, Command Command)? Next(CarAtWork car, JobBook job, Move move, Func<StepInstance, bool> isDone)
    {
        var placed = car.Placed(job);
        var open = placed.Steps.Where(step => !isDone(step)).ToList();
        if (open.Count == 0)
        {
            return null;
        }

        var ready = open.FindAll(step => placed.Before(step).All(isDone));
        var step = ready.Count == 0 ? open[0] : ready[move.B % ready.Count];
        var worker = move.C % 4 == 0 ? Theo : Tess;
        var cycles = move.B % 2 == 0 ? 1 : 0;
        return car.State.NextOn(car.As(TestPerson.Lee), step) switch
        {
            NextAction.Fit fit => (worker, Choices.Cycled(car, new FitNew(job.Id, fit.Instance.Group.Id, fit.Positions, "lot 4471"), cycles)),
            NextAction.Prepare prepare => (worker, new TreatThread(prepare.Positions, prepare.Instance.Group.Condition, null, null, job.Id)),
            NextAction.ByHand hand => (worker, Choices.Cycled(car, new HandTighten(job.Id, hand.Instance.Group.Id, hand.Positions, move.A % 7 == 0 ? [Lee.Id] : []), cycles)),
            NextAction.PullNow pull => (worker, Pull(car, job, pull.Cell, move)),
            NextAction.TakeOff off => (worker, Choices.Cycled(car, new OpenPositions(off.Positions, job.Id, null), cycles)),
            NextAction.Look look => (move.A % 3 == 0 ? Lee : Theo, CarWork.Looks(job.Id, look.Instance.Group.Id, look.Instance.Place, look.Stage.Number)),
            NextAction.Countersign answer => (worker, new Countersign([.. answer.Pulls.Select(pull => pull.Number)], CarAtWork.Shown)),
            NextAction.Stopped stopped => (move.A % 3 == 0 ? Theo : Lee, CarWork.Decision(stopped.Position, (Disposition)(move.B % 3), accepted: move.A % 5 != 0)),
            _ => Sign(car, job, step, worker),
        };
    }

    /// <summary>A tool that may be used, with its kind of evidence; null when there is none.</summary>
    public static (ToolId Id, TorqueKind Kind)? GoodTool(CarAtWork car, Evidence asked, bool prefersDial)
    {
        var click = (TestTools.Click, TorqueKind.SettingConfirmed);
        var dial = (TestTools.Dial, TorqueKind.Reading);
        (ToolId, TorqueKind)[] order = asked == Evidence.Reading ? [dial] : prefersDial && asked != Evidence.Setting ? [dial, click] : [click, dial];
        var good = order.Where(tool => car.Tool(tool.Item1) is { OutOfUseBy: 0 } state && car.As(TestPerson.Lee).IsInDate(state) && !car.As(TestPerson.Lee).IsAtItsLimit(state)).ToList();
        return good.Count == 0 ? null : good[0];
    }

    /// <summary>The same for a stage: an angle is asked of the tool that measures it.</summary>
    public static (ToolId Id, TorqueKind Kind) ToolFor(CarAtWork car, Stage stage, bool prefersDial) => stage.Turn is not null
        ? (TestTools.Angle, TorqueKind.AngleTurned)
        : GoodTool(car, stage.Evidence, prefersDial) ?? (TestTools.Dial, TorqueKind.Reading);

    private static Command Pull(CarAtWork car, JobBook job, Cell cell, Move move)
    {
        var missing = cell.Stage.Conditions.Where(condition => !car.State.Is(car.As(TestPerson.Lee), condition, cell.Instance.Place)).ToList();
        if (missing.Count > 0)
        {
            return new DeclareCondition(missing) { Places = [cell.Instance.Place] };
        }

        var tool = ToolFor(car, cell.Stage, move.C % 3 == 0);
        var runDown = Choices.TurnedDown(car, cell.Instance.Group, cell.Position, move.C);
        var value = Choices.Asked(cell.Instance.Group, cell.Stage, runDown ?? car.State.Of(cell.Position).RunDownOf(), car.Tool(tool.Id).Tool);
        return new RecordTorque(
            job.Id, cell.Instance.Group.Id, cell.Position, cell.Cycle, cell.Stage.Number, cell.Visit, tool.Kind, value, tool.Id,
            move.A % 9 == 0 ? [Theo.Id] : [])
        { RunDown = runDown, AngleDegrees = cell.Stage.Turn?.Degrees };
    }

    private static (TestPerson, Command) Sign(CarAtWork car, JobBook job, StepInstance step, TestPerson worker)
    {
        var toOpen = step.Step.Opens
            .SelectMany(key => car.Register.Kinds[key].AllPositions())
            .Where(position => (step.Place is null || position.Place == step.Place) && car.State.Of(position).OpenedBy < job.Number).ToList();
        if (toOpen.Count > 0)
        {
            return (worker, new OpenPositions(toOpen, job.Id, null));
        }

        var results = step.Step.Records.Concat(step.Step.WaitsFor.OfType<WaitsFor.ForResult>().Select(wait => wait.Name));
        return results.FirstOrDefault(name => !car.State.Results.TryGetValue(name, out var book) || book.VoidBy > 0) is { } missing
            ? (worker, new RecordResult(missing, [new MeasuredValue("value", 1, "mm")], ResultBasis.Measured, null, [], job.Id, step.Id, CarAtWork.Shown))
            : (worker, new ConfirmStep(
                job.Id, step.Id, [.. step.Step.Ticks.Select(tick => tick.Id)],
                [.. step.Step.Measures.Select(measure => new MeasuredValue(measure.Id, measure.Minimum ?? 0, measure.Unit))], false, null, CarAtWork.Shown));
    }
}
