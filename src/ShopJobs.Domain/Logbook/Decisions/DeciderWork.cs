using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Reports of work by hand: always recorded where the position can be identified.
public static partial class Decider
{
    private static Verdict Open(CarState state, OpenPositions open, Circumstances now)
    {
        if ((UnknownPositions(state, open.Positions, now) ?? UnknownJob(state, open.Job) ?? NotOfThatMoment(state, open.Positions, open.OnPaper, now)) is { } unknown)
        {
            return unknown;
        }

        // What was reported of an earlier cycle opens nothing of the present one; whether the fastener is open has to be looked at.
        var late = Late(state, open.Positions, open.Cycles).Where(position => !state.Of(position).IsBare).ToList();
        if (late.Count == 0)
        {
            return Accept(Opening.Of(state, now, open) with { OnPaper = open.OnPaper });
        }

        var timely = open.Positions.Except(late).ToList();
        var opened = timely.Count > 0 ? Opening.Of(state, now, open with { Positions = timely }) : new Opened([], [], [], open.Job, open.Reason);
        return Accept(opened with { Positions = [.. opened.Positions.Union(late)], Late = late, OnPaper = open.OnPaper });
    }

    // Positions whose cycle is no longer the one that the screen had.
    private static IEnumerable<JointPosition> Late(CarState state, IReadOnlyList<JointPosition> positions, IReadOnlyList<int>? cycles) =>
        cycles is null ? [] : positions.Where((position, index) => index >= cycles.Count || cycles[index] != state.Of(position).Cycle);

    private static Verdict Treat(CarState state, TreatThread treat, Circumstances now) =>
        (UnknownPositions(state, treat.Positions, now) ?? UnknownJob(state, treat.Job))
            ?? Accept(new ThreadTreated([.. treat.Positions.Distinct()], treat.Thread, treat.Product, treat.Batch, treat.Job));

    private static Verdict Fit(CarState state, FitNew fit, Circumstances now)
    {
        if ((UnknownPositions(state, fit.Positions, now) ?? UnknownJob(state, fit.Job) ?? NotOfThatMoment(state, fit.Positions, fit.OnPaper, now)) is { } unknown)
        {
            return unknown;
        }

        if (GroupsOf(state, now, fit.Job, fit.Group, fit.Positions) is not { } groups)
        {
            return NotInGroup(fit.Group);
        }

        var late = Late(state, fit.Positions, fit.Cycles).ToList();
        if (late.Count > 0)
        {
            var lateOnes = new FittedNew(late, fit.Job, fit.Group, groups[0].Group.Hardware.Name, fit.Lot) { Problems = [HoldReason.CellMoved], OnPaper = fit.OnPaper };
            return fit.Positions.Except(late).ToList() is { Count: > 0 } others && Fit(state, fit with { Positions = others, Cycles = null }, now) is Verdict.Accepted timely
                ? Accept([.. timely.Entries, lateOnes])
                : Accept(lateOnes);
        }

        IReadOnlyList<HoldReason> problems =
        [
            .. fit.ReportedFor is null ? Array.Empty<HoldReason>() : [HoldReason.ReportedByAnother],
            .. now.IsEarlier(fit.MadeIn) ? [HoldReason.EarlierSession] : Array.Empty<HoldReason>(),
            .. state.IsBarred(fit.Lot) ? [HoldReason.LotHeld] : Array.Empty<HoldReason>(),
        ];

        // New hardware on a position that is not open means that it was opened.
        var closed = fit.Positions.Where(position => state.Of(position) is not { Fitting: Fitting.Open or Fitting.NewHardware, Last: null }).ToList();
        var fitted = new FittedNew([.. fit.Positions.Distinct()], fit.Job, fit.Group, groups[0].Group.Hardware.Name, fit.Lot)
        {
            Problems = problems.Count > 0 ? problems : null,
            OnPaper = fit.OnPaper,
        };
        return closed.Count == 0
            ? Accept(fitted)
            : Accept(Opening.Of(state, now, new OpenPositions(closed, fit.Job, null)) with { OnPaper = fit.OnPaper }, fitted);
    }

    private static Verdict ByHand(CarState state, HandTighten hand, Circumstances now, HoldRules rules)
    {
        if ((UnknownPositions(state, hand.Positions, now) ?? UnknownJob(state, hand.Job) ?? NotOfThatMoment(state, hand.Positions, hand.OnPaper, now)) is { } unknown)
        {
            return unknown;
        }

        if (GroupsOf(state, now, hand.Job, hand.Group, hand.Positions) is not { } groups)
        {
            return NotInGroup(hand.Group);
        }

        var job = state.Jobs[hand.Job];
        var late = Late(state, hand.Positions, hand.Cycles).ToHashSet();
        var judged = hand.Positions.Distinct().Select(position =>
        {
            var book = state.Of(position);
            var question = new PullQuestion(
                state, now, job, now.Placed(job), groups.First(group => group.Joint == position.Joint), book)
            {
                Cycle = late.Contains(position) ? book.Cycle - 1 : book.Cycle,
                ReportedFor = hand.ReportedFor,
                MadeIn = hand.MadeIn,
            };
            return (Position: position, Problems: rules.HandTight.Where(rule => rule.Fails(question)).Select(rule => rule.Reason).ToList());
        }).ToList();

        // One entry for the good ones, one for each set of problems: a report with a problem does not spoil the others.
        return Accept(
        [
            .. judged.GroupBy(report => string.Join(',', report.Problems)).Select(same => new HandTightened(
                [.. same.Select(report => report.Position)], hand.Job, hand.Group, hand.Helpers, same.First().Problems) { OnPaper = hand.OnPaper }),
        ]);
    }

    private static Verdict? UnknownJob(CarState state, JobId? job) =>
        job is { } id && !state.Jobs.ContainsKey(id)
            ? Refuse(HoldReason.UnknownJob)
            : null;

    private static List<GroupInstance>? GroupsOf(
        CarState state, Circumstances now, JobId job, string group, IReadOnlyList<JointPosition> positions)
    {
        var placed = now.Placed(state.Jobs[job]);
        var found = positions.Select(position => placed.Group(group, position.Place)).ToList();
        return found.TrueForAll(instance => instance is not null)
            && positions.Zip(found).All(pair => pair.First.Key == pair.Second!.Group.Key)
            ? [.. found.OfType<GroupInstance>().Distinct()]
            : null;
    }

    private static Verdict NotInGroup(string group) =>
        Refuse(new HoldPoint(HoldReason.NotInGroup) { Name = group });
}
