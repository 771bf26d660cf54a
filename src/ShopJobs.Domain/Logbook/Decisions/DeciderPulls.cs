using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Reports of work with a tool: pulls, always recorded where the position can be identified, and re-torques.
public static partial class Decider
{
    private static Verdict Pull(CarState state, RecordTorque pull, Circumstances now, HoldRules rules)
    {
        if ((UnknownPositions(state, [pull.Position], now) ?? UnknownJob(state, pull.Job) ?? NotOfThatMoment(state, [pull.Position], pull.OnPaper, now)) is { } unknown)
        {
            return unknown;
        }

        if (GroupsOf(state, now, pull.Job, pull.Group, [pull.Position]) is not [var instance]
            || pull.Stage < 1 || pull.Stage > instance.Group.Stages.Count
            || instance.Group.Stages[pull.Stage - 1].Visits.ElementAtOrDefault(pull.Visit) != pull.Position.Number)
        {
            return NotInGroup(pull.Group);
        }

        var job = state.Jobs[pull.Job];
        var stage = instance.Group.Stages[pull.Stage - 1];
        var spec = SpecificationOf(now, instance.Group, stage, pull.Position, pull.Tool);
        var runDown = instance.Group.RunDown == RunDown.Add ? pull.RunDown ?? state.Of(pull.Position).RunDownOf() : null;
        var question = new PullQuestion(state, now, job, now.Placed(job), instance, state.Of(pull.Position))
        {
            Stage = stage,
            Cycle = pull.Cycle,
            Visit = pull.Visit,
            Kind = pull.Kind,
            Value = pull.Value,
            AngleDegrees = pull.AngleDegrees,
            RunDown = runDown,
            RunDownGiven = pull.RunDown,
            ToolId = pull.Tool,
            ReportedFor = pull.ReportedFor,
            MadeIn = pull.MadeIn,
            ValueProblem = pull.Value is { } value ? Judging.ValueProblem(pull.Kind, value.NewtonMetres, spec, runDown) : null,
        };
        return Accept(new TorqueRecorded(
            pull.Job, pull.Group, pull.Position, question.Book.Cycle, pull.Stage, pull.Visit, pull.Kind, pull.Value, pull.Tool, now.Today,
            spec, pull.Helpers, RestsOn(state, instance, pull), Failing(rules.Pull, question))
        {
            RunDown = runDown,
            AtFastener = pull.Value is not { } torque || (runDown is null && spec.SettingRatio is null)
                ? null
                : new EnteredTorque(Judging.AtFastener(torque.NewtonMetres, spec, runDown), TorqueUnit.NewtonMetre),
            AngleDegrees = pull.AngleDegrees,
            RidesOn = now.Register.RiddenBy(pull.Position),
            Conditions = stage.Conditions.Count == 0
                ? null
                : [.. stage.Conditions.Select(condition => state.Declared(now, condition, instance.Place)?.Number ?? 0).Where(number => number > 0)],
            DrivenBy = DrivenBy(state, question),
            ToolEntry = question.Tool.Number,
            OnPaper = pull.OnPaper,
        });
    }

    // The pulls of the two jammed nuts that drive it: what is doubted of them is doubted of it.
    private static IReadOnlyList<long>? DrivenBy(CarState state, PullQuestion question) =>
        question.Instance.Group.Jam is { } jam && question.Placed.Group(jam.Group, question.Instance.Place) is { } pair
            ? [.. state.Of(pair.Joint.At(question.Book.Position.Number)).Pulls.Where(pull => !pull.IsGone).Select(pull => pull.Number)]
            : null;

    private static Verdict Settle(CarState state, RecordSettled settled, Circumstances now, HoldRules rules)
    {
        if ((UnknownPositions(state, settled.Positions, now) ?? UnknownJob(state, settled.Job)) is { } unknown)
        {
            return unknown;
        }

        if (GroupsOf(state, now, settled.Job, settled.Group, settled.Positions) is not { } groups)
        {
            return NotInGroup(settled.Group);
        }

        var refused = Permissions(rules, new PermissionQuestion(state, now, settled, Right.Record));
        if (settled.OdometerKm is not >= 0)
        {
            refused.Add(new HoldPoint(HoldReason.OdometerMissing));
        }
        else if (settled.OdometerKm < state.Odometer && settled.OdometerWhy is null)
        {
            refused.Add(new HoldPoint(HoldReason.OdometerBelowLast) { Km = state.Odometer });
        }

        if (refused.Count > 0)
        {
            return new Verdict.Refused(refused);
        }

        var job = state.Jobs[settled.Job];
        return Accept(
        [
            .. settled.Positions.Distinct().Select(position =>
            {
                var instance = groups.First(group => group.Joint == position.Joint);
                var spec = SpecificationOf(now, instance.Group, instance.Group.Final, position, settled.Tool);
                var runDown = instance.Group.RunDown == RunDown.Add ? state.Of(position).RunDownOf() : null;
                var question = new PullQuestion(state, now, job, now.Placed(job), instance, state.Of(position))
                {
                    Stage = instance.Group.Final,
                    Kind = settled.Kind,
                    Value = settled.Value,
                    RunDown = runDown,
                    ToolId = settled.Tool,
                    AngleDegrees = settled.AngleDegrees,
                    OdometerKm = settled.OdometerKm,
                    ValueProblem = Judging.ValueProblem(settled.Kind, settled.Value.NewtonMetres, spec, runDown),
                };
                return new Settled(
                    [position], settled.Job, settled.Group, settled.Moved, settled.AngleDegrees, settled.Kind, settled.Value,
                    settled.Tool, now.Today, Failing(rules.Settling, question))
                {
                    OdometerKm = settled.OdometerKm,
                    Odometer = settled.Odometer,
                    OdometerWhy = settled.OdometerWhy,
                    ToolEntry = question.Tool.Number,
                };
            }),
        ]);
    }

    private static List<HoldReason> Failing(IReadOnlyList<PullRule> rules, PullQuestion question) =>
        [.. rules.Where(rule => rule.Fails(question)).Select(rule => rule.Reason)];

    private static IReadOnlyList<long> RestsOn(CarState state, GroupInstance instance, RecordTorque pull)
    {
        var numbers = new SortedSet<long>();
        foreach (var book in instance.Positions.Select(state.Of))
        {
            if (book.Position == pull.Position || pull.Stage > 1)
            {
                numbers.Add(book.HandTightBy);
                numbers.UnionWith(Enumerable.Range(1, pull.Stage - 1).SelectMany(book.Newest).Where(state.Passes).Select(lower => lower.Number));
            }
        }

        numbers.Remove(0);
        return [.. numbers];
    }

    private static SpecificationInForce SpecificationOf(
        Circumstances now, JointGroup group, Stage stage, JointPosition position, Tools.ToolId toolId)
    {
        var tool = now.Tool(toolId).Tool;
        var half = tool is null ? 0 : new EnteredTorque(tool.Graduation, tool.Unit).NewtonMetres / 2;
        var deviation = tool?.ToleranceFor(stage.Value) ?? ToolDeviation.ClassLimitPercent(stage.Value);
        return new SpecificationInForce(
            group.Stages.Count,
            stage.Visits.Count(visit => visit == position.Number),
            stage.Permitted.Minimum.NewtonMetres,
            stage.Permitted.Maximum.NewtonMetres,
            stage.Value.NewtonMetres,
            half,
            group.Jam is { } jam ? TargetLimits.JamLimit(jam.JamTorque, jam.JamToolDeviationPercent, deviation) : null,
            stage.Witness,
            group.Risk,
            group.IfShort,
            group.ReTorque)
        {
            SettingRatio = stage.Turn is null ? group.LeverOn(tool)?.Ratio : null,
            Turn = stage.Turn,
            JointMaximum = group.Final.Permitted.Maximum.NewtonMetres is var joint && joint > stage.Permitted.Maximum.NewtonMetres ? joint : null,
        };
    }
}
