using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Floor;

namespace ShopJobs.Web.Components.OpenJoints;

/// <summary>Fasteners of one joint that are not at torque for the same reason.</summary>
/// <param name="Since">The oldest of them; null where nobody knows.</param>
public sealed record OpenJointLine(FloorCar Car, Joint Joint, GlanceCount Kind, PositionState State, IReadOnlyList<int> Numbers, DateTime? Since)
{
    /// <summary>What is shown here: everything between as found and at torque.</summary>
    public static IReadOnlyList<GlanceCount> Kinds { get; } =
        [GlanceCount.Held, GlanceCount.Doubted, GlanceCount.Open, GlanceCount.NotFitted, GlanceCount.HandTight, GlanceCount.Staged, GlanceCount.ToWitness];

    /// <summary>Over these cars, oldest first.</summary>
    public static IReadOnlyList<OpenJointLine> Of(IEnumerable<FloorCar> cars)
    {
        ArgumentNullException.ThrowIfNull(cars);
        return
        [
            .. from car in cars
               from glance in car.Reading.State.Glances(car.Reading.Now)
               where Kinds.Contains(glance.CountedAs)
               group glance by (car, glance.Position.Joint, glance.CountedAs, glance.State) into same
               let since = same.Min(glance => glance.Since)
               orderby since, same.Key.car.Car.Name, same.Key.CountedAs
               select new OpenJointLine(
                   same.Key.car, same.Key.Joint, same.Key.CountedAs, same.Key.State,
                   [.. same.Select(glance => glance.Position.Number).Order()], since),
        ];
    }
}
