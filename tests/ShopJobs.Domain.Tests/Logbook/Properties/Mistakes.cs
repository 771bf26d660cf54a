using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>The next command with something wrong about it.</summary>
internal static class Mistakes
{
    private static readonly SessionId Earlier = new(new Guid(99, 9, 0, new byte[8]));

    /// <summary>The same command with something wrong about it.</summary>
    public static Command Spoilt(CarAtWork car, Command command, Move move) => command switch
    {
        RecordTorque { RunDown: not null } pull when move.A % 3 == 0 => pull with
        {
            RunDown = (move.B % 4) switch { 0 => null, 1 => CarAtWork.NewtonMetres(1.9m), 2 => CarAtWork.NewtonMetres(10.1m), _ => CarAtWork.NewtonMetres(8) },
        },
        RecordTorque pull => (move.A % 12) switch
        {
            0 or 1 or 2 or 3 when pull.AngleDegrees is not null => pull with { AngleDegrees = Choices.Angle(car, move, pull) },
            0 or 1 or 2 or 3 => pull with { Value = Choices.Value(car, move, pull) },
            4 or 5 => pull with { Tool = Choices.Tools[move.B % Choices.Tools.Count] },
            6 => pull with { Cycle = pull.Cycle - 1 },
            7 => pull with { Kind = (TorqueKind)(move.B % 6) },
            9 => pull with { ReportedFor = TestPerson.Theo.Id },
            10 => pull with { MadeIn = Earlier },
            8 => Reordered(car, pull, move) with { Stage = pull.Stage == 1 ? 2 : 1 },
            _ => Reordered(car, pull, move),
        },
        ConfirmStep confirm => (move.A % 5) switch
        {
            0 => confirm with { Ticks = [] },
            1 => confirm with { Values = [] },
            2 => confirm with { Values = [.. confirm.Values.Select(value => value with { Value = value.Value + 2 })] },
            3 => confirm with { NotApplicable = true, Reason = CarAtWork.Reason },
            _ => confirm with { NotApplicable = true },
        },
        DecideHold { Acceptance: { } said } decide => decide with { Acceptance = Lacking(car, said, move) },
        DecideHold decide => decide with { Acceptance = null },
        Release { CustomerAcceptance: { } said } release => release with { CustomerAcceptance = Lacking(car, said, move) },
        HandTighten or FitNew or OpenPositions when move.C % 4 == 0 => Choices.Cycled(car, command, move.A % 2 == 0 ? 7 : 23),
        DeclareCondition declare when move.A % 3 == 0 => declare with { MadeIn = Earlier },
        DeclareCondition declare => declare with { Places = null },
        HandTighten hand when move.B % 4 == 3 => hand with { MadeIn = Earlier },
        FitNew fit when move.B % 4 == 3 => fit with { MadeIn = Earlier },
        HandTighten hand when move.B % 4 == 1 => hand with { ReportedFor = TestPerson.Theo.Id },
        FitNew fit when move.B % 4 == 1 => fit with { ReportedFor = TestPerson.Theo.Id },
        HandTighten hand => hand with { Positions = [hand.Positions[0]], Helpers = [TestPerson.Theo.Id], Cycles = null },
        FitNew fit => new HandTighten(fit.Job, fit.Group, fit.Positions, []),
        OpenPositions { Job: { } job } open when Opener(car, job, open) is { } step => CarWork.Sign(job, step.Id),
        OpenPositions open when move.A % 3 != 0 && Again(car, open) is { } again => again,
        Witness look => (move.A % 4) switch
        {
            0 => look with { Accepted = false },
            1 => look with { Stage = look.Stage == 1 ? 2 : 1 },
            _ => look with { Accepted = false, Finding = CarAtWork.Reason },
        },
        OpenPositions open when open.Positions.Count > 1 => open with { Positions = [open.Positions[move.B % open.Positions.Count]], Cycles = null },
        _ => command,
    };

    // Words that others rely on, with one thing left out.
    private static Acceptance? Lacking(CarAtWork car, Acceptance said, Move move) => ((move.A + (move.B / 3) + move.C) % 9) switch
    {
        0 => said with { Who = "x" },
        1 => said with { On = null },
        2 => said with { On = car.Today.AddDays(1) },
        3 => said with { How = null },
        4 => said with { How = SaidHow.ByTelephone },
        5 => said with { KeptAt = " " },
        6 => said with { Words = "x" },
        _ => null,
    };

    /// <summary>The pull as it reads when it ends a little short.</summary>
    public static RecordTorque Short(CarAtWork car, RecordTorque pull)
    {
        var group = car.Placed(pull.Job).Group(pull.Group, pull.Position.Place)!.Group;
        if (group.Stages[pull.Stage - 1].Turn is { } turn)
        {
            return pull with { AngleDegrees = turn.Minimum - 1 };
        }

        var little = CarAtWork.NewtonMetres(group.Stages[pull.Stage - 1].Permitted.Minimum.Value - 1);
        return pull with
        {
            Kind = TorqueKind.Reading,
            Tool = TestTools.Dial,
            Value = Choices.OnTool(group, little, pull.RunDown ?? car.State.Of(pull.Position).RunDownOf(), car.Tool(TestTools.Dial).Tool),
        };
    }

    // The step that is done by opening these.
    private static StepInstance? Opener(CarAtWork car, JobId job, OpenPositions open) =>
        car.Placed(job).Steps.FirstOrDefault(step => step.Step.Opens.Contains(open.Positions[0].Key));

    /// <summary>Pulls once more where the screen asks to back off first; null where nothing was pulled.</summary>
    private static RecordTorque? Again(CarAtWork car, OpenPositions open) =>
        open.Positions.Select(position => car.State.Of(position).Last).FirstOrDefault(pull => pull is not null) is { Fact: var fact }
            ? new RecordTorque(
                fact.Job, fact.Group, fact.Position, car.State.Of(fact.Position).Cycle, fact.Stage, fact.Visit, fact.Kind,
                fact.Value, fact.Tool, [])
            { AngleDegrees = fact.AngleDegrees }
            : null;

    private static RecordTorque Reordered(CarAtWork car, RecordTorque pull, Move move)
    {
        var group = car.Placed(pull.Job).Group(pull.Group, pull.Position.Place)!;
        var visits = group.Group.Stages[pull.Stage - 1].Visits;
        var visit = move.B % visits.Count;
        var position = group.Joint.At(visits[visit]);
        return pull with { Visit = visit, Position = position, Cycle = car.State.Of(position).Cycle };
    }
}
