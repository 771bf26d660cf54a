namespace ShopJobs.Domain.Logbook;

// Corrections: a new entry that names the old one. It never makes valid what was not, unless a second person confirms it.
public static partial class Decider
{
    private static Verdict CorrectOne(CarState state, Correct correct, Circumstances now)
    {
        if (!state.Correctables.TryGetValue(correct.Target, out var target))
        {
            return Refuse(
                HoldReason.NotCorrectable, $"Entry {correct.Target} cannot be corrected", "record what happened instead: OPEN, HOLD or a decision");
        }

        if (target.Person != now.Person && !now.May(Right.Lead))
        {
            return Refuse(HoldReason.NoRight, "Only the person who recorded it, or the lead, corrects an entry", "ask them");
        }

        if (state.Corrections.Values.Any(earlier => earlier.Fact.Target == correct.Target && earlier.Fact.Restated is null))
        {
            return Refuse(HoldReason.NotCorrectable, $"Entry {correct.Target} is void already", IsTurn(target.Entry) ? Words.NextFor(HoldReason.TurnVoided) : "record it anew");
        }

        return correct.Restated is not null && target.Entry is not TorqueRecorded { Value: not null }
            ? Refuse(HoldReason.NotCorrectable, "Only a torque value can be restated", IsTurn(target.Entry) ? "void it: that holds the bolt until a second person has looked" : "void the entry and record it anew")
            : Accept(new Corrected(correct.Target, correct.Restated, correct.Reason));
    }

    private static bool IsTurn(Entry entry) => entry is TorqueRecorded pull && pull.IsTurn();

    private static Verdict ConfirmOne(CarState state, ConfirmCorrection confirm, Circumstances now, HoldRules rules)
    {
        if (!state.Corrections.TryGetValue(confirm.Correction, out var correction) || correction.Confirmed
            || state.Corrections.Values.Any(later => later.Fact.Target == correction.Fact.Target && later.Number > correction.Number))
        {
            return Refuse(HoldReason.NotCorrectable, $"Entry {confirm.Correction} is no correction that waits", "choose one from the logbook");
        }

        var target = state.Correctables[correction.Fact.Target];
        var refused = Permissions(rules, new PermissionQuestion(state, now, confirm, Right.Decide)
        {
            Books = target.Entry is TorqueRecorded pull ? [state.Of(pull.Position)] : [],
            Doers = [correction.Person, target.Person],
        });
        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new CorrectionConfirmed(confirm.Correction, confirm.Reason));
    }
}
