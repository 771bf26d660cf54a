namespace ShopJobs.Domain.Logbook;

// Corrections: a new entry that names the old one. It never makes valid what was not, unless a second person confirms it.
public static partial class Decider
{
    private static Verdict CorrectOne(CarState state, Correct correct, Circumstances now)
    {
        if (!state.Correctables.TryGetValue(correct.Target, out var target))
        {
            return Refuse(new HoldPoint(HoldReason.NotCorrectable) { Entry = correct.Target });
        }

        if (target.Person != now.Person && !now.May(Right.Lead))
        {
            return Refuse(new HoldPoint(HoldReason.OthersEntry) { Entry = correct.Target });
        }

        if (state.Corrections.Values.Any(earlier => earlier.Fact.Target == correct.Target && earlier.Fact.Restated is null))
        {
            return Refuse(About(HoldReason.AlreadyVoid, correct, target.Entry));
        }

        return correct.Restated is not null && target.Entry is not TorqueRecorded { Value: not null }
            ? Refuse(About(HoldReason.NotRestatable, correct, target.Entry))
            : Accept(new Corrected(correct.Target, correct.Restated, correct.Reason));
    }

    // An angle that was turned is not simply recorded anew: the bolt may be turned already.
    private static HoldPoint About(HoldReason reason, Correct correct, Entry target) => new(reason)
    {
        Entry = correct.Target,
        Because = target is TorqueRecorded pull && pull.IsTurn() ? new HoldPoint(HoldReason.TurnVoided) : null,
    };

    private static Verdict ConfirmOne(CarState state, ConfirmCorrection confirm, Circumstances now, HoldRules rules)
    {
        if (!state.Corrections.TryGetValue(confirm.Correction, out var correction) || correction.Confirmed
            || state.Corrections.Values.Any(later => later.Fact.Target == correction.Fact.Target && later.Number > correction.Number))
        {
            return Refuse(new HoldPoint(HoldReason.NoSuchCorrection) { Entry = confirm.Correction });
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
