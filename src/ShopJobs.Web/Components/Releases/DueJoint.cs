using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Releases;

/// <summary>A joint whose re-torque after the drive is due.</summary>
/// <param name="Instance">The group that is in force on it.</param>
/// <param name="Order">Its fasteners in the order of the final stage's pattern.</param>
/// <param name="Due">Those that are still due and may be re-torqued.</param>
/// <param name="Stopped">Those that owe it and are held or in doubt: decided first.</param>
public sealed record DueJoint(
    JobId Job, GroupInstance Instance, IReadOnlyList<JointPosition> Order, IReadOnlyList<JointPosition> Due, IReadOnlyList<JointPosition> Stopped)
{
    public Joint Joint => Instance.Joint;

    /// <summary>True where a fastener may be re-torqued now: driven far enough by the odometer as it was last read, or at its last day.</summary>
    public bool IsRipe(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Due.Any(position => reading.State.Of(position) is var book
            && (!reading.State.IsBelowItsDistance(book, reading.State.Odometer) || reading.State.IsAtItsLastDay(reading.Now, book)));
    }

    /// <summary>The car's condition at the last stage: at the re-torque it is so again.</summary>
    public IReadOnlyList<CarCondition> Conditions => Instance.Group.Final.Conditions;

    /// <summary>What is said of it and still good, the one or the other way; null where nothing is.</summary>
    public DeclaredCondition? SaidOf(CarReading reading, CarCondition asked)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.State.LastSaid(reading.Now, asked.Aspect, Instance.Place) is { } said && !reading.State.HasEnded(reading.Now, said) ? said : null;
    }

    /// <summary>Every due joint of a car, those too on which it waits for a decision.</summary>
    public static IReadOnlyList<DueJoint> Of(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return
        [
            .. from book in reading.State.Positions.Values
               let shown = reading.StateOf(book.Position)
               where shown == PositionState.Due || (shown is PositionState.Doubted or PositionState.Held && Owes(reading.State, book))
               let made = book.Last!.Fact
               let instance = reading.Placed(reading.State.Jobs[made.Job]).Group(made.Group, book.Position.Place)
               where instance is not null
               group (book.Position, IsDue: shown == PositionState.Due) by (made.Job, instance) into joint
               orderby joint.Key.instance.Joint.Key, joint.Key.instance.Place
               let order = joint.Key.instance.Group.Final.Visits.Distinct().Select(joint.Key.instance.Joint.At).ToList()
               select new DueJoint(
                   joint.Key.Job, joint.Key.instance, order,
                   [.. order.Where(position => joint.Contains((position, true)))],
                   [.. order.Where(position => joint.Contains((position, false)))]),
        ];
    }

    private static bool Owes(CarState state, PositionBook book) =>
        book is { IsSettled: false, Last.Fact.Spec.ReTorque.IsAsked: true } && state.DrivenSince(book.Last.Number);
}
