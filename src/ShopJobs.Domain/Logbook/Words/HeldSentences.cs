using System.Globalization;

namespace ShopJobs.Domain.Logbook;

// The words of what is held beside fasteners, of decisions and of the acceptances that they rely on.
internal static class HeldSentences
{
    public static (string Words, string Next)? Of(HoldPoint point, HoldSubject on) => point.Reason switch
    {
        HoldReason.LotHeld => (
            on.With(point.Name is { } lot ? $"fitted from lot {lot}, which is held" : "fitted from a lot that is held"),
            "leave it; take hardware of another lot, or wait until the lot is decided"),
        HoldReason.StepHeld => (
            point.Unsigned is { } stopped ? $"“{stopped.Step.Title()}” is held" : "The step is held", "somebody with the right, who did not work on it, decides it"),
        HoldReason.ResultHeld => (
            $"The result “{point.Name ?? "recorded"}” is held", "somebody with the right, who did not record it, decides it, or it is done again after the decision"),

        // handing over
        HoldReason.NothingHalfDone => ("Nothing of this joint is half done", "go on with the step"),
        HoldReason.WentOn => ("The work on this joint went on since this was shown", "look at it again"),

        // a newer revision
        HoldReason.OlderRevision => (on.With("made under an older revision, and outside what the newer one asks"), "back off, inspect and redo; or somebody with the right decides"),
        HoldReason.OtherProcedure => ($"This is not a revision of {point.Name}", "choose a revision of the job's own procedure"),
        HoldReason.SameRevision => ($"The job is done by revision {point.Name} already", "go on with the work"),
        HoldReason.WorkIsGone => ($"The newer revision has no “{point.Name}” as this job recorded it", "leave the job as it is; or cancel it and put the newer revision on the car as a new one"),

        // words that others rely on
        HoldReason.AcceptanceWho => ("Nobody is named who accepts it", "write the name of whoever said it"),
        HoldReason.AcceptanceWhen when point.Day is { } ahead => (
            string.Create(CultureInfo.InvariantCulture, $"The acceptance is dated {WallTime.Day(ahead)}, after today"), "write the day on which it was said"),
        HoldReason.AcceptanceWhen => ("The acceptance has no day", "write the day on which it was said"),
        HoldReason.AcceptanceHow => ("How it was said is not chosen", "choose in person, by telephone or in writing"),
        HoldReason.AcceptanceKept => ("Where the writing is kept is missing", "write where others find it"),
        HoldReason.AcceptanceWords => ("What was said is missing", "write it in their words"),
        HoldReason.AcceptanceNotWritten => ("For a class A joint only a written acceptance counts", "have it in writing, or decide rework or replace"),

        // a decision
        HoldReason.LotNotReworked => ("A lot of parts is used as it is or replaced", "decide one of the two"),
        HoldReason.DecidedBefore when point is { Decision: { } made, At: { } decidedAt } => (
            string.Create(CultureInfo.InvariantCulture, $"{(point.By is { } by ? on.Names.Person(by) : "Somebody")} decided {(point.Position is null ? "it" : on.Fasteners)} before you, on {WallTime.Minute(on.Names.OnTheWall(decidedAt))}: {Made(made)}"),
            "look at what is recorded now; what you typed was not recorded"),
        HoldReason.DecidedBefore => ("It was decided already", "look at what is recorded now"),

        // what is not known here
        HoldReason.UnknownResult => ("There is no such result on this car", "choose one on the car's page"),
        HoldReason.UnknownHold => ("Nothing is held under this number", "go to it from My work"),
        HoldReason.LotMissing => ("No lot or kit is named", "write what is printed on the bag or box"),
        _ => null,
    };

    private static string Made(Disposition disposition) => disposition switch
    {
        Disposition.UseAsIs => "use as is",
        Disposition.Rework => "rework",
        _ => "replace",
    };
}
