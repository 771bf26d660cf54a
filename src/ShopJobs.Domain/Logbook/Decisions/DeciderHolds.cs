using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Holds and their decisions.
public static partial class Decider
{
    private static Verdict Hold(CarState state, HoldPositions hold, Circumstances now) =>
        UnknownPositions(state, hold.Positions, now) ?? Accept(new PositionHeld([.. hold.Positions.Distinct()], hold.Reason));

    private static Verdict Hold(CarState state, HoldWork hold, Circumstances now)
    {
        HoldReason? unknown = hold switch
        {
            { Step: { } step } => hold.Job is { } job && state.Jobs.TryGetValue(job, out var book) && now.Placed(book).Step(step) is not null ? null : HoldReason.UnknownStep,
            { Result: { } result } => state.Correctables.TryGetValue(result, out var found) && found.Entry is ResultRecorded ? null : HoldReason.UnknownResult,
            { Lot: { } lot } when !string.IsNullOrWhiteSpace(lot) => hold.Job is { } job && !state.Jobs.ContainsKey(job) ? HoldReason.UnknownJob : null,
            _ => HoldReason.LotMissing,
        };
        return unknown is { } reason ? Refuse(reason) : Accept(new WorkHeld(hold.Reason)
        {
            Job = hold.Job,
            Step = hold.Step,
            Result = hold.Result,
            Lot = hold.Lot?.Trim(),
            Group = hold.Group,
        });
    }

    private static Verdict DecideOn(CarState state, DecideHold decide, Circumstances now, HoldRules rules)
    {
        if (UnknownPositions(state, [decide.Position], now) is { } unknown)
        {
            return unknown;
        }

        var book = state.Of(decide.Position);
        var about = book.Holds.Where(hold => hold.Decision is null).ToList();
        var doubts = state.DoubtsOn(book, now.Tool).ToList();
        var instance = Opening.GroupOn(state, now, decide.Position);

        // A doubt of a tool is about the whole joint: nobody who worked on any fastener of it decides it.
        var joint = doubts.Count > 0 && instance is not null ? instance.Positions.Select(state.Of) : [];
        var asked = new PermissionQuestion(state, now, decide, Right.Decide)
        {
            Books = [book],
            Doers = [.. about.SelectMany(hold => hold.Workers.Add(hold.By)).Concat(joint.SelectMany(other => other.Workers))],
            Group = instance?.Group,
        };
        var refused = Permissions(rules, asked);
        if (decide is { Disposition: Disposition.UseAsIs, Acceptance: { } acceptance })
        {
            refused.AddRange(acceptance.Lacks(now.Today, inWriting: PermissionRules.RiskOf(asked) == RiskClass.A));
        }

        var numbers = Deciding.About(state, now, decide.Position);
        if (numbers.Count == 0 && doubts.Count == 0)
        {
            refused.Add(book.LastDecision is { } made
                ? Deciding.DecidedBefore(made) with { Position = decide.Position }
                : new HoldPoint(HoldReason.NothingToDecide) { Position = decide.Position });
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new Decided(
            decide.Position, decide.Disposition, numbers, doubts, decide.Reason,
            decide.Disposition == Disposition.UseAsIs ? decide.Acceptance?.Kept : null, decide.Shown));
    }

    private static Verdict DecideOn(CarState state, DecideRow row, Circumstances now, HoldRules rules)
    {
        var verdicts = row.Positions.Distinct().Select(position => (position, Verdict: DecideOn(state, row.On(position), now, rules))).ToList();
        var refused = verdicts.SelectMany(one => one.Verdict is Verdict.Refused no
            ? no.Reasons.Select(reason => reason.Position is null ? reason with { Position = one.position } : reason)
            : []).ToList();
        return verdicts.Count == 0 ? Refuse(HoldReason.NoPosition)
            : refused.Count > 0 ? new Verdict.Refused(refused)
            : Accept([.. verdicts.SelectMany(one => ((Verdict.Accepted)one.Verdict).Entries)]);
    }

    private static Verdict DecideOn(CarState state, DecideWork decide, Circumstances now, HoldRules rules)
    {
        if (!state.WorkHolds.TryGetValue(decide.Hold, out var hold))
        {
            return Refuse(new HoldPoint(HoldReason.UnknownHold) { Entry = decide.Hold });
        }

        var refused = Permissions(rules, new PermissionQuestion(state, now, decide, Right.Decide) { Doers = [.. Deciding.DoersOf(state, hold)] });
        if (hold.Decision is { } made)
        {
            refused.Add(Deciding.DecidedBefore(made));
        }

        if (hold.Fact.Lot is { } lot)
        {
            if (decide.Disposition == Disposition.Rework)
            {
                refused.Add(new HoldPoint(HoldReason.LotNotReworked));
            }

            refused.AddRange(decide.Disposition == Disposition.UseAsIs && Deciding.RiskOf(state, now, hold.Fact, lot) == RiskClass.A
                ? decide.Acceptance?.Lacks(now.Today, inWriting: true) ?? [new HoldPoint(HoldReason.AcceptanceMissing)]
                : []);
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new WorkDecided(
            decide.Hold, decide.Disposition, decide.Reason,
            decide.Disposition == Disposition.UseAsIs ? decide.Acceptance?.Kept : null, decide.Shown));
    }
}
