using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Why a report of work does not count.
internal sealed partial class Ledger
{
    private readonly Remembered<JobId, bool> closed = new();

    private static readonly HoldReason[] ValueProblems = [HoldReason.UnderRange, HoldReason.OverRange, HoldReason.SettingNotInstructed];

    private IReadOnlyList<HoldReason> ProblemsOfHand(HandTighten hand, JointPosition position)
    {
        var group = jobs[hand.Job].Group(hand.Group, position.Place)!.Rules;
        return Those(
            (HoldReason.CellMoved, IsLate(hand.Positions, hand.Cycles, position)),
            (HoldReason.RidesOnLoose, !IsCarried(position, group.Temporary)),
            (HoldReason.StillOn, IsBarred(position)),
            (HoldReason.UnfinishedBehind, IsUnfinishedBehind(position)),
            (HoldReason.JobClosed, IsClosed(hand.Job)),
            (HoldReason.JobOnHold, IsOnHold(hand.Job)),
            (HoldReason.ReportedByAnother, hand.ReportedFor is not null),
            (HoldReason.EarlierSession, IsOfAnotherSession(hand.MadeIn)),
            (HoldReason.NotOpened, !group.Temporary && (WhatIsOn(position) == On.AsFound || LastPull(position) is not null)),
            (HoldReason.HardwareNotNew, AsksNewHardware(position, group)));
    }

    private IReadOnlyList<HoldReason> ProblemsOfPull(RecordTorque pull, Line line, IReadOnlySet<Right> rights)
    {
        var job = jobs[pull.Job];
        var group = job.Group(pull.Group, pull.Position.Place)!;
        var stage = group.Stage(pull.Stage);
        var position = pull.Position;
        var step = job.Steps.FirstOrDefault(at => job.WorkOf(at).Any(work => work.Group.Joint == group.Joint && work.Group.Rules.Id == group.Rules.Id && work.Stages.Contains(pull.Stage)));
        var done = IsDone(position, pull.Stage);
        var held = HoldsOn(position).Count > 0;
        return Those(
        [
            (HoldReason.NoRightToRecord, !rights.Contains(Right.Record)),
            (HoldReason.RidesOnLoose, !IsCarried(position, group.Rules.Temporary)),
            (HoldReason.StillOn, IsBarred(position)),
            (HoldReason.UnfinishedBehind, IsUnfinishedBehind(position)),
            (HoldReason.TooLate, pull.Stage == group.Rules.Stages.Count && group.Rules.Within is { } within && HandTightBy(position) is > 0 and var hand && clock.MayHavePassed(At(hand), within, line.At)),
            (HoldReason.JobClosed, IsClosed(pull.Job)),
            (HoldReason.JobOnHold, IsOnHold(pull.Job)),
            (HoldReason.ReportedByAnother, pull.ReportedFor is not null),
            (HoldReason.EarlierSession, IsOfAnotherSession(pull.MadeIn)),
            (HoldReason.SecondPull, done || PullsOn(position).Any(earlier => Fact(earlier).Stage > pull.Stage
                || (IsTurn(earlier) && Fact(earlier).Stage == pull.Stage && Fact(earlier).Visit == pull.Visit))),
            (HoldReason.PositionHeld, held),
            (HoldReason.BackOffFirst, MustBackOff(position)),
            (HoldReason.CellMoved, pull.Cycle != CycleOf(position)),
            (HoldReason.NotHandTight, !group.Rules.Temporary && WhatIsOn(position) != On.Run),
            (HoldReason.HardwareNotNew, AsksNewHardware(position, group.Rules)),
            (HoldReason.StepBefore, step is not null && GatesOf(job, step, line.At, line.Person).Any()),
            (HoldReason.LowerStageMissing, Enumerable.Range(1, pull.Stage - 1).Any(lower => group.Positions.Any(at => !IsDone(at, lower)))),
            (HoldReason.OutOfOrder, !group.Rules.Temporary && !done && !held && NextVisit(group, stage) != pull.Visit),
            (HoldReason.JamPairMissing, group.Rules.Jam is { } jam && job.Group(jam.Group, group.Place) is { } pair && !IsAtTorque(pair.Joint.At(position.Number))),
            (HoldReason.WrongCarCondition, !stage.Conditions.All(condition => DeclaredBy(condition, position.Place, line.At) > 0)),
            (HoldReason.ThreadOtherwise, ThreadOf(position) is { } carries && carries != group.Rules.Condition
                && !(group.Rules.Condition == ThreadCondition.PreAppliedLocker && carries == ThreadCondition.Dry)),
            (HoldReason.ValueMissing, group.Rules.RunDown == RunDown.Add && RunDownOf(pull) is null),
            (HoldReason.ValueOutside, pull.RunDown is { } turned && group.Rules.RunDownPermitted is { } permitted
                && (turned.NewtonMetres < permitted.Minimum.NewtonMetres || turned.NewtonMetres > permitted.Maximum.NewtonMetres)),
            (HoldReason.TurnOutside, stage.Turn is { } turn && (pull.AngleDegrees < turn.Minimum || pull.AngleDegrees > turn.Maximum)),
            .. ToolProblems(pull.Tool, pull.Value, pull.Kind, group.Rules, stage, line.Day),
            .. ValueProblemsOf(pull.Kind, pull.Value, RunDownOf(pull), group.Rules, pull.Stage, pull.Tool),
        ]);
    }

    /// <summary>What was last put on its thread, whatever was opened since.</summary>
    private ThreadCondition? ThreadOf(JointPosition position) =>
        (lines.LastOrDefault(line => line.Entry is ThreadTreated fact && fact.Positions.Contains(position))?.Entry as ThreadTreated)?.Thread;

    /// <summary>The run-down torque given with a pull, else with the newest one before it that is not void.</summary>
    private EnteredTorque? RunDownOf(RecordTorque pull) =>
        jobs[pull.Job].Group(pull.Group, pull.Position.Place)!.Rules.RunDown != RunDown.Add ? null : pull.RunDown ?? RunDownOn(pull.Position);

    private EnteredTorque? RunDownOn(JointPosition position) =>
        PullsOn(position).LastOrDefault(pull => pull.RunDown is not null && !IsVoid(pull.Number))?.RunDown;

    private IReadOnlyList<HoldReason> ProblemsOfSettling(RecordSettled settled, JointPosition position, Line line, IReadOnlySet<Right> rights)
    {
        var group = jobs[settled.Job].Group(settled.Group, position.Place)!.Rules;
        var last = LastPull(position);
        return Those(
        [
            (HoldReason.ReTorqueNotDue, !OwesReTorque(position) || last is null || !DrivenSince(last.Number)),
            (HoldReason.PositionHeld, HoldsOn(position).Count > 0),
            (HoldReason.MovedTooFar, settled.AngleDegrees > 30),
            (HoldReason.ReTorqueEarly, IsTooEarly(position, settled.OdometerKm, DateOnly.FromDateTime(line.At), rights)),
            (HoldReason.WrongCarCondition, !group.Stages[^1].Conditions.All(condition => DeclaredBy(condition, position.Place, line.At) > 0)),
            .. ToolProblems(settled.Tool, settled.Value, settled.Kind, group, group.Stages[^1], line.Day),
            .. ValueProblemsOf(settled.Kind, settled.Value, group.RunDown == RunDown.Add ? RunDownOn(position) : null, group, group.Stages.Count, settled.Tool),
        ]);
    }

    /// <summary>Both ends inside, in decimal N·m; a confirmed setting is the instructed one within half a graduation and what a jam pair holds.</summary>
    private static IReadOnlyList<HoldReason> ProblemOfValue(TorqueKind kind, decimal onTool, EnteredTorque? runDown, JointGroup group, int stage, ToolHistory tool)
    {
        var rules = group.Stages[stage - 1];
        var added = runDown?.NewtonMetres ?? 0;
        var value = AtFastener(onTool, runDown, group, tool);
        if (value > rules.Permitted.Maximum.NewtonMetres)
        {
            return [HoldReason.OverRange];
        }

        if (kind != TorqueKind.SettingConfirmed)
        {
            return value < rules.Permitted.Minimum.NewtonMetres ? [HoldReason.UnderRange] : [];
        }

        var half = (tool.Entered?.Graduation ?? 0) / 2;
        var jamHolds = group.Jam is { } jam ? jam.JamTorque.NewtonMetres * (1 - (jam.JamToolDeviationPercent / 100)) / 1.04m : decimal.MaxValue;
        var instructed = rules.Value.NewtonMetres + added;
        var setting = group.Adapter is null ? instructed : instructed * Wrench(group.Adapter, tool) / Lever(group.Adapter, tool);
        return value >= rules.Permitted.Minimum.NewtonMetres && value <= jamHolds && onTool >= setting - half && onTool <= setting + half
            ? []
            : [HoldReason.SettingNotInstructed];
    }

    private static decimal AtFastener(decimal onTool, EnteredTorque? runDown, JointGroup group, ToolHistory tool) =>
        Math.Max(0, (group.Adapter is null ? onTool : Math.Round(onTool * Lever(group.Adapter, tool) / Wrench(group.Adapter, tool), 3)) - (runDown?.NewtonMetres ?? 0));

    // The adapters of the test shop go straight out: wrench and adapter make one lever.
    private static decimal Lever(Adapter adapter, ToolHistory tool) => Wrench(adapter, tool) + (decimal)adapter.Setting.Adapter.Millimeters;

    // The tool's own length; the procedure's where nobody entered it, and then the pull does not count.
    private static decimal Wrench(Adapter adapter, ToolHistory tool) => tool.Entered?.LengthMm ?? (decimal)adapter.Setting.Wrench.Millimeters;

    private IEnumerable<(HoldReason, bool)> ValueProblemsOf(TorqueKind kind, EnteredTorque? value, EnteredTorque? runDown, JointGroup group, int stage, ToolId tool)
    {
        var found = value is null ? [] : ProblemOfValue(kind, value.Value.NewtonMetres, runDown, group, stage, Tool(tool));
        return ValueProblems.Select(problem => (problem, found.Contains(problem)));
    }

    /// <summary>Pulls of a tool since its calibration, on all cars: told to the model as to the product.</summary>
    public Func<ToolId, int> PullsWith { get; set; } = static _ => 0;

    private IEnumerable<(HoldReason, bool)> ToolProblems(ToolId id, EnteredTorque? value, TorqueKind kind, JointGroup group, Stage stage, DateOnly day)
    {
        var tool = Tool(id);
        var entered = tool.Entered;
        yield return (HoldReason.ToolUnknown, entered is null);
        yield return (HoldReason.ToolQuarantined, tool.OutOfUse);
        yield return (HoldReason.ToolOverdue, entered is not null && !tool.OutOfUse && !tool.IsCalibratedOn(day));
        yield return (HoldReason.CalibrationUnknown, entered is not null && !tool.OutOfUse && tool.IsCalibratedOn(day) && !tool.IsCalibratedOn(clock.Latest(day)));
        yield return (HoldReason.ToolAtItsLimit, entered is not null && !tool.OutOfUse && PullsWith(id) >= (entered.CycleLimit ?? 5000));
        yield return (HoldReason.ToolOutOfRange, entered is not null && (value?.NewtonMetres < entered.LowestMarked || value?.NewtonMetres > entered.Top));
        yield return (HoldReason.ToolLengthMissing, stage.Turn is null && group.Adapter is not null && entered is { LengthMm: null });
        yield return (HoldReason.EvidenceNotAllowed, !(kind switch
        {
            TorqueKind.AngleTurned => stage.Turn is not null && entered?.Kind is not (ToolKind.Click or ToolKind.Indicating),
            _ when stage.Turn is not null => false,
            TorqueKind.SettingConfirmed => stage.Evidence != Evidence.Reading && entered?.Kind != ToolKind.Indicating,
            TorqueKind.Reading => stage.Evidence != Evidence.Setting && entered?.Kind != ToolKind.Click,
            _ => false,
        }));
    }

    /// <summary>The tool as its logbook had it at an instant.</summary>
    private ToolHistory Tool(ToolId id, DateTime at) => new(tools.TryGetValue(id, out var book) ? book.FindAll(line => line.At <= at) : []);

    private ToolHistory Tool(ToolId id) => new(tools.TryGetValue(id, out var book) ? book : []);

    /// <summary>Ended by a release, and not running again since a sign-off of it fell by a correction, or by a witness's own work.</summary>
    private bool IsClosed(JobId job) => closed.Of(job, id =>
        lines.LastOrDefault(line => line.Closes.Contains(id)) is { } end && end.Entry switch
        {
            JobCancelled => true,
            JobTakenBack => !IsUnclosed(id),
            _ => !lines.Skip((int)end.Number).Any(line => TakesAwayFrom(line, id)),
        });

    private bool TakesAwayFrom(Line line, JobId job) => (line.Entry is Corrected || line.TakesBack.Count > 0 || LooksFallenBy(line).Any())
        && Upto(line.Number) is var then
        && jobs[job].Steps.Select(step => then.SignOff(jobs[job], step)).OfType<Line>()
            .Any(sign => sign.Rests.Append(sign.Number).Any(number => then.FellAt(number) == line.Number));

    /// <summary>Rule 3 and 7: single-use hardware, a replacement decided, or a short pull that asks for it.</summary>
    private bool AsksNewHardware(JointPosition position, JointGroup group)
    {
        var fitted = lines.LastOrDefault(line => line.Entry is FittedNew fact && fact.Positions.Contains(position) && line.Problems.Count == 0)?.Number ?? 0;
        var replaced = lines.Where(line => line.Entry is Decided { Disposition: Disposition.Replace } fact && fact.Position == position)
            .Select(line => line.About.DefaultIfEmpty(line.Number).Max())
            .Concat(lines.Where(line => line.Opens.Contains(position)).Select(line => Upto(line.Number - 1).ShortThatReplaces(position)))
            .DefaultIfEmpty(0).Max();
        return (group.Hardware.Reuse == HardwareReuse.SingleUse && fitted <= LastOpened(position)) || (replaced > 0 && fitted <= replaced);
    }

    private long ShortThatReplaces(JointPosition position) =>
        NewestOfCells(position).Where(pull => IsShort(pull) && GroupOf(pull).Rules.IfShort == IfShort.Replace).Select(pull => pull.Number).DefaultIfEmpty(0).Max();

    // Rule 3: what may have been pulled, and what was pulled on records that fell, is pulled all the same; a second pull on top never counts.
    private bool MustBackOff(JointPosition position) =>
        PullsOn(position).Any(pull => !IsTurn(pull) && IsVoid(pull.Number))
        || lines.Any(line => line.Entry is DeclaredFromPaper { Stage: > 0 } declared && declared.Positions.Contains(position) && line.Number > LastOpened(position))
        || NewestOfCells(position).Any(pull =>
            (IsShort(pull) && GroupOf(pull).Rules.IfShort != IfShort.Continue) || (!IsVoid(pull.Number) && !RestsOnAll(pull)));

    private IEnumerable<Line> NewestOfCells(JointPosition position) =>
        PullsOn(position).GroupBy(pull => (Fact(pull).Stage, Fact(pull).Visit)).Select(cell => cell.Last());

    /// <summary>The first visit of the pattern without a pull that passes; a held position stops its joint or is passed over.</summary>
    private int? NextVisit(GroupAt group, Stage stage)
    {
        for (var visit = 0; visit < stage.Visits.Count; visit++)
        {
            var position = group.Joint.At(stage.Visits[visit]);
            if (HoldsOn(position).Count > 0)
            {
                if (group.Rules.Redo == RedoScope.Joint)
                {
                    return null;
                }

                continue;
            }

            var pull = Newest(position, stage.Number).FirstOrDefault(pull => Fact(pull).Visit == visit);
            // What waits for its countersignature is pulled: the pattern goes on.
            if ((pull is null || (!Passes(pull) && !Awaits(pull.Number))) && !IsDone(position, stage.Number))
            {
                return visit;
            }
        }

        return null;
    }

    /// <summary>What a pull rests on: its own hand-tight, and for a higher stage every hand-tight and lower pull of the group.</summary>
    private IReadOnlyList<long> RestsOfPull(RecordTorque pull)
    {
        var group = jobs[pull.Job].Group(pull.Group, pull.Position.Place)!;
        var positions = pull.Stage == 1 ? [pull.Position] : group.Positions;
        var lower = from at in positions
                    from stage in Enumerable.Range(1, pull.Stage - 1)
                    from below in Newest(at, stage)
                    where Passes(below)
                    select below.Number;
        return [.. positions.Select(HandTightBy).Where(number => number > 0).Concat(lower).Distinct().Order()];
    }

    private long HandTightBy(JointPosition position)
    {
        var newest = Since(position).LastOrDefault(line => line.Entry switch
        {
            FittedNew fact => fact.Positions.Contains(position) && line.Problems.Count == 0,
            HandTightened fact => fact.Positions.Contains(position) && line.Problems.Count == 0,
            _ => false,
        });
        return newest is { Entry: HandTightened } && !IsVoid(newest.Number) ? newest.Number : 0;
    }

    private static IReadOnlyList<HoldReason> Those(params IEnumerable<(HoldReason Reason, bool Is)> reasons) =>
        [.. reasons.Where(reason => reason.Is).Select(reason => reason.Reason)];
}
