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

    /// <summary>Whether its sign-off stands.</summary>
    public StepStanding Standing => State.StandingOf(Job, Placed, Step);

    /// <summary>Why its work should not start yet.</summary>
    public IReadOnlyList<HoldPoint> Gate => Reading.HoldsBeforeStart(Job, Step);

    /// <summary>The one thing to do next.</summary>
    public NextAction Next => State.NextOn(Step);

    /// <summary>The newest sign-off, standing or not.</summary>
    public SignOff? SignOff => Job.SignOffs.GetValueOrDefault(Step.Id);

    /// <summary>Positions of this step that are held and not decided.</summary>
    public IReadOnlyList<PositionBook> Held =>
    [
        .. Step.Work.SelectMany(work => work.Instance.Positions).Distinct().Select(State.Of)
            .Where(book => book.Holds.Any(hold => hold.Decision is null)),
    ];

    /// <summary>A person's name as it is now.</summary>
    public string NameOf(PersonId person) => Names.GetValueOrDefault(person, "somebody");

    /// <summary>What the group's name and place are called on this step.</summary>
    public static string NameOf(GroupInstance instance) => $"{instance.Group.Name} {instance.Place}";

    /// <summary>The group whose picture stands on the screen: that of the next action, else the first lasting one.</summary>
    public GroupWork? Shown
    {
        get
        {
            var instance = InstanceOf(Next);
            return Step.Work.FirstOrDefault(work => work.Instance == instance)
                ?? Step.Work.FirstOrDefault(work => !work.Instance.Group.Temporary)
                ?? (Step.Work.Count > 0 ? Step.Work[0] : null);
        }
    }

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
        NextAction.ByHand hand => hand.Instance,
        NextAction.PullNow pull => pull.Cell.Instance,
        NextAction.TakeOff off => off.Instance,
        NextAction.Look look => look.Instance,
        _ => null,
    };
}
