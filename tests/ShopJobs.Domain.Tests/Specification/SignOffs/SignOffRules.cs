using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.SignOffs;

/// <summary>What a sign-off rests on and when it falls: during its job, after its end, by an opening or by a correction.</summary>
internal static class SignOffRules
{
    private const string Rests = "A sign-off rests on the cycle of every joint its step works or waits for and of every joint that its job works later at its place";

    public static RuleBook<PlaceOfWork> Book() =>
        SignOffFaults.Of(Courses(After(During(Actions(new RuleBook<PlaceOfWork>("Sign-offs", PlaceOfWork.Start, place => place.ToString()))))));

    private static RuleBook<PlaceOfWork> Actions(RuleBook<PlaceOfWork> book) => book
        .Action("Open", Enum.GetValues<Opener>(), (place, opener) => !place.Ended || opener == Opener.OtherJob, (place, _) => place.Open())
        .Action("Pull", place => place is { Nut: Nut.Open, Ended: false, Clean: SignOff.Stands }, place => place.Pull())
        .Action("Correct", place => place.Counts, place => place.Correct())
        .Action("Sign", [Asked.Clean, Asked.Fit, Asked.Look, Asked.Dust], (_, _) => true, (place, step) => place.Ask(step))
        .Action("Sign the other job's step", place => place is { Off: SignOff.None, Nut: not Nut.AsFound }, place => place.SignOther())
        .Action("Release to road", place => place is { Off: SignOff.Stands, Released: false, Nut: not Nut.AsFound }, place => place.Ask(Asked.Road))
        .Action("Start the procedure again", place => place is { Ended: true, Nut: Nut.Open, Again: false }, place => place.StartAgain());

    private static bool Moves(PlaceOfWork before) => before is { Begun: true, Ended: false } && before.Nut != Nut.Open;

    private static RuleBook<PlaceOfWork> During(RuleBook<PlaceOfWork> book) => book
        .On("Open", "11", "WORK-FALLS", Rests,
            (before, _) => Moves(before) && before.Fit == SignOff.Stands, (_, after) => after.Fit == SignOff.Void)
        .On("Open", "11", "STEP-BEFORE-FALLS", "and of every joint that its job works later at its place",
            (before, _) => Moves(before) && before.Clean == SignOff.Stands, (_, after) => after.Clean == SignOff.Void)
        .On("Open", "11", "WHO-WAITS-FALLS", "every joint its step works or waits for",
            (before, _) => Moves(before) && before.Dust == SignOff.Stands, (_, after) => after.Dust == SignOff.Void)
        .On("Open", "section 3", "AFTER-A-FALLEN-STEP", "later ones that waited for it become to be re-confirmed (release blocked)",
            (before, _) => Moves(before) && before.Look == SignOff.Stands, (_, after) => after.Look == SignOff.ToConfirm)
        .On("Open", "11", "FIRST-OPENING-FELLS-NOTHING",
            "A sign-off falls by an opening that ends a cycle in which something was opened, fitted, run down or pulled since the job's start",
            (before, _) => !before.Begun && before.Clean == SignOff.Stands, (_, after) => after.Clean == SignOff.Stands)
        .On("Open", "11", "OPEN-ON-OPEN", "OPEN on an open joint starts no cycle",
            (before, _) => before is { Nut: Nut.Open, Clean: SignOff.Stands }, (_, after) => after.Clean == SignOff.Stands)
        .Whenever("11", "ONLY-OPENED-IS-LEFT-OUT", "a joint it only opens, and another job closes, is left out",
            (before, _) => before.Off == SignOff.Stands, (_, after) => after.Off == SignOff.Stands)
        .On("Sign", "11", "SIGNED-ANEW", "When one of these moves, or a record it rests on is voided, it is void and may be signed again",
            (before, after) => !before.Ended && after.Asked == Asked.Clean && before.Clean == SignOff.Void, (_, after) => after.Granted)
        .On("Sign", "1", "SIGNED-COUNTS", "No sign-off and no release while a position it depends on does not count",
            (_, after) => after is { Asked: Asked.Fit, Granted: true }, (before, _) => before.Counts)
        .On("Sign", "section 3", "WAITS-STAND", "later ones that waited for it become to be re-confirmed; work under way may be recorded but not signed",
            (_, after) => after is { Asked: Asked.Look, Granted: true }, (before, _) => before.Fit == SignOff.Stands);

    private static RuleBook<PlaceOfWork> After(RuleBook<PlaceOfWork> book) => book
        .On("Correct", "11", "VOIDED-RECORD", "or a record it rests on is voided, it is void",
            (before, _) => before.Fit == SignOff.Stands, (_, after) => after.Fit == SignOff.Void)
        .On("Correct", "11", "WAITED-RECORD", "or a record it rests on is voided, it is void",
            (before, _) => before.Dust == SignOff.Stands, (_, after) => after.Dust == SignOff.Void)
        .On("Correct", "section 3", "LATER-ONES-TO-CONFIRM", "when one is voided the sign-off is void, later ones that waited for it become to be re-confirmed",
            (before, _) => before.Look == SignOff.Stands, (_, after) => after.Look == SignOff.ToConfirm)
        .On("Correct", "11", "RUNS-AGAIN", "While its job runs, or where it falls by a correction, the job runs (again)",
            (before, _) => before is { Ended: true, Fit: SignOff.Stands }, (_, after) => !after.Ended)
        .On("Open", "11", "STAYS-ENDED",
            "Where it falls by an opening after its job's end, only that joint's records are superseded, the job stays ended",
            (before, _) => before.Ended, (_, after) => after.Ended)
        .Whenever("11", "OTHER-PLACES-STAND", "sign-offs at other places stand",
            (before, after) => before.Other == SignOff.Stands && before.Again == after.Again, (_, after) => after.Other == SignOff.Stands)
        .Always("11", "NOTHING-CLOSES-IT", "the opener's job or a new procedure closes the joint, and \"nothing closes this joint\" holds until then",
            place => !place.Released || place.Nut != Nut.Open)
        .On("Release to road", "1, 11", "RELEASE-NEEDS-SIGN-OFFS", "No sign-off and no release while a position it depends on does not count",
            (_, after) => after.Granted,
            (before, _) => before.Counts && (before.Ended || before.AllStand));

    private static RuleBook<PlaceOfWork> Courses(RuleBook<PlaceOfWork> book) => book
        .Ends("11", "AS-FOUND-MEASURED-FIRST", "A step signed before the wheel comes off stands after it came off",
            place => place is { Clean: SignOff.Stands, Nut: Nut.Open, Begun: true, Fell: false })
        .Ends("11", "OPENED-MID-JOB", "One bolt undone in mid-job: everything at its place is signed again and the car released",
            place => place is { Fell: true, Released: true, Again: false })
        .Ends("11", "MAY-AFTER-MARCH", "Wheel off in May after a March release",
            place => place is { Again: true, Released: true })
        .Ends("11", "TWO-JOBS", "P4 and P5 both touching the wheel nuts without restarting each other",
            place => place is { Off: SignOff.Stands, Fell: false, Released: true });
}
