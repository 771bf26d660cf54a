namespace ShopJobs.Domain.Logbook;

// Corrections: a new entry that names the old one. It never makes valid what was not, unless a second person confirms it.
public static partial class Decider
{
    private static Verdict Void(CarState state, VoidEntry voiding, Circumstances now) =>
        NotToBeCorrected(state, voiding.Target, now) ?? Accept(new Corrected(voiding.Target, null, voiding.Reason) { WasPulled = voiding.WasPulled });

    private static Verdict RestateOne(CarState state, Restate restate, Circumstances now) =>
        NotToBeCorrected(state, restate.Target, now)
            ?? (state.Correctables[restate.Target].Entry is not TorqueRecorded { Value: not null }
                ? Refuse(About(state, HoldReason.NotRestatable, restate.Target))
                : Accept(new Corrected(restate.Target, restate.Value, restate.Reason)));

    private static Verdict? NotToBeCorrected(CarState state, long number, Circumstances now) =>
        !state.Correctables.TryGetValue(number, out var target) ? Refuse(new HoldPoint(HoldReason.NotCorrectable) { Entry = number })
            : target.Person != now.Person && !now.May(Right.Lead) ? Refuse(new HoldPoint(HoldReason.OthersEntry) { Entry = number })
            : state.Corrections.Values.Any(earlier => earlier.Fact.Target == number && earlier.Fact.Restated is null)
                || (target.Entry is HandTightened && state.TakenBack.Contains(number))
                ? Refuse(About(state, HoldReason.AlreadyVoid, number))
            : target.Entry is Opened && !state.CanBeTakenBack(number) ? Refuse(new HoldPoint(HoldReason.OpenedAndGoneOn) { Entry = number })
            : null;

    // An angle that was turned is not simply recorded again: the bolt may be turned already.
    private static HoldPoint About(CarState state, HoldReason reason, long number) => new(reason)
    {
        Entry = number,
        Because = state.Correctables[number].Entry is TorqueRecorded pull && pull.IsTurn() ? new HoldPoint(HoldReason.TurnVoided) : null,
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
        if (target.Entry is Opened && !state.CanBeTakenBack(correction.Fact.Target))
        {
            refused.Add(new HoldPoint(HoldReason.OpenedAndGoneOn) { Entry = correction.Fact.Target });
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new CorrectionConfirmed(confirm.Correction, confirm.Reason));
    }
}
