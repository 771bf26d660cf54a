using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Decides what a command becomes: entries, or a refusal with every reason. Pure. Permissions are refused; facts are recorded:
/// a report of something that has happened is refused only when job or position cannot be identified.
/// </summary>
public static partial class Decider
{
    /// <summary>Decides one command on one car by the rules in force.</summary>
    public static Verdict Decide(this CarState state, Command command, Circumstances now) =>
        Decide(state, command, now, HoldRules.Standard);

    /// <summary>Decides one command on one car by the rules given.</summary>
    public static Verdict Decide(this CarState state, Command command, Circumstances now, HoldRules rules)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(rules);
        return command switch
        {
            StartJob start => Start(state, start, now, rules),
            DeclareCondition declare => Declare(declare, now),
            RecordResult result => Record(state, result, now),
            OpenPositions open => Open(state, open, now),
            FitNew fit => Fit(state, fit, now),
            HandTighten hand => ByHand(state, hand, now, rules),
            RecordTorque pull => Pull(state, pull, now, rules),
            RecordSettled settled => Settle(state, settled, now, rules),
            HoldPositions hold => Hold(hold, now),
            ConfirmStep confirm => Confirm(state, confirm, now, rules),
            Witness witness => Look(state, witness, now, rules),
            DecideHold decide => DecideOn(state, decide, now, rules),
            Correct correct => CorrectOne(state, correct, now),
            ConfirmCorrection confirm => ConfirmOne(state, confirm, now, rules),
            Release release => ReleaseCar(state, release, now, rules),
            IssueSummary issue => Issue(state, issue, now, rules),
            _ => throw new ArgumentOutOfRangeException(nameof(command), command?.GetType().Name, "Not a command on a car."),
        };
    }

    private static Verdict Accept(params IReadOnlyList<Entry> entries) => new Verdict.Accepted(entries);

    private static Verdict Refuse(HoldReason reason) => Refuse(new HoldPoint(reason));

    private static Verdict Refuse(HoldPoint point) => new Verdict.Refused([point]);

    private static List<HoldPoint> Permissions(HoldRules rules, PermissionQuestion question) =>
        [.. rules.Permission.Select(rule => rule.Find(question)).OfType<HoldPoint>()];

    private static Verdict? UnknownPositions(IReadOnlyList<JointPosition> positions, Circumstances now)
    {
        if (positions.Count == 0)
        {
            return Refuse(HoldReason.NoPosition);
        }

        var unknown = positions.Where(position => !now.Register.Kinds.TryGetValue(position.Key, out var kind)
            || !kind.Places.Contains(position.Place) || position.Number < 1 || position.Number > kind.Positions).ToList();
        return unknown.Count == 0
            ? null
            : Refuse(new HoldPoint(HoldReason.UnknownPosition) { Position = unknown[0] });
    }

    private static Verdict Start(CarState state, StartJob start, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, start, Right.Lead));
        if (state.Jobs.ContainsKey(start.Job))
        {
            refused.Add(new HoldPoint(HoldReason.AlreadyStarted) { Job = start.Job });
        }

        var possible = PlacedProcedure.PlacesOf(start.Procedure, now.Register);
        if (start.Places.Count == 0 || start.Places.Any(place => !possible.Contains(place)))
        {
            refused.Add(new HoldPoint(HoldReason.UnknownPlace) { Job = start.Job, Choices = [.. possible] });
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new JobStarted(
            start.Job, start.Procedure.Code, start.Procedure.Revision, start.ProcedureDigest, start.RegisterDigest, [.. start.Places.Distinct()]));
    }

    private static Verdict Declare(DeclareCondition declare, Circumstances now) =>
        declare.Conditions.Count == 0 || declare.Conditions.Any(condition =>
            !now.Register.Conditions.TryGetValue(condition.Aspect, out var values) || !values.Contains(condition.Value))
            ? Refuse(HoldReason.UnknownCondition)
            : Accept(new CarConditionDeclared(declare.Conditions));

    private static Verdict Record(CarState state, RecordResult result, Circumstances now)
    {
        if (string.IsNullOrWhiteSpace(result.Name) || result.Values.Count == 0)
        {
            return Refuse(HoldReason.ResultIncomplete);
        }

        var (undid, opens) = Opening.ByResult(state, now, result.Name);
        var recorded = new ResultRecorded(
            result.Name, result.Values, result.Basis, result.Instrument, result.Conditions, result.Job, result.Step, undid);
        return opens.Count == 0 ? Accept(recorded) : Accept(recorded, new Opened(opens, [], [], null, null));
    }
}
