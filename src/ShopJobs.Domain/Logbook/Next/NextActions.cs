using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Finds the one thing to do next.</summary>
public static class NextActions
{
    /// <summary>Finds the next action on a step instance of a job: on its joints, or on what a trainee signed.</summary>
    public static NextAction NextOn(this CarState state, Circumstances now, JobBook job, PlacedProcedure placed, StepInstance step) =>
        state.StandingOf(job, placed, step) == StepStanding.AwaitsCountersign ? new NextAction.CountersignStep(job.SignOffs[step.Id]) : state.NextOn(now, step);

    /// <summary>Finds the next action on a step instance.</summary>
    public static NextAction NextOn(this CarState state, Circumstances now, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(step);
        var temporary = step.Work.Where(work => work.Instance.Group.Temporary).ToList();
        var lasting = step.Work.Where(work => !work.Instance.Group.Temporary).ToList();
        foreach (var work in lasting)
        {
            var jam = temporary.Find(pair => pair.Instance.Group.Id == work.Instance.Group.Jam?.Group
                && pair.Instance.Place == work.Instance.Place);
            if (OnGroup(state, work, jam) is { } action)
            {
                return WhileNotInOrder(state, now, action) ?? action;
            }
        }

        return temporary.SelectMany(work => work.Instance.Positions.Where(position => state.IsOn(position))
                .Select(position => Remove(work.Instance, position))).FirstOrDefault()
            ?? lasting.SelectMany(work => work.Stages.Select(number => (work.Instance, Stage: work.Instance.Group.Stages[number - 1])))
                .Where(cell => cell.Stage.Witness
                    && cell.Instance.Positions.Any(position => !state.Of(position).IsWitnessed(cell.Stage.Number, asked: true)))
                .Select(cell => (NextAction)new NextAction.Look(cell.Instance, cell.Stage)).FirstOrDefault()
            ?? new NextAction.Done();
    }

    /// <summary>The next cell in the stage's order of visits; null when there is none or a hold stops the joint.</summary>
    public static Cell? NextCell(CarState state, GroupInstance instance, Stage stage) => CellsLeft(state, instance, stage).FirstOrDefault();

    /// <summary>
    /// The cells that come after this one, in order, as long as every pull counts: what a tablet goes on with while it cannot ask. None
    /// beyond the stage, and none where something else is done between two pulls.
    /// </summary>
    public static IReadOnlyList<Cell> After(this CarState state, Circumstances now, Cell cell)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Instance.Group is { Temporary: true } or { Jam: not null } or { RunDown: RunDown.Add }
            ? []
            : [.. CellsLeft(state, cell.Instance, cell.Stage).Skip(1).TakeWhile(next => WhileNotInOrder(state, now, new NextAction.PullNow(next)) is null)];
    }

    private static IEnumerable<Cell> CellsLeft(CarState state, GroupInstance instance, Stage stage)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(stage);
        for (var visit = 0; visit < stage.Visits.Count; visit++)
        {
            var book = state.Of(instance.Joint.At(stage.Visits[visit]));
            if (!book.Holds.IsEmpty)
            {
                if (instance.Group.Redo == RedoScope.Joint)
                {
                    yield break;
                }

                continue;
            }

            var newest = book.Pulls.FindLast(pull => pull.Fact.Stage == stage.Number && pull.Fact.Visit == visit && !pull.IsGone);
            // What waits for its countersignature is pulled: the pattern goes on, the stage does not end.
            if ((newest is null || (!state.Passes(newest) && !newest.WaitsForAnswer)) && !state.IsDone(book, stage.Number))
            {
                yield return new Cell(instance, book.Position, book.Cycle, stage, visit);
            }
        }
    }

    /// <summary>True while temporary hardware is on the position.</summary>
    public static bool IsOn(this CarState state, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Of(position).On > 0;
    }

    // Nothing is fitted, run down or pulled on or before what is not finished itself, or behind what is still on.
    private static NextAction.Wait? WhileNotInOrder(CarState state, Circumstances now, NextAction action)
    {
        var (instance, positions) = action switch
        {
            NextAction.Fit fit => (fit.Instance, fit.Positions),
            NextAction.ByHand hand => (hand.Instance, hand.Positions),
            NextAction.PullNow { Cell: var cell } => (cell.Instance, [cell.Position]),
            _ => (null, []),
        };
        return instance is null ? null : positions.Select(position => (Reach.Barred(state, now, position)
            ?? Riding.Against(state, now, position, instance.Group.Temporary)
            ?? Reach.Unfinished(state, now, position)) is { } why
            ? new NextAction.Wait(position, why)
            : null).FirstOrDefault(wait => wait is not null);
    }

    private static NextAction? OnGroup(CarState state, GroupWork work, GroupWork? jam)
    {
        var instance = work.Instance;
        var books = instance.Positions.Select(state.Of).ToList();
        if (instance.Group.Redo == RedoScope.Joint && books.Find(book => !book.Holds.IsEmpty) is { } held)
        {
            return held.Holds.Any(hold => hold.Decision is null)
                ? new NextAction.Stopped(held.Position)
                : new NextAction.TakeOff(instance, [.. instance.Positions], Decided(books));
        }

        if (books.Find(book => book.Holds.Any(hold => hold.Decision is not null)) is { } rework)
        {
            return new NextAction.TakeOff(instance, [rework.Position], Decided([rework]));
        }

        if (books.Find(book => book.MayHaveBeenPulled) is { } voided)
        {
            return new NextAction.TakeOff(
                instance,
                instance.Group.Redo == RedoScope.Joint ? [.. instance.Positions] : [voided.Position],
                voided.DeclaredBy > 0 ? TakeOffReason.DeclaredFromPaper : TakeOffReason.MayHaveBeenPulled);
        }

        if (books.Find(book => book.BackOffFirst) is { } shortPull)
        {
            return new NextAction.TakeOff(
                instance,
                instance.Group.Redo == RedoScope.Joint ? [.. instance.Positions] : [shortPull.Position],
                TakeOffReason.ShortPull);
        }

        if (books.Find(book => MustComeOff(state, book)) is { } broken)
        {
            return new NextAction.TakeOff(
                instance,
                instance.Group.Redo == RedoScope.Joint ? [.. instance.Positions] : [broken.Position],
                TakeOffReason.NothingToRestOn);
        }

        var free = books.Where(book => book.Holds.IsEmpty).ToList();
        var asFound = free.Where(book => book.IsAsFound).Select(book => book.Position).ToList();
        if (asFound.Count > 0)
        {
            return new NextAction.TakeOff(instance, asFound, TakeOffReason.AsFound);
        }

        var toFit = free.Where(book => book.NeedsNew(instance.Group) && book.Fitting != Fitting.NewHardware && !state.IsDone(book, instance.Group.Stages.Count)).Select(book => book.Position).ToList();
        if (toFit.Count > 0)
        {
            return new NextAction.Fit(instance, toFit);
        }

        var toPrepare = free.Where(book => CarriesOther(instance.Group, book) && IsToDo(state, work, book)).Select(book => book.Position).ToList();
        if (toPrepare.Count > 0)
        {
            return new NextAction.Prepare(instance, toPrepare);
        }

        var byHand = free.Where(book => book.Fitting is Fitting.Open or Fitting.NewHardware).Select(book => book.Position).ToList();
        if (byHand.Count > 0)
        {
            return new NextAction.ByHand(instance, byHand);
        }

        foreach (var stage in work.Stages.Select(number => instance.Group.Stages[number - 1]))
        {
            if (NextCell(state, instance, stage) is { } cell)
            {
                return Pull(state, cell, jam);
            }

            if (books.SelectMany(book => book.Newest(stage.Number)).Where(pull => pull.WaitsForAnswer).ToList() is { Count: > 0 } unanswered)
            {
                return new NextAction.Countersign(instance, unanswered);
            }
        }

        return jam is null ? books.Find(book => !book.Holds.IsEmpty) is { } stopped ? new NextAction.Stopped(stopped.Position) : null
            : AfterDrive(state, jam) ?? (books.Find(book => !book.Holds.IsEmpty) is { } held2 ? new NextAction.Stopped(held2.Position) : null);
    }

    private static bool CarriesOther(JointGroup group, PositionBook book) =>
        book.Thread is { Thread: var carries } && !PullRules.IsFor(group.Condition, carries);

    // A step without stages only runs it down by hand.
    private static bool IsToDo(CarState state, GroupWork work, PositionBook book) => work.Stages.Count == 0
        ? book.Fitting is Fitting.Open or Fitting.NewHardware
        : !work.Stages.All(stage => state.IsDone(book, stage));

    private static TakeOffReason Decided(List<PositionBook> books) =>
        books.Exists(book => book.Holds.Exists(hold => hold.Decision == Disposition.Replace)) ? TakeOffReason.Replace : TakeOffReason.Rework;

    // Pulled, but what comes before that pull was taken back: it can't be made good under a tight fastener, and no angle is turned twice.
    private static bool MustComeOff(CarState state, PositionBook book) => book.Holds.IsEmpty && book.Highest > 0 && !state.IsAtTorque(book)
        && (book.Fitting != Fitting.HandTight
            || Enumerable.Range(1, book.Highest - 1).Any(stage => !state.IsDone(book, stage))
            || state.HasFallen(book)
            || book.Cells.Any(pull => pull.IsTurn && !state.Passes(pull) && !pull.WaitsForAnswer && !state.IsDone(book, pull.Fact.Stage)));

    private static NextAction Pull(CarState state, Cell cell, GroupWork? jam)
    {
        if (jam is null)
        {
            return new NextAction.PullNow(cell);
        }

        var pair = state.Of(jam.Instance.Joint.At(cell.Position.Number));
        var other = jam.Instance.Positions.Where(position => position.Number != cell.Position.Number).FirstOrDefault(state.IsOn);
        return other != default ? Remove(jam.Instance, other)
            : state.IsAtTorque(pair) ? new NextAction.PullNow(cell)
            : !pair.Holds.IsEmpty ? new NextAction.Stopped(pair.Position)
            : pair.NeedsNew(jam.Instance.Group) && pair.Fitting != Fitting.NewHardware ? new NextAction.Fit(jam.Instance, [pair.Position])
            : pair.BackOffFirst ? Remove(jam.Instance, pair.Position)
            : CarriesOther(jam.Instance.Group, pair) ? new NextAction.Prepare(jam.Instance, [pair.Position])
            : NextJam(jam.Instance, pair);
    }

    private static NextAction.PullNow NextJam(GroupInstance jam, PositionBook pair)
    {
        var stage = jam.Group.Stages[0];
        return new NextAction.PullNow(new Cell(jam, pair.Position, pair.Cycle, stage, stage.Visits.ToList().IndexOf(pair.Position.Number)));
    }

    private static NextAction? AfterDrive(CarState state, GroupWork jam) =>
        jam.Instance.Positions.Where(state.IsOn).Select(position => Remove(jam.Instance, position)).FirstOrDefault();

    private static NextAction Remove(GroupInstance instance, JointPosition position) =>
        new NextAction.TakeOff(instance, [position], TakeOffReason.JamNuts);

    internal static bool NeedsNew(this PositionBook book, JointGroup group) =>
        (group.Hardware.Reuse == HardwareReuse.SingleUse && book.FittedNewBy <= book.OpenedBy)
        || (book.NewHardwareSince > 0 && book.FittedNewBy <= book.NewHardwareSince);
}
