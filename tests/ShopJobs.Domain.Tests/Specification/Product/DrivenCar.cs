using System.Collections.Immutable;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car with real tools, driven one step after another along a specification.</summary>
internal sealed class DrivenCar
{
    private readonly ImmutableDictionary<JobId, PlacedProcedure> placed;
    private readonly JointRegister register;
    private ImmutableDictionary<ToolId, ToolState> tools;
    private DateTime now = CarAtWork.Start;

    /// <summary>A car with a job of each procedure at the left.</summary>
    public DrivenCar(JointRegister register, params Procedure[] procedures)
        : this(register, [TestRegister.Left], procedures)
    {
    }

    /// <summary>A car with a job of each procedure at the places.</summary>
    public DrivenCar(JointRegister register, IReadOnlyList<string> places, params Procedure[] procedures)
    {
        this.register = register;
        var shelf = new ToolShelf(now);
        tools = shelf.Logbooks.Keys.ToImmutableDictionary(id => id, shelf.StateOf);
        placed = procedures.Select((procedure, index) => (Id: Job(index), Placed: new PlacedProcedure(procedure, register, places)))
            .Append((Id: Job(9), Placed: new PlacedProcedure(procedures[0], register, places)))
            .ToImmutableDictionary(job => job.Id, job => job.Placed);
        for (var index = 0; index < procedures.Length; index++)
        {
            Do(TestPerson.Lee, new StartJob(Job(index), procedures[index], "digest", "digest", places));
        }
    }

    private DrivenCar(DrivenCar other) =>
        (register, tools, placed, now, State) = (other.register, other.tools, other.placed, other.now, other.State);

    public CarState State { get; private set; } = CarState.Empty;

    public DrivenCar Copy() => new(this);

    /// <summary>Starts one more job of the first procedure; refused where it runs already.</summary>
    public bool StartAnother() => Do(TestPerson.Lee, new StartJob(Job(9), placed[Job(0)].Procedure, "digest", "digest", [.. State.Jobs[Job(0)].Fact.Places]));

    public static JobId Job(int index) => new(new Guid(index + 1, 2, 0, new byte[8]));

    public void Wait(TimeSpan time) => now += time;

    public ToolState Tool(ToolId id) => tools.GetValueOrDefault(id, ToolState.Empty);

    /// <summary>True where it was recorded, false where it was refused.</summary>
    public bool Do(TestPerson person, Command command)
    {
        Wait(TimeSpan.FromMinutes(1));
        if (State.Decide(Drawn(person, command), As(person)) is not Verdict.Accepted accepted)
        {
            return false;
        }

        foreach (var entry in accepted.Entries)
        {
            State = State.Apply(new Recorded(State.Number + 1, now, person.Id, entry));
        }

        return true;
    }

    /// <summary>What would be answered, without doing it.</summary>
    public bool Takes(TestPerson person, Command command) => State.Decide(Drawn(person, command), As(person)) is Verdict.Accepted;

    /// <summary>True where the tool's logbook took it.</summary>
    public bool Tell(ToolId id, TestPerson person, ToolCommand command)
    {
        Wait(TimeSpan.FromMinutes(1));
        if (Tool(id).Decide(id, command, person.Rights, DateOnly.FromDateTime(now), doubt => HasUsed(person, id, doubt)) is not Verdict.Accepted accepted)
        {
            return false;
        }

        foreach (var entry in accepted.Entries)
        {
            tools = tools.SetItem(id, Tool(id).Apply(new Recorded(Tool(id).Number + 1, now, person.Id, entry)));
        }

        return true;
    }

    /// <summary>Stands in a tool's logbook already: nobody is asked.</summary>
    public void Stands(ToolId id, Entry entry) => tools = tools.SetItem(id, Tool(id).Apply(new Recorded(Tool(id).Number + 1, now, TestPerson.Lee.Id, entry)));

    public PositionBook Of(JointPosition position) => State.Of(position);

    /// <summary>True where no rule finds a reason why the position doesn't count for the final stage of its group.</summary>
    public bool Counts(int job, string group, JointPosition position)
    {
        var instance = placed[Job(job)].Group(group, position.Place)!;
        var question = new PositionQuestion(State, As(TestPerson.Lee), Of(position), instance.Group.Stages.Count, State.Jobs[Job(job)], instance);
        return !PositionRules.All.Any(rule => rule.Find(question).Any());
    }

    /// <summary>True while a hold on it waits for its decision.</summary>
    public bool IsHeld(JointPosition position) => Of(position).Holds.Exists(hold => hold.Decision is null);

    public StepStanding Standing(int job, string step) =>
        State.StandingOf(State.Jobs[Job(job)], placed[Job(job)], placed[Job(job)].Step(step)!);

    public bool Pull(TestPerson person, int job, string group, JointPosition position, int stage, decimal newtonMetres, int cycle = 0, ToolId? tool = null) =>
        Do(person, new RecordTorque(
            Job(job), group, position, Of(position).Cycle + cycle, stage, position.Number - 1, TorqueKind.Reading,
            new EnteredTorque(newtonMetres, TorqueUnit.NewtonMetre), tool ?? TestTools.Dial, []));

    // A signature covers what its screen showed: here, everything as it is.
    private Command Drawn(TestPerson person, Command command) =>
        command is SignedCommand signed ? State.AsShown(As(person), signed) : command;

    private bool HasUsed(TestPerson person, ToolId id, DoubtRaised doubt) => State.Positions.Values.SelectMany(book => book.Pulls).Any(pull =>
        pull.Person == person.Id && pull.Fact.Tool == id && doubt.Covers(ToolWork.Of(pull.Fact, pull.At)));

    public Circumstances As(TestPerson person) =>
        new(person.Id, person.Rights, now, DateOnly.FromDateTime(now), register, job => placed[job.Id], Tool);
}
