using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.SignOffs;

/// <summary>What could be wrong with sign-offs, each fault with the requirement that has to notice it.</summary>
internal static class SignOffFaults
{
    public static RuleBook<PlaceOfWork> Of(RuleBook<PlaceOfWork> book) => book
        .Fault("the step that worked a joint stays signed when it is opened", "WORK-FALLS", "Open",
            (before, _) => before is { Fit: SignOff.Stands, Ended: false }, (before, place) => place with { Fit = SignOff.Stands })
        .Fault("the step before the work, without torque of its own, stays signed when the joint is opened again", "STEP-BEFORE-FALLS", "Open",
            (before, _) => before is { Clean: SignOff.Stands, Begun: true, Ended: false, Nut: not Nut.Open }, (_, place) => place with { Clean = SignOff.Stands })
        .Fault("a step that waits for a group stays signed when that group is opened", "WHO-WAITS-FALLS", "Open",
            (before, _) => before is { Dust: SignOff.Stands, Ended: false, Nut: not Nut.Open }, (_, place) => place with { Dust = SignOff.Stands })
        .Fault("a step after a fallen one stays signed", "AFTER-A-FALLEN-STEP", "Open",
            (before, _) => before is { Look: SignOff.Stands, Ended: false, Nut: not Nut.Open }, (_, place) => place with { Look = SignOff.Stands })
        .Fault("the job's own first opening fells what was signed before it", "FIRST-OPENING-FELLS-NOTHING", "Open",
            (before, _) => before is { Begun: false, Clean: SignOff.Stands }, (_, place) => place with { Clean = SignOff.Void })
        .Fault("OPEN on an open joint starts a cycle", "OPEN-ON-OPEN", "Open",
            (before, _) => before is { Nut: Nut.Open, Clean: SignOff.Stands }, (_, place) => place with { Clean = SignOff.Void })
        .Fault("the closer's work fells the opener's sign-off", "ONLY-OPENED-IS-LEFT-OUT", "Open",
            (before, _) => before is { Off: SignOff.Stands, Nut: Nut.AtTorque }, (_, place) => place with { Off = SignOff.Void })
        .Fault("a fallen sign-off refuses to be signed again", "SIGNED-ANEW", "Sign",
            (before, after) => after.Asked == Asked.Clean && before.Clean == SignOff.Void, (before, place) => before with { Asked = Asked.Clean, Granted = false })
        .Fault("work is signed on a joint that does not count", "SIGNED-COUNTS", "Sign",
            (before, after) => after is { Asked: Asked.Fit, Granted: false } && before.Nut == Nut.Open, (_, place) => place with { Fit = SignOff.Stands, Granted = true })
        .Fault("a step is signed over a void one that it waits for", "WAITS-STAND", "Sign",
            (before, after) => after is { Asked: Asked.Look, Granted: false } && before.Fit == SignOff.Void, (_, place) => place with { Look = SignOff.Stands, Granted = true })
        .Fault("a voided pull leaves its step signed", "VOIDED-RECORD", "Correct",
            (before, _) => before is { Fit: SignOff.Stands, Ended: false, Look: SignOff.None }, (before, place) => place with { Fit = SignOff.Stands })
        .Fault("a step that waits for a joint stays signed over its voided pull", "WAITED-RECORD", "Correct",
            (before, _) => before is { Dust: SignOff.Stands, Ended: false }, (_, place) => place with { Dust = SignOff.Stands })
        .Fault("who waited for a voided step stays signed", "LATER-ONES-TO-CONFIRM", "Correct",
            (before, _) => before.Look == SignOff.Stands, (_, place) => place with { Look = SignOff.Stands })
        .Fault("once its job has ended, a voided sign-off counts for nothing and the job stays ended", "RUNS-AGAIN", "Correct",
            (before, _) => before.Ended, (_, place) => place with { Ended = true })
        .Fault("an opening after its end sets a job running again", "STAYS-ENDED", "Open",
            (before, _) => before.Ended, (_, place) => place with { Ended = false })
        .Fault("an opening fells what was signed at another place", "OTHER-PLACES-STAND", "Open",
            (before, _) => before.Begun, (_, place) => place with { Other = SignOff.Void })
        .Fault("a car is released with a joint that nothing closes", "NOTHING-CLOSES-IT", "Open",
            (before, _) => before.Released, (_, place) => place with { Released = true })
        .Fault("road is given over a void sign-off", "RELEASE-NEEDS-SIGN-OFFS", "Release to road",
            (before, after) => !after.Granted && before is { Nut: Nut.AtTorque, Fit: SignOff.Void }, (_, place) => place with { Granted = true });
}
