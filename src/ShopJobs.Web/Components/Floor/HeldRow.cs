using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Floor;

/// <summary>Fasteners of one joint that are held for the same reason.</summary>
/// <param name="Why">The reason in words.</param>
/// <param name="Act">What is to be done with them.</param>
/// <param name="Since">The oldest of them.</param>
public sealed record HeldRow(
    FloorCar Car, IReadOnlyList<JointPosition> Positions, PositionState State, string Why, string Act, DateTime? Since)
{
    /// <summary>Over these cars, oldest first.</summary>
    public static List<HeldRow> Of(IEnumerable<FloorCar> cars) =>
    [
        .. from car in cars
           from glance in car.Glance.Held
           let hold = car.Reading.State.Of(glance.Position).Holds.FirstOrDefault()
           group glance by (car, glance.Position.Joint, glance.State, Why: HoldWords.Of(hold?.Reason ?? HoldReason.ToolInDoubt), Act: ActOn(hold)) into same
           let since = same.Min(glance => glance.Since)
           orderby since
           select new HeldRow(
               same.Key.car, [.. same.Select(glance => glance.Position).OrderBy(position => position.Number)],
               same.Key.State, same.Key.Why, same.Key.Act, since),
    ];

    private static string ActOn(Hold? hold) => hold?.Decision switch
    {
        null => "Decide",
        Disposition.Replace => "To be replaced",
        _ => "To be reworked",
    };
}
