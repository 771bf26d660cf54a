using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Says in one plain sentence what an entry records. Every kind has its sentence. Pure.</summary>
public static class EntryWords
{
    /// <summary>The sentence of an entry. Reasons and other texts kept outside the entry are not in it: see <see cref="EntryFacets.Texts"/>.</summary>
    public static string Of(Entry entry, EntryNames names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return entry switch
        {
            JobStarted fact => $"Started {fact.Procedure}, revision {fact.Revision}, at {string.Join(", ", fact.Places)}.",
            JobEnded fact => $"Ended {names.Job(fact.Job)}: all its steps are signed.",
            JobPutOnHold fact => $"Put {names.Job(fact.Job)} on hold.",
            JobResumed fact => $"Resumed {names.Job(fact.Job)}{RunDownAgain(fact)}.",
            JobCancelled fact => $"Cancelled {names.Job(fact.Job)}: what is open stays open.",
            JobTakenBack fact => $"Took {names.Job(fact.Job)} back: it was started on the wrong car{LeftOpen(fact, names)}.",
            CarConditionDeclared fact => $"Confirmed the car's condition{At(fact.Places)}: {string.Join(", ", fact.Conditions.Select(ConditionSaid.Of))}.",
            StepFinished fact => $"Finished “{names.Step(fact.Job, fact.Step)}” of {names.Job(fact.Job)}, to be signed{Values(fact.Values)}.",
            StepConfirmed { NotApplicable: true } fact => $"Declared “{names.Step(fact.Job, fact.Step)}” of {names.Job(fact.Job)} not applicable.",
            StepConfirmed { ByTrainee: true } fact => $"Signed “{names.Step(fact.Job, fact.Step)}” of {names.Job(fact.Job)} as a trainee{Values(fact.Values)}.",
            StepConfirmed fact => $"Signed “{names.Step(fact.Job, fact.Step)}” of {names.Job(fact.Job)}{Values(fact.Values)}.",
            ResultRecorded fact => $"Recorded {fact.Name}, {BasisOf(fact.Basis)}{Values(fact.Values)}{Notes(fact)}{Instrument(fact, names)}{VoidFrom(fact.Undid)}{NoGood(fact)}.",
            Opened { Late: { } late } fact when late.Count == fact.Positions.Count => $"Reported late as opened: {names.Positions(late)}; held until somebody has looked.",
            Opened fact => $"Opened {names.Positions(fact.Positions.Except(fact.Late ?? []))}{Also(fact, names)}{VoidFrom(fact.Undid)}{Late(fact, names)}{Unseen(fact)}{From(fact.OnPaper)}.",
            ThreadTreated fact => $"{Treated(fact)} {names.Positions(fact.Positions)}.",
            LeftHalfDone fact => $"Left {names.Joint(fact.Joint)} half done, at entry {Number(fact.Last)}.",
            WorkTakenOver fact => $"Went on with {names.Joint(fact.Joint)} after looking at entry {Number(fact.Last)}.",
            RevisionAdopted fact => $"Goes on with {names.Job(fact.Job)} by revision {fact.Revision}{(fact.Steps.Count > 0 ? $"; signed again: {string.Join(", ", fact.Steps.Select(step => $"“{names.Step(fact.Job, step)}”"))}" : "")}{(fact.Outside.Count > 0 ? $"; held, as outside it: entries {EntryNames.Numbers(fact.Outside)}" : "")}.",
            FittedNew fact => $"Fitted new {fact.Hardware} on {names.Positions(fact.Positions)}{(fact.Lot is null ? "" : $", lot {fact.Lot}")}{From(fact.OnPaper)}.",
            HandTightened fact => $"{UpperFirst(names.Positions(fact.Positions))} run down by hand{Helped(fact.Helpers, fact.Problems, names)}{From(fact.OnPaper)}.",
            TorqueRecorded fact => $"{PullOf(fact)}{AtFastener(fact)} on {names.Positions([fact.Position])}, stage {Number(fact.Stage)} of {Number(fact.Spec.Stages)}, with {names.Tool(fact.Tool)}{Helped(fact.Helpers, fact.Problems, names)}{From(fact.OnPaper)}.",
            DeclaredFromPaper fact => $"Declared from paper{DoneBy(fact, names)}, does not count: {names.Positions(fact.Positions)} {(fact.Stage == 0 ? "run down by hand" : $"pulled to stage {Number(fact.Stage)}")}.",
            Settled fact => $"Re-torqued {names.Positions(fact.Positions)} after the drive: {Moved(fact)}, {LowerFirst(PullOf(fact.Kind, fact.Value))}, with {names.Tool(fact.Tool)}.",
            Witnessed fact => $"{(fact.Accepted ? "Witnessed" : "Witnessed and not accepted:")} {names.Joint(fact.Joint)}, stage {Number(fact.Stage)}, {MethodOf(fact.Method)} (entries {EntryNames.Numbers(fact.Records)}).",
            Countersigned fact => $"Countersigned entries {EntryNames.Numbers(fact.Records)}: stood by and answers for them.",
            PositionHeld fact => $"Stopped the work on {names.Positions(fact.Positions)}.",
            Decided fact => $"Decided {names.Positions([fact.Position])}: {DispositionOf(fact.Disposition)}{About(fact, names)}.",
            WorkHeld { Job: { } job, Step: { } step } => $"Stopped “{names.Step(job, step)}” of {names.Job(job)}.",
            WorkHeld { Result: { } result } => $"Stopped the result in entry {Number(result)}.",
            WorkHeld fact => $"Stopped the lot {fact.Lot}.",
            WorkDecided fact => $"Decided the hold in entry {Number(fact.Hold)}: {DispositionOf(fact.Disposition)}.",
            Corrected { Restated: { } restated } fact => $"Corrected entry {Number(fact.Target)}: it should read {restated}.",
            Corrected fact => $"Voided entry {Number(fact.Target)}{(fact.WasPulled switch { true => "; it was pulled all the same", false => "; it was never pulled", _ => "" })}.",
            CorrectionConfirmed fact => $"Confirmed the correction in entry {Number(fact.Correction)}.",
            Released fact => $"Released the car {KindOf(fact.Kind)}{Odometer(fact, names)}{Drive(fact, names)}{Without(fact)}{Lapses(fact, names)}{(fact.Closing is null ? "" : "; closing check signed")}; joints not worked on, as the car came in: {Number(fact.NotChecked)}.",
            ReleaseUpheld fact => $"Looked again: the release {KindOf(fact.Kind)} in entry {Number(fact.Release)} is valid again.",
            ReleaseWithdrawn fact => $"Took back the release {KindOf(fact.Kind)} in entry {Number(fact.Release)}; the car was {(fact.Driven ? "" : "not ")}driven under it.",
            RoadTestEnded fact => $"Back from the road test of entry {Number(fact.Release)} at {fact.Odometer.Words}.",
            SummaryIssued fact => $"Issued work summary version {Number(fact.Version)}{(fact.Replaces is { } old ? $", which replaces version {Number(old)}" : "")}.",
            JointListChanged or FewerJointsAsked or JointListKept => JointListWords.Of(entry, names),
            ReTorqueExtended or Arrived or AsFoundRecorded or Left or CarMoved or LookedOver => VisitWords.Of(entry, names),
            PhotoTaken fact => PhotoWords.Of(fact),
            _ => ShopEntryWords.Of(entry) ?? ToolEntryWords.Of(entry, names),
        };
    }

    internal static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string PullOf(TorqueRecorded fact) =>
        fact.Value is { } value ? PullOf(fact.Kind, value) : $"Turned {fact.Amount()}";

    private static string PullOf(TorqueKind kind, EnteredTorque value) => kind switch
    {
        TorqueKind.SettingConfirmed => $"Clicked at {value}",
        TorqueKind.Reading => $"Read {value}",
        TorqueKind.RunDown => $"Run-down torque {value}",
        TorqueKind.BreakAway => $"Break-away torque {value}",
        TorqueKind.Residual => $"Residual torque {value}",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of torque."),
    };

    private static string AtFastener(TorqueRecorded fact) => fact switch
    {
        { AtFastener: null } => "",
        { RunDown: { } runDown } => $" ({fact.AtFastener} without the run-down torque of {runDown})",
        _ => $" ({fact.AtFastener} at the fastener, through the adapter)",
    };

    private static string Also(Opened fact, EntryNames names) =>
        fact.AlsoOpened.Count == 0 ? "" : $"; open with it: {names.Positions(fact.AlsoOpened)}";

    private static string Unseen(Opened fact) =>
        fact.Unseen is { } systems ? $"; nobody had written down how it was found, and that is lost: {string.Join(", ", systems)}" : "";

    private static string Late(Opened fact, EntryNames names) =>
        fact.Late is { Count: > 0 } late ? $"; reported late and held: {names.Positions(late)}" : "";

    private static string Treated(ThreadTreated fact) => fact.Thread switch
    {
        ThreadCondition.Dry => "Cleaned dry the threads of",
        _ => $"Put {ThreadOf(fact.Thread)}{(fact.Product is null ? "" : $" ({fact.Product}{(fact.Batch is null ? "" : $", batch {fact.Batch}")})")} on the threads of",
    };

    private static string ThreadOf(ThreadCondition thread) => thread switch
    {
        ThreadCondition.Oiled => "oil",
        ThreadCondition.Locker => "locker",
        ThreadCondition.AntiSeize => "anti-seize",
        ThreadCondition.PreAppliedLocker => "fasteners with locker",
        _ => throw new ArgumentOutOfRangeException(nameof(thread), thread, "Nothing that is put on a thread."),
    };

    private static string RunDownAgain(JobResumed fact) =>
        fact.RunDownAgain.Count == 0 ? "" : $"; to be backed off and run down again: entries {EntryNames.Numbers(fact.RunDownAgain)}";

    private static string LeftOpen(JobTakenBack fact, EntryNames names) =>
        fact.LeftOpen.Count == 0 ? "" : $"; it had opened and not closed {names.Positions(fact.LeftOpen)}";

    private static string From(OnPaper? paper) => paper is { } card
        ? FormattableString.Invariant($", entered from card {card.Card}, {card.At:yyyy-MM-dd HH:mm} UTC by the paper")
        : "";

    private static string DoneBy(DeclaredFromPaper fact, EntryNames names) => fact.DoneBy is { } doer ? $", done by {names.Person(doer)}" : "";

    private static string At(IReadOnlyList<string>? places) => places is null ? "" : $" at {string.Join(", ", places)}";

    private static string VoidFrom(IReadOnlyList<Undone> undid) =>
        undid.Count == 0 ? "" : $"; void from here: {string.Join(", ", undid)}";

    private static string Values(IReadOnlyList<MeasuredValue> values) => values.Count == 0
        ? ""
        : $": {string.Join(", ", values.Select(value => $"{value.Name} {value.Amount()}"))}";

    // Of what was reported for somebody else the last one named did it.
    private static string Helped(IReadOnlyList<PersonId> helpers, IReadOnlyList<HoldReason> problems, EntryNames names) =>
        helpers.Count == 0 ? ""
        : problems.Contains(HoldReason.ReportedByAnother) ? $", done by {names.Person(helpers[^1])}, reported by another{Helped([.. helpers.SkipLast(1)], [], names)}"
        : $", helped by {string.Join(", ", helpers.Select(names.Person))}";

    private static string Moved(Settled fact) => (fact.Moved, fact.AngleDegrees) switch
    {
        (false, _) => "not moved",
        (true, { } angle) => FormattableString.Invariant($"moved {angle} degrees"),
        _ => "moved",
    };

    private static string About(Decided fact, EntryNames names)
    {
        string[] about =
        [
            .. fact.About.Count == 0 ? [] : new[] { $"held by {EntryNames.Numbers(fact.About)}" },
            .. fact.Doubts.Select(doubt => names.Tool(doubt.Tool)).Distinct().Select(tool => $"doubt of {tool}"),
        ];
        return about.Length == 0 ? "" : $" ({string.Join(", ", about)})";
    }

    private static string Odometer(Released fact, EntryNames names) =>
        fact.Odometer is { } read ? $" at {read.Words}" : fact.OdometerKm is { } km ? $" at {names.Distance.Say(km)}" : "";

    private static string Drive(Released fact, EntryNames names) =>
        fact is { Driver: { } driver, DistanceKm: { } km } ? $", driven by {names.Person(driver)}, at most {names.Distance.Say(km)}" : "";

    private static string Without(Released fact) =>
        fact.Without is { } without ? $"; still missing, as only a drive gives it: {string.Join(", ", without)}" : "";

    private static string Notes(ResultRecorded fact) =>
        fact.Notes is { Count: > 0 } notes ? $"; {string.Join(", ", notes.Select(note => $"{note.Name} {note.Text}"))}" : "";

    private static string Instrument(ResultRecorded fact, EntryNames names) => fact.Tool is { } tool ? $", with {names.Tool(tool)}" : "";

    private static string NoGood(ResultRecorded fact) =>
        fact.Problems is { Count: > 0 } problems ? $"; no good result: {string.Join(", ", problems.Select(HoldWords.Of))}" : "";

    private static string Lapses(Released fact, EntryNames names) => (fact.LapsesAtKm, fact.LapsesOn) switch
    {
        (_, { } day) when fact.Kind == ReleaseKind.RoadTest => FormattableString.Invariant($"; it ends with {WallTime.Day(day)}"),
        ({ } km, { } day) => FormattableString.Invariant($"; expires at {names.Distance.Say(km)} or after {WallTime.Day(day)}, when the re-torque is due"),
        ({ } km, null) => FormattableString.Invariant($"; expires at {names.Distance.Say(km)}, when the re-torque is due"),
        (null, { } day) => FormattableString.Invariant($"; expires after {WallTime.Day(day)}, when the re-torque is due"),
        _ => "",
    };

    private static string UpperFirst(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static string LowerFirst(string words) => char.ToLowerInvariant(words[0]) + words[1..];

    private static string BasisOf(ResultBasis basis) => basis switch
    {
        ResultBasis.Measured => "measured",
        ResultBasis.LookedAt => "looked at",
        ResultBasis.Declared => "declared",
        _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "Not a basis of a result."),
    };

    private static string MethodOf(WitnessMethod method) => method switch
    {
        WitnessMethod.LookedAtMark => "by the mark",
        WitnessMethod.FirstMovement => "by first movement",
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Not a way to look."),
    };

    private static string DispositionOf(Disposition disposition) => disposition switch
    {
        Disposition.UseAsIs => "use as is",
        Disposition.Rework => "rework",
        Disposition.Replace => "replace",
        _ => throw new ArgumentOutOfRangeException(nameof(disposition), disposition, "Not a disposition."),
    };

    private static string KindOf(ReleaseKind kind) => kind switch
    {
        ReleaseKind.Move => "to move",
        ReleaseKind.RoadTest => "to a road test",
        ReleaseKind.Road => "to road",
        ReleaseKind.Track => "to track",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a release."),
    };
}
