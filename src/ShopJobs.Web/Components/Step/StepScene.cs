using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>One step of one car as it stands at one moment, with who looks at it. The screen draws it and decides nothing.</summary>
/// <param name="Names">Everybody's name by id.</param>
public sealed record StepScene(
    Car Car, CarReading Reading, JobBook Job, StepInstance Step, Present Here, IReadOnlyDictionary<PersonId, string> Names)
{
    /// <summary>Everything the car's logbook says.</summary>
    public CarState State => Reading.State;

    /// <summary>The procedure at its places.</summary>
    public PlacedProcedure Placed => Reading.Placed(Job);

    /// <summary>Whether its sign-off is valid.</summary>
    public StepStanding Standing => State.StandingOf(Job, Placed, Step);

    /// <summary>Why its work should not start yet.</summary>
    public IReadOnlyList<HoldPoint> Gate => Reading.HoldsBeforeStart(Job, Step);

    /// <summary>The one thing to do next.</summary>
    public NextAction Next { get; } = Reading.State.NextOn(Reading.Now, Job, Reading.Placed(Job), Step);

    /// <summary>The pulls after the next one, while the tablet cannot ask.</summary>
    public IReadOnlyList<Cell> Ahead => Next is NextAction.PullNow { Cell: var cell } ? State.After(Reading.Now, cell) : [];

    /// <summary>The step of this job to go on with, at the same place where there is one; null when none may begin now.</summary>
    public StepInstance? Onward => Placed.Steps
        .Where(step => step.Id != Step.Id && State.StandingOf(Job, Placed, step) != StepStanding.Signed
            && State.FinishedOf(Job, Placed, step)?.Person != Here.Person
            && Reading.HoldsBeforeStart(Job, step).Count == 0 && State.NextOn(Reading.Now, Job, Placed, step) is not (NextAction.Stopped or NextAction.CountersignStep))
        .OrderBy(step => step.Place == Step.Place ? 0 : 1)
        .FirstOrDefault();

    /// <summary>Who has said that it is done, where that is valid and nobody has signed it; null otherwise.</summary>
    public FinishedStep? Finished => State.FinishedOf(Job, Placed, Step);

    /// <summary>Steps before it that this person has finished and that one PIN signs with it.</summary>
    public IReadOnlyList<StepInstance> SignedWith => Step.IsSignedByItself() ? [] : [.. Before.Where(step => step.Place == Step.Place && !step.IsSignedByItself())];

    /// <summary>
    /// Steps before it that this person has finished and that are signed before it, those of one PIN together: all of them where its work
    /// may not begin over them.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<StepInstance>> SignedBefore => FinishedSteps.ByOnePin(Gate.Count > 0 ? Before : [.. Before.Except(SignedWith)]);

    private IReadOnlyList<StepInstance> Before => State.FinishedBefore(Here.Person, Job, Placed, Step);

    /// <summary>The newest sign-off, standing or not.</summary>
    public SignOff? SignOff => Job.SignOffs.GetValueOrDefault(Step.Id);

    /// <summary>
    /// The newest opening after which the work of this step is to be done again; 0 where none was. Ticks and values given before it are
    /// of another cycle.
    /// </summary>
    public long Redone => Placed.JointsOf(Step).Select(State.Of)
        .Where(book => book.TouchedBefore > Job.Number).Select(book => book.OpenedBy).DefaultIfEmpty().Max();

    /// <summary>Positions of this step that are held and not decided.</summary>
    public IReadOnlyList<PositionBook> Held =>
    [
        .. Step.Work.SelectMany(work => work.Instance.Positions).Distinct().Select(State.Of)
            .Where(book => book.Holds.Any(hold => hold.Decision is null)),
    ];

    /// <summary>Holds on this step itself that are not decided.</summary>
    public IReadOnlyList<WorkHold> HeldHere => [.. State.UndecidedWork().Where(hold => hold.Fact.Job == Job.Id && hold.Fact.Step == Step.Id)];

    /// <summary>Pulls of this step that wait for a countersignature.</summary>
    public IReadOnlyList<Pull> Unanswered =>
    [
        .. from work in Step.Work
           from position in work.Instance.Positions
           from pull in State.Of(position).Pulls
           where pull.WaitsForAnswer && work.Stages.Contains(pull.Fact.Stage)
           orderby pull.Number
           select pull,
    ];

    /// <summary>Every position that this step works.</summary>
    public IReadOnlyList<JointPosition> Positions => [.. Step.Work.SelectMany(work => work.Instance.Positions).Distinct()];

    /// <summary>A person's name as it is now.</summary>
    public string NameOf(PersonId person) => Names.GetValueOrDefault(person, "somebody");

    /// <summary>A group at its place, inside a sentence: "wheel nuts front-left".</summary>
    public static string NameOf(GroupInstance instance) => NextWords.NameOf(instance);

    /// <summary>
    /// The group whose picture stands on the screen: that of the next action, else the first lasting one. Jam nuts are drawn as the
    /// studs that they drive.
    /// </summary>
    public GroupWork? Shown
    {
        get
        {
            var instance = InstanceOf(Next);
            return Step.Work.FirstOrDefault(work => instance is { Group.Temporary: true }
                    ? work.Instance.Group.Jam?.Group == instance.Group.Id && work.Instance.Place == instance.Place
                    : work.Instance == instance)
                ?? Step.Work.FirstOrDefault(work => !work.Instance.Group.Temporary)
                ?? (Step.Work.Count > 0 ? Step.Work[0] : null);
        }
    }

    /// <summary>The one position to work on next, in the picture; null when the next action is about none or several.</summary>
    public JointPosition? Outlined => (Next switch
    {
        NextAction.PullNow { Cell: var cell } => cell.Position,
        NextAction.TakeOff { Positions: [var only] } => only,
        NextAction.ByHand { Positions: [var only] } => only,
        NextAction.Fit { Positions: [var only] } => only,
        _ => (JointPosition?)null,
    }) is { } next ? Shown?.Instance.Joint.At(next.Number) : null;

    /// <summary>
    /// What the work that waits for this step asks of the car, where this step itself works on no joint: the one by which the car is lowered
    /// or lifted. Null where nothing does.
    /// </summary>
    public (GroupInstance Instance, Stage Stage)? StageAhead => Step.Work.Count > 0 ? null : (
        from step in Placed.Steps
        where Placed.Before(step).Contains(Step)
        from work in step.Work
        from number in work.Stages
        let stage = work.Instance.Group.Stages[number - 1]
        where stage.Conditions.Count > 0
        select ((GroupInstance, Stage)?)(work.Instance, stage)).FirstOrDefault();

    /// <summary>True once anything of this step's groups was pulled: the work is under way.</summary>
    public bool IsUnderWay => Step.Work.Any(work => work.Instance.Positions.Any(position =>
        State.Of(position).Pulls.Any(pull => work.Stages.Contains(pull.Fact.Stage))));

    /// <summary>
    /// The stage whose picture stands on the screen: that of the next pull or look, else the first not done, else the last. A step
    /// that only runs a group down by hand shows the order of its first stage.
    /// </summary>
    public Stage? ShownStage => Shown is not { } work ? null : Next switch
    {
        NextAction.PullNow { Cell: var cell } when cell.Instance == work.Instance => cell.Stage,
        NextAction.Look look when look.Instance == work.Instance => look.Stage,
        _ => work.Stages.DefaultIfEmpty(1).Select(number => work.Instance.Group.Stages[number - 1]) is var stages
            ? stages.FirstOrDefault(stage => work.Instance.Positions.Any(position => !State.IsDone(State.Of(position), stage.Number))) ?? stages.Last()
            : null,
    };

    /// <summary>The group instance an action is about; null where it is about none.</summary>
    public static GroupInstance? InstanceOf(NextAction action) => action switch
    {
        NextAction.Fit fit => fit.Instance,
        NextAction.Prepare prepare => prepare.Instance,
        NextAction.ByHand hand => hand.Instance,
        NextAction.PullNow pull => pull.Cell.Instance,
        NextAction.TakeOff off => off.Instance,
        NextAction.Look look => look.Instance,
        NextAction.Countersign countersign => countersign.Instance,
        _ => null,
    };
}
