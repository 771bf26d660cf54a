using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One entry as it stands in a logbook.</summary>
public sealed record Recorded(long Number, DateTime At, PersonId Person, Entry Entry);

/// <summary>A sign-off of a step.</summary>
public sealed record SignOff(long Number, DateTime At, PersonId Person, StepConfirmed Fact)
{
    /// <summary>By whom a trainee's sign-off was countersigned; null while it was not.</summary>
    public SignOffAnswer? Answer { get; init; }

    /// <summary>True where a trainee signed and nobody has answered for it.</summary>
    public bool AwaitsCountersign => Fact.ByTrainee == true && Answer is null;
}

/// <summary>Who stood by and answers for a trainee's sign-off.</summary>
public sealed record SignOffAnswer(long Number, DateTime At, PersonId Person);

/// <summary>The newest record of a result.</summary>
public sealed record ResultBook(long Number, DateTime At, PersonId Person, ResultRecorded Fact)
{
    /// <summary>Entry that undid it; 0 while it is valid.</summary>
    public long VoidBy { get; init; }
}

/// <summary>A release, with what became of it.</summary>
public sealed record ReleaseBook(long Number, DateTime At, PersonId Person, Released Fact)
{
    /// <summary>Entry that ended it for good; 0 while none did.</summary>
    public long VoidBy { get; init; }

    /// <summary>Openings that ended it: taken back as never done, they did not.</summary>
    public ImmutableList<long> Openings { get; init; } = [];

    /// <summary>A pull or the withdrawal of it ended it too: nothing brings it back.</summary>
    public bool IsOver { get; init; }

    /// <summary>Newest entry by which it could not be given any more; 0 when there is none since it was given or upheld.</summary>
    public long SuspendedBy { get; init; }

    /// <summary>The car came back from this road test; null while it did not, and for any other release.</summary>
    public RoadTestEnded? Returned { get; init; }

    /// <summary>It was taken back, and whether the car had been driven under it; null while it was not.</summary>
    public ReleaseWithdrawn? Withdrawn { get; init; }

    /// <summary>When it was given, or last signed as valid again.</summary>
    public DateTime StandsSince { get; init; } = At;

    /// <summary>The entry that says so.</summary>
    public Entry StandsBy { get; init; } = Fact;

    /// <summary>The shop's day on which it was given; of older records the day in UTC.</summary>
    public DateOnly Day => Fact.On ?? DateOnly.FromDateTime(At);

    /// <summary>The car may have been driven under it.</summary>
    public bool MayHaveDriven => Fact.Kind != ReleaseKind.Move && Withdrawn is not { Driven: false };
}

/// <summary>An issued version of the work summary.</summary>
public sealed record SummaryBook(long Number, DateTime At, SummaryIssued Fact)
{
    /// <summary>Entry after which it is marked out of date; 0 while it does.</summary>
    public long SupersededBy { get; init; }
}

/// <summary>What a correction may name: an entry, its doer and the positions or step it is about.</summary>
public sealed record Correctable(Entry Entry, PersonId Person, DateTime At);

/// <summary>A correction that was made.</summary>
/// <param name="ConfirmedBy">Entry by which a second person confirmed it; 0 while nobody has.</param>
public sealed record CorrectionBook(long Number, PersonId Person, Corrected Fact, long ConfirmedBy)
{
    /// <summary>True when a second person confirmed it.</summary>
    public bool Confirmed => ConfirmedBy > 0;
}

/// <summary>Everything the entries of one car say. Nothing else holds a status of the car.</summary>
public sealed partial record CarState
{
    /// <summary>A car nobody wrote about yet.</summary>
    public static readonly CarState Empty = new();

    private CarState()
    {
    }

    /// <summary>Number of the newest entry.</summary>
    public long Number { get; init; }

    /// <summary>Jobs, running and ended.</summary>
    public ImmutableDictionary<JobId, JobBook> Jobs { get; init; } = ImmutableDictionary<JobId, JobBook>.Empty;

    /// <summary>The car's condition as last declared, by place and aspect; the place is null for an aspect of the whole car.</summary>
    public ImmutableDictionary<(string? Place, string Aspect), DeclaredCondition> Conditions { get; init; } =
        ImmutableDictionary<(string? Place, string Aspect), DeclaredCondition>.Empty;

    /// <summary>Positions that any entry names; all others are as found.</summary>
    public ImmutableDictionary<JointPosition, PositionBook> Positions { get; init; } =
        ImmutableDictionary<JointPosition, PositionBook>.Empty;

    /// <summary>Results by name.</summary>
    public ImmutableDictionary<string, ResultBook> Results { get; init; } = ImmutableDictionary<string, ResultBook>.Empty;

    /// <summary>Results and settings undone, by name, with the entry that undid them, until they are recorded again.</summary>
    public ImmutableDictionary<string, long> Undone { get; init; } = ImmutableDictionary<string, long>.Empty;

    /// <summary>Every release that was given, oldest first.</summary>
    public ImmutableList<ReleaseBook> ReleaseHistory { get; init; } = [];

    /// <summary>Newest release of each kind.</summary>
    public ImmutableDictionary<ReleaseKind, ReleaseBook> Releases { get; private init; } =
        ImmutableDictionary<ReleaseKind, ReleaseBook>.Empty;

    /// <summary>Issued summaries by version order.</summary>
    public ImmutableList<SummaryBook> Summaries { get; init; } = [];

    /// <summary>
    /// Entries that were voided, opened over or undone, each with the newest entry that did it. A sign-off given before that is
    /// void where it rests on one.
    /// </summary>
    public ImmutableDictionary<long, long> Fallen { get; init; } = ImmutableDictionary<long, long>.Empty;

    /// <summary>Entries taken back by a correction: a pull that rests on one does not count.</summary>
    public ImmutableHashSet<long> TakenBack { get; init; } = [];

    /// <summary>Joints on which a witness has looked, in any cycle.</summary>
    public ImmutableHashSet<Joint> LookedAt { get; init; } = [];

    /// <summary>Corrections by number.</summary>
    public ImmutableDictionary<long, CorrectionBook> Corrections { get; init; } =
        ImmutableDictionary<long, CorrectionBook>.Empty;

    /// <summary>Entries that a correction may name.</summary>
    public ByNumber<Correctable> Correctables { get; init; } = ByNumber<Correctable>.Empty;

    /// <summary>Openings by number, with what they changed.</summary>
    public ImmutableDictionary<long, OpeningBook> Openings { get; init; } = ImmutableDictionary<long, OpeningBook>.Empty;

    /// <summary>The book of a position; as found where no entry names it.</summary>
    public PositionBook Of(JointPosition position) =>
        Positions.TryGetValue(position, out var book) ? book : new PositionBook(position);

    /// <summary>Jobs that run, oldest first.</summary>
    public IEnumerable<JobBook> RunningJobs => Jobs.Values.Where(job => job.IsRunning).OrderBy(job => job.Number);

    /// <summary>True when a release under which the car may have been driven was given after this entry.</summary>
    public bool DrivenSince(long entry) => FirstDriveAfter(entry) is not null;

    /// <summary>The first release after this entry under which the car may have been driven; null when there is none.</summary>
    public ReleaseBook? FirstDriveAfter(long entry) => ReleaseHistory.Find(release => release.MayHaveDriven && release.Number > entry);

    /// <summary>The road test that the car is out on: released, and not back. Null where it is on none.</summary>
    public ReleaseBook? RoadTest => Releases.GetValueOrDefault(ReleaseKind.RoadTest) is { Returned: null, Withdrawn: null } test ? test : null;

    /// <summary>Pure and total over the known entries: the state after one more entry.</summary>
    public CarState Apply(Recorded recorded)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        var next = recorded.Entry switch
        {
            JobStarted fact => this with { Jobs = Jobs.Add(fact.Job, new JobBook(fact.Job, recorded.Number, recorded.At, fact)) },
            JobEnded fact => WithEnd(recorded, fact.Job, JobEnd.ByTheLead, null),
            RevisionAdopted fact => WithRevision(recorded, fact),
            JobPutOnHold fact => WithHold(recorded, fact),
            JobResumed fact => WithResumption(recorded, fact),
            JobCancelled fact => WithEnd(recorded, fact.Job, JobEnd.Cancelled, fact.Reason),
            JobTakenBack fact => WithTakenBack(recorded, fact),
            CarConditionDeclared fact => WithConditions(recorded, fact),
            StepFinished fact => WithFinished(recorded, fact),
            StepConfirmed fact => Signed(recorded, fact),
            ResultRecorded fact => WithResult(recorded, fact),
            Opened fact => WithOpened(recorded, fact).WithUnseen(recorded.Number, fact.Unseen),
            ThreadTreated fact => Put(fact.Positions, book => book with { Thread = fact, NamedBy = recorded.Number }),
            FittedNew fact => WithFitted(recorded, fact),
            HandTightened fact => WithHandTight(recorded, fact),
            TorqueRecorded fact => WithTorque(recorded, fact),
            DeclaredFromPaper fact => WithDeclared(recorded, fact),
            Settled fact => WithSettled(recorded, fact),
            Witnessed fact => WithWitness(recorded, fact),
            Countersigned fact => WithCountersignature(recorded, fact),
            PositionHeld fact => WithHolds(fact.Positions, new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.Held)),
            Decided fact => WithDecision(recorded, fact),
            WorkHeld fact => WithWorkHold(recorded, fact),
            WorkDecided fact => WithWorkDecision(recorded, fact),
            Corrected fact => WithCorrection(recorded, fact),
            CorrectionConfirmed fact => WithConfirmation(recorded, fact),
            Released fact => WithRelease(recorded, fact),
            ReleaseUpheld fact => WithUpheld(recorded, fact),
            ReleaseWithdrawn fact => WithWithdrawal(recorded, fact),
            RoadTestEnded fact => WithReturn(recorded, fact),
            Arrived fact => WithArrival(recorded, fact),
            AsFoundRecorded fact => WithAsFound(recorded, fact),
            Left fact => WithDeparture(recorded, fact),
            CarMoved fact => WithMove(recorded, fact.Against),
            LookedOver fact => WithLook(fact),
            PhotoTaken fact => WithPhoto(recorded, fact),
            LeftHalfDone fact => WithStop(recorded, fact.Joint, fact.Last, fact.Words, takenOver: false),
            WorkTakenOver fact => WithStop(recorded, fact.Joint, fact.Last, Stops.GetValueOrDefault(fact.Joint)?.Words, takenOver: true),
            JointListChanged fact => WithJoints(recorded, fact),
            FewerJointsAsked fact => WithFewerAsked(recorded, fact),
            JointListKept fact => this with { FewerAsked = FewerAsked.Remove(fact.Asked) },
            ReTorqueExtended fact => WithInterval(recorded, fact),
            SummaryIssued fact => this with { Summaries = Superseded(recorded.Number).Add(new SummaryBook(recorded.Number, recorded.At, fact)) },
            _ => throw new ArgumentException($"{recorded.Entry.GetType().Name} is not an entry of a car's logbook.", nameof(recorded)),
        };
        return (next.WrongCars.IsEmpty ? next : next.WhileUnclosed()) with { Number = recorded.Number };
    }

    private CarState Begin(JobId job) =>
        Jobs.TryGetValue(job, out var book) && !book.Begun ? this with { Jobs = Jobs.SetItem(job, book with { Begun = true }) } : this;

    private CarState Fell(long by, params IEnumerable<long> entries) =>
        this with { Fallen = Fallen.SetItems(entries.Where(number => number > 0).Select(number => KeyValuePair.Create(number, by))) };

    private CarState Put(PositionBook book) => this with { Positions = Positions.SetItem(book.Position, book) };

    private CarState Put(IEnumerable<JointPosition> positions, Func<PositionBook, PositionBook> change)
    {
        var books = Positions.ToBuilder();
        foreach (var position in positions)
        {
            books[position] = change(books.TryGetValue(position, out var book) ? book : new PositionBook(position));
        }

        return this with { Positions = books.ToImmutable() };
    }

    private CarState Remember(Recorded recorded) =>
        this with { Correctables = Correctables.Add(recorded.Number, new Correctable(recorded.Entry, recorded.Person, recorded.At)) };

    private ImmutableList<SummaryBook> Superseded(long by) =>
        Summaries.IsEmpty || Summaries[^1].SupersededBy != 0
            ? Summaries
            : Summaries.SetItem(Summaries.Count - 1, Summaries[^1] with { SupersededBy = by });

    // Opening, or a pull that is no re-torque, ends every release for good.
    private CarState EndReleases(long by, bool opening)
    {
        var next = this with { Summaries = Superseded(by) };
        foreach (var release in Releases.Values.Where(release => !release.IsOver).ToList())
        {
            next = next.Replace(
                release.Number,
                given => given with
                {
                    VoidBy = given.VoidBy == 0 ? by : given.VoidBy,
                    Openings = opening ? given.Openings.Add(by) : given.Openings,
                    IsOver = !opening,
                },
                by);
        }

        return next;
    }

    // Anything else by which a release could not be given now suspends it.
    private CarState SuspendReleases(long by) => Change(release => release with { SuspendedBy = by }, by);

    private CarState Change(Func<ReleaseBook, ReleaseBook> change, long by)
    {
        var next = this with { Summaries = Superseded(by) };
        return Releases.Values.Where(release => release.VoidBy == 0).ToList()
            .Aggregate(next, (state, release) => state.Replace(release.Number, change, by));
    }
}
