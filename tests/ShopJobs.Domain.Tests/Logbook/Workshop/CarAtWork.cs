using System.Text;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>A car on which people of the test shop work: it decides commands, keeps the logbook and folds it.</summary>
internal sealed class CarAtWork
{
    public static readonly DateTime Start = new(2026, 3, 2, 7, 0, 0, DateTimeKind.Utc);
    public static readonly ContentDigest Reason = ContentDigest.Of([1], Encoding.UTF8.GetBytes("reason"));
    public const string Shown = "5ba93c9db0cff93f52b521d7420e43f6eda2784f";

    private readonly Dictionary<JobId, Procedure> procedures = [];
    private readonly ToolShelf shelf;
    private DateTime passed = Start;
    private TimeSpan off;
    private DateTime newest = Start;
    private ClockAnchor anchor = ClockAnchor.First(ShopState.Empty, Start, Start, TimeSpan.Zero);
    private readonly Dictionary<JobId, PlacedProcedure> placed = [];
    private readonly Dictionary<string, Procedure> revisions = [];
    private readonly Dictionary<PersonId, int> signedIn = [];

    public CarAtWork(int nuts = 5, ToolShelf? shelf = null, HoldRules? rules = null, JointRegister? register = null)
    {
        Register = register ?? TestRegister.With(nuts);
        this.shelf = shelf ?? new ToolShelf(Start);
        Rules = rules ?? HoldRules.Standard;
    }

    private CarAtWork(CarAtWork other)
    {
        Register = other.Register;
        shelf = other.shelf.Copy();
        Rules = other.Rules;
        procedures = new(other.procedures);
        placed = new(other.placed);
        revisions = new(other.revisions);
        signedIn = new(other.signedIn);
        State = other.State;
        Book = [.. other.Book];
        (Places, OnLiftB) = (other.Places, other.OnLiftB);
        PulledElsewhere = other.PulledElsewhere;
        (passed, off, newest, anchor, Clock) = (other.passed, other.off, other.newest, other.anchor, other.Clock);
    }

    public HoldRules Rules { get; }

    /// <summary>The places of the shop: two lifts, one stretch of floor, outside, and a booth that is not in use any more.</summary>
    public ShopPlaces Places { get; set; } = new(
    [
        new("LiftA", "Lift A", PlaceKind.Lift), new("LiftB", "Lift B", PlaceKind.Lift),
        new("Floor", "Floor space", PlaceKind.Floor), new("Outside", "Outside", PlaceKind.Outside),
        new("Booth", "Paint booth", PlaceKind.Floor, InUse: false),
    ]);

    /// <summary>The other car that stands on lift B; null where the lift is free.</summary>
    public string? OnLiftB { get; set; } = "Orange";

    /// <summary>Pulls that every tool made on other cars since its calibration.</summary>
    public int PulledElsewhere { get; set; }

    /// <summary>For whom somebody is no second person; nobody where none is named.</summary>
    public IReadOnlyDictionary<PersonId, IReadOnlySet<PersonId>> Ties { get; init; } = new Dictionary<PersonId, IReadOnlySet<PersonId>>();

    public IReadOnlyDictionary<JobId, Procedure> Procedures => procedures;

    public CarState State { get; private set; } = CarState.Empty;

    public List<Recorded> Book { get; } = [];

    public JointRegister Register { get; private set; }

    /// <summary>The instant of the next entry: what the clock shows, and never before the newest entry.</summary>
    public DateTime Now => passed + off > newest ? passed + off : newest;

    /// <summary>The fact, whatever the clock shows.</summary>
    public DateTime True => passed;

    /// <summary>What the shop's logbook says of its clock.</summary>
    public ShopState Clock { get; private set; } = ShopState.Empty;

    public DateOnly Today => DateOnly.FromDateTime(Now);

    /// <summary>Number of the newest entry.</summary>
    public long Last => State.Number;

    public void Wait(TimeSpan time) => passed += time;

    /// <summary>The session that a person is in.</summary>
    public SessionId SessionOf(TestPerson person) => new(new Guid(signedIn.GetValueOrDefault(person.Id) + 1, 9, 0, person.Id.Value.ToByteArray()[..8]));

    /// <summary>A person signs in again: another session.</summary>
    public void SignInAnew(TestPerson person) => signedIn[person.Id] = signedIn.GetValueOrDefault(person.Id) + 1;

    /// <summary>Somebody sets the clock of the machine, and the program sees it.</summary>
    public void SetClock(TimeSpan by)
    {
        off += by;
        Look();
    }

    /// <summary>The lead sets the clock right and signs that it is.</summary>
    public Verdict SignClock(TestPerson person)
    {
        Wait(TimeSpan.FromMinutes(1));
        SetClock(-off);
        var seen = Look();
        var verdict = seen.Decide(new SetClock(Shown, seen.Number), person.Rights);
        if (verdict is Verdict.Accepted accepted)
        {
            newest = passed;
            Write(accepted.Entries, person);
        }

        return verdict;
    }

    private ShopState Look()
    {
        anchor = anchor.Look(Clock, passed + off, passed - Start);
        return anchor.Unsaid(Clock).Aggregate(Clock, (known, step) => known.Apply(new Recorded(known.Number + 1, Now, default, step)));
    }

    // What the shop's logbook does not say yet is written before anything else.
    private void Write(IReadOnlyList<Entry> more, TestPerson person)
    {
        foreach (var entry in anchor.Unsaid(Clock).Concat(more).ToList())
        {
            Clock = Clock.Apply(new Recorded(Clock.Number + 1, Now, person.Id, entry));
        }
    }

    public ToolState Tool(ToolId id) => shelf.StateOf(id);

    public void TellTool(ToolId id, Entry entry)
    {
        Wait(TimeSpan.FromMinutes(1));
        var seen = Look();
        var at = Now;
        Write([], TestPerson.Lee);
        shelf.Tell(id, seen.Stamped(entry, at - (passed + off)), at);
        newest = at;
    }

    public JobId StartJob(Procedure procedure, params string[] places)
    {
        var job = new JobId(new Guid(procedures.Count + 1, 2, 0, new byte[8]));
        Do(TestPerson.Lee, ToStart(job, procedure, places));
        return job;
    }

    /// <summary>A new register comes in force; jobs that run keep theirs.</summary>
    public void TakeIn(JointRegister register)
    {
        foreach (var job in State.Jobs.Values)
        {
            Placed(job);
        }

        Register = register;
    }

    /// <summary>The command that puts a procedure on the car; its text is known from here.</summary>
    public StartJob ToStart(JobId job, Procedure procedure, IReadOnlyList<string> places)
    {
        if (!State.Jobs.ContainsKey(job))
        {
            procedures[job] = procedure;
        }

        return new StartJob(job, procedure, "digest", "digest", places);
    }

    /// <summary>The command that takes a newer revision over for a job; its text is known from here.</summary>
    public AdoptRevision ToAdopt(JobId job, Procedure procedure, string digest)
    {
        revisions[digest] = procedure;
        return new AdoptRevision(job, procedure, digest, "digest", Shown);
    }

    public PlacedProcedure Placed(JobBook job)
    {
        if (revisions.TryGetValue(job.Fact.ProcedureDigest, out var revised))
        {
            return new PlacedProcedure(revised, Register.For(job.Fact.Joints ?? JointList.OfTheRegister), [.. job.Fact.Places]);
        }

        if (!placed.TryGetValue(job.Id, out var found))
        {
            placed[job.Id] = found = new PlacedProcedure(procedures[job.Id], Register.For(job.Fact.Joints ?? JointList.OfTheRegister), [.. job.Fact.Places]);
        }

        return found;
    }

    public PlacedProcedure Placed(JobId job) => Placed(State.Jobs[job]);

    public Circumstances As(TestPerson person) => new Circumstances(person.Id, person.Rights, Now, Today, Register, Placed, Tool)
    {
        TiedTo = Ties.GetValueOrDefault(person.Id) ?? new HashSet<PersonId>(),
        Session = SessionOf(person),
        Shop = Look(),
        Ahead = Now - (passed + off),
        Places = Places,
        StandsAt = place => place == "LiftB" ? OnLiftB : null,
        PullsWith = tool => PulledElsewhere + PullsHere(tool),
    }.For(State);

    private int PullsHere(ToolId tool) => Tool(tool).LastGoodAt is var since
        ? Book.Count(recorded => recorded.Entry is TorqueRecorded pull && pull.Tool == tool && !(recorded.At <= since))
        : 0;

    public Verdict Try(TestPerson person, Command command)
    {
        Wait(TimeSpan.FromMinutes(1));
        var now = As(person);
        var verdict = State.Decide(
            command is SignedCommand signed && signed.Covers == Covering.Nothing ? State.AsShown(now, signed) : command, now, Rules);
        if (verdict is not Verdict.Accepted accepted)
        {
            return verdict;
        }

        var at = Now;
        Write([], person);
        newest = at;
        foreach (var entry in accepted.Entries)
        {
            var recorded = new Recorded(State.Number + 1, at, person.Id, entry);
            Book.Add(recorded);
            State = State.Apply(recorded);
        }

        return verdict;
    }

    /// <summary>Runs a command that must be recorded; gives its last entry.</summary>
    public Entry Do(TestPerson person, Command command)
    {
        var verdict = Try(person, command);
        return verdict is Verdict.Accepted accepted
            ? accepted.Entries[^1]
            : throw new InvalidOperationException($"Refused: {string.Join("; ", ((Verdict.Refused)verdict).Reasons.Select(Say))}");
    }

    /// <summary>Runs a command that must be refused; gives its reasons, each once.</summary>
    public IReadOnlyList<HoldReason> Refused(TestPerson person, Command command) => Try(person, command) is Verdict.Refused refused
        ? [.. refused.Reasons.Select(point => point.Reason).Distinct().Order()]
        : throw new InvalidOperationException("Was recorded.");

    /// <summary>A reason as people read it.</summary>
    public SaidHold Say(HoldPoint point) => As(TestPerson.Lee).Say(point);

    public PositionState Shows(JointPosition position) => State.StateOf(position, Tool);

    /// <summary>A command as a screen drew it now: with what it covers.</summary>
    public T Shows<T>(T command)
        where T : SignedCommand => State.AsShown(As(TestPerson.Lee), command);

    /// <summary>The state of a joint: that of its worst position.</summary>
    public PositionState Shows(string key, string place) =>
        State.StateOf(new Joint(key, place), Register.Kinds[key].Positions, Tool);

    public NextAction Next(JobId job, string step) => State.NextOn(As(TestPerson.Lee), Placed(job).Step(step)!);

    public StepStanding Standing(JobId job, string step) =>
        State.StandingOf(State.Jobs[job], Placed(job), Placed(job).Step(step)!);

    public IReadOnlyList<JointPosition> Positions(string key, string place) =>
        [.. Enumerable.Range(1, Register.For(State.Joints).Kinds[key].Positions).Select(number => new JointPosition(key, place, number))];

    /// <summary>The same car, on which something else may happen from here.</summary>
    public CarAtWork Copy() => new(this);

    public static EnteredTorque NewtonMetres(decimal value) => new(value, TorqueUnit.NewtonMetre);
}
