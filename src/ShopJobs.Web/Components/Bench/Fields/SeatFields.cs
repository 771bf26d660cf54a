using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>The inputs that make a seat: its kind, and the measures that its kind asks.</summary>
public sealed class SeatFields
{
    private readonly ThreadField thread;
    private readonly ChoiceField<SeatKind> kind = new("seat", "Face under the head or nut",
    [
        new("hexagon", "plain hexagon on a usual hole (ISO)", SeatKind.Hexagon),
        new("flat", "flat, measured", SeatKind.Flat),
        new("cone", "cone", SeatKind.Cone),
        new("ball", "ball", SeatKind.Ball),
    ])
    {
        Example = "hexagon",
    };

    private readonly LengthField head;
    private readonly LengthField hole;
    private readonly NumberField angle;
    private readonly LengthField mean;
    private readonly LengthField radius;

    public SeatFields(ThreadField thread)
    {
        this.thread = thread;
        head = new("head", "Outer diameter of the face") { Example = "19", IsAsked = Is(SeatKind.Flat) };
        hole = new("hole", "Diameter of the hole") { Example = "13.5", IsAsked = Is(SeatKind.Flat) };
        angle = new("cone-angle", "Whole angle of the cone", "°", 30, 170)
        {
            Example = "60",
            Hint = "Wheel nuts are commonly 60°: measure, or read it on the part's drawing.",
            IsAsked = Is(SeatKind.Cone),
        };
        mean = new("ring", "Mean diameter of the contact ring")
        {
            Example = "18",
            Hint = "Measured on the mark that the nut leaves.",
            IsAsked = inputs => Is(SeatKind.Cone)(inputs) || Is(SeatKind.Ball)(inputs),
        };
        radius = new("ball-radius", "Radius of the ball") { Example = "14", IsAsked = Is(SeatKind.Ball) };
        All = [kind, head, hole, angle, mean, radius];
    }

    private enum SeatKind
    {
        Hexagon,
        Flat,
        Cone,
        Ball,
    }

    /// <summary>The inputs in their order.</summary>
    public IReadOnlyList<BenchField> All { get; }

    /// <summary>What the measures say together that cannot be.</summary>
    public IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        switch (kind.Read(inputs))
        {
            case SeatKind.Hexagon when HexagonFace.On(thread.Read(inputs)) is null:
                yield return new(kind, $"No plain hexagon is tabled for {thread.Read(inputs)}, only for metric threads M3 to M39: pick “flat, measured” and write its diameters.");
                break;
            case SeatKind.Flat when head.Read(inputs) <= hole.Read(inputs):
                yield return new(head, "The face must be wider than its hole: measure both again.");
                break;
            case SeatKind.Ball when mean.Read(inputs) >= radius.Read(inputs) * 2:
                yield return new(mean, "The ring must be narrower than twice the radius of the ball: measure both again.");
                break;
        }
    }

    /// <summary>The seat.</summary>
    public Seat Read(BenchInputs inputs) => kind.Read(inputs) switch
    {
        SeatKind.Hexagon => HexagonFace.On(thread.Read(inputs))!,
        SeatKind.Flat => new FlatSeat(head.Read(inputs), hole.Read(inputs)),
        SeatKind.Cone => new ConeSeat(Angle.FromDegrees((double)angle.Read(inputs)), mean.Read(inputs)),
        _ => new BallSeat(radius.Read(inputs), mean.Read(inputs)),
    };

    private Func<BenchInputs, bool> Is(SeatKind asked) => inputs => kind.ProblemOf(inputs) is null && kind.Read(inputs) == asked;
}
