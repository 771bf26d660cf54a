using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Above;

/// <summary>All joints of one area of the car as one mark: the worst fastener that somebody here has touched.</summary>
/// <param name="Count">How many fasteners of the area are so.</param>
/// <param name="X">Middle of the mark in the drawing of <see cref="CarPlan"/>.</param>
/// <param name="Y">Middle of the mark.</param>
public readonly record struct AreaSeen(CarArea Area, FastenerSeen Shown, int Count, double X, double Y)
{
    private static readonly Dictionary<CarArea, (double X, double Y)> Middles = new()
    {
        [CarArea.FrontLeft] = (142, 150),
        [CarArea.FrontRight] = (318, 150),
        [CarArea.RearLeft] = (142, 490),
        [CarArea.RearRight] = (318, 490),
        [CarArea.Front] = (230, 46),
        [CarArea.Engine] = (230, 140),
        [CarArea.Driveline] = (230, 250),
        [CarArea.Driver] = (230, 360),
        [CarArea.Rear] = (230, 566),
    };

    /// <summary>True while nobody here has touched anything in this area.</summary>
    public bool IsAsFound => Shown.State == PositionState.AsFound;

    /// <summary>The areas that the car has joints in, drawn from the nose back.</summary>
    public static IReadOnlyList<AreaSeen> Of(IReadOnlyList<JointSeen> joints)
    {
        ArgumentNullException.ThrowIfNull(joints);
        return
        [
            .. from joint in joints
               let area = CarAreas.Of(joint.Joint.Place)
               where area is not null
               group joint by area.Value into there
               orderby there.Key
               let shown = there.Select(joint => joint.Shown).OrderBy(fastener => fastener.State == PositionState.AsFound).ThenBy(fastener => fastener.State).First()
               select new AreaSeen(
                   there.Key,
                   shown,
                   there.Sum(joint => joint.Fasteners.Count(fastener => fastener.State == shown.State)),
                   Middles[there.Key].X,
                   Middles[there.Key].Y),
        ];
    }
}
