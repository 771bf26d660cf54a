using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Above;

/// <summary>One fastener at its place in the drawing.</summary>
/// <param name="X">Middle, from the left of the drawing.</param>
/// <param name="Y">Middle, from the car's nose.</param>
/// <param name="Room">Edge of the square that it has for itself.</param>
public readonly record struct PlanPoint(JointSeen Joint, FastenerSeen Fastener, double X, double Y, double Room);

/// <summary>
/// Every joint of a car at its place in the drawing: a pure function of where the register says it is. A joint of the system "wheels" at
/// a corner lies in a ring on its wheel, which is drawn laid flat beside the car; every other joint of a corner beside its wheel. What is
/// along the middle stands in the order front, engine, driveline, driver, rear, each with its word, since the word does not say where in
/// this car they are: on which side the driver sits is not known, so the seat is drawn in the middle.
/// </summary>
/// <param name="Points">Every fastener that is drawn.</param>
/// <param name="Elsewhere">Joints at places whose word says nothing of where on a car it is: they are listed.</param>
public sealed record CarPlan(IReadOnlyList<PlanPoint> Points, IReadOnlyList<JointSeen> Elsewhere)
{
    /// <summary>Width of the drawing, nose up.</summary>
    public const double Width = 460;

    /// <summary>Height of the drawing.</summary>
    public const double Height = 620;

    /// <summary>Radius of a wheel that is laid flat.</summary>
    public const double WheelRadius = 44;

    private const string Wheels = "wheels";
    private const double InnerRing = 14;
    private const double OuterRing = 31;
    private const double RingRoom = 18;

    private static readonly Dictionary<CarArea, PlanBox> Boxes = new()
    {
        [CarArea.FrontLeft] = new(119, 92, 66, 108, PlanSide.Left),
        [CarArea.FrontRight] = new(275, 92, 66, 108, PlanSide.Right),
        [CarArea.RearLeft] = new(119, 440, 66, 108, PlanSide.Left),
        [CarArea.RearRight] = new(275, 440, 66, 108, PlanSide.Right),
        [CarArea.Front] = new(190, 46, 80, 14, PlanSide.Middle),
        [CarArea.Engine] = new(190, 92, 80, 56, PlanSide.Middle),
        [CarArea.Driveline] = new(190, 180, 80, 96, PlanSide.Middle),
        [CarArea.Driver] = new(190, 320, 80, 60, PlanSide.Middle),
        [CarArea.Rear] = new(190, 566, 80, 14, PlanSide.Middle),
    };

    /// <summary>The areas along the middle that this car has joints in, with where their word stands.</summary>
    public IEnumerable<(CarArea Area, double X, double Y)> Labels => Points.Select(point => CarAreas.Of(point.Joint.Joint.Place)!.Value).Distinct()
        .Where(area => !area.IsCorner()).Select(area => (area, Boxes[area].Left + (Boxes[area].Width / 2), Boxes[area].Top - 6));

    /// <summary>Places the joints.</summary>
    public static CarPlan Of(IReadOnlyList<JointSeen> joints)
    {
        ArgumentNullException.ThrowIfNull(joints);
        var areas = joints.ToLookup(joint => CarAreas.Of(joint.Joint.Place));
        return new CarPlan(
            [.. Enum.GetValues<CarArea>().SelectMany(area => PointsIn(area, [.. areas[area]]))],
            [.. areas[null]]);
    }

    /// <summary>Middle of the wheel of a corner.</summary>
    public static (double X, double Y) WheelAt(CarArea corner) => (
        corner is CarArea.FrontLeft or CarArea.RearLeft ? WheelRadius + 2 : Width - WheelRadius - 2,
        corner is CarArea.FrontLeft or CarArea.FrontRight ? 136 : 484);

    private static IEnumerable<PlanPoint> PointsIn(CarArea area, List<JointSeen> joints)
    {
        var onWheel = area.IsCorner() ? joints.Where(joint => joint.System == Wheels).Take(2).ToList() : [];
        var rings = onWheel.Zip(onWheel.Count == 1 ? [OuterRing] : new[] { InnerRing, OuterRing });
        return [.. rings.SelectMany(ring => Ring(ring.First, WheelAt(area), ring.Second)), .. Boxes[area].Fill([.. joints.Except(onWheel)])];
    }

    // As the steps draw it: the first at the top, then clockwise; four stand on the diagonals, the first at the top left.
    private static IEnumerable<PlanPoint> Ring(JointSeen joint, (double X, double Y) middle, double radius)
    {
        var count = joint.Fasteners.Count;
        var turn = count == 4 ? -Math.PI / 4 : 0;
        var room = Math.Min(radius == InnerRing ? RingRoom * 3 / 4 : RingRoom, 2 * Math.PI * radius / count);
        return joint.Fasteners.Select((fastener, index) =>
        {
            var angle = (2 * Math.PI * index / count) + turn;
            return new PlanPoint(joint, fastener, middle.X + (radius * Math.Sin(angle)), middle.Y - (radius * Math.Cos(angle)), room);
        });
    }
}
