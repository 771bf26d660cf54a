using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Releases;

/// <summary>A joint whose re-torque after the drive is due.</summary>
/// <param name="Instance">The group that is in force on it.</param>
/// <param name="Order">Its fasteners in the order of the final stage's pattern.</param>
/// <param name="Due">Those that are still due.</param>
public sealed record DueJoint(JobId Job, GroupInstance Instance, IReadOnlyList<JointPosition> Order, IReadOnlyList<JointPosition> Due)
{
    public Joint Joint => Instance.Joint;

    /// <summary>Every due joint of a car.</summary>
    public static IReadOnlyList<DueJoint> Of(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return
        [
            .. from book in reading.State.Positions.Values
               where reading.StateOf(book.Position) == PositionState.Due
               let made = book.Last!.Fact
               let instance = reading.Placed(reading.State.Jobs[made.Job]).Group(made.Group, book.Position.Place)
               where instance is not null
               group book.Position by (made.Job, instance) into joint
               orderby joint.Key.instance.Joint.Key, joint.Key.instance.Place
               let order = joint.Key.instance.Group.Final.Visits.Distinct().Select(joint.Key.instance.Joint.At).ToList()
               select new DueJoint(joint.Key.Job, joint.Key.instance, order, [.. order.Where(joint.Contains)]),
        ];
    }
}
