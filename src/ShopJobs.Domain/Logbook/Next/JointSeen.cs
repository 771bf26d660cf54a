using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One fastener of a joint as it is drawn.</summary>
/// <param name="Stage">Stages done, counted from the first.</param>
/// <param name="Stages">Stages in all; 0 where nothing was pulled.</param>
/// <param name="AwaitsWitness">A stage is done that asks for a witness, and nobody has looked.</param>
public readonly record struct FastenerSeen(int Number, PositionState State, int Stage, int Stages, bool AwaitsWitness);

/// <summary>One joint of a car with the state of each of its fasteners: what a drawing or a list of the car needs, and no more.</summary>
/// <param name="Name">What people call its kind, such as "wheel nut".</param>
/// <param name="System">Part of the car, such as "brakes"; empty where the register knows the kind no more.</param>
public sealed record JointSeen(Joint Joint, string Name, string System, IReadOnlyList<FastenerSeen> Fasteners)
{
    /// <summary>True while nobody here has touched any of it.</summary>
    public bool IsAsFound => Fasteners.All(fastener => fastener.State == PositionState.AsFound);

    /// <summary>The fastener that it shows: the worst of those that somebody here has touched; where nobody has, any.</summary>
    public FastenerSeen Shown => Fasteners.Where(fastener => fastener.State != PositionState.AsFound).DefaultIfEmpty(Fasteners[0]).MinBy(fastener => fastener.State);
}

/// <summary>Looks over every joint of a car.</summary>
public static class JointsSeen
{
    /// <summary>Every lasting joint of the car in the register's order, and temporary hardware that is on it or held.</summary>
    public static IReadOnlyList<JointSeen> Of(CarState state, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return Of(state, now, state.Glances(now));
    }

    internal static IReadOnlyList<JointSeen> Of(CarState state, Circumstances now, IEnumerable<PositionGlance> glances) =>
    [
        .. glances.Union(TemporaryOn(state, now)).GroupBy(glance => glance.Position.Joint).Select(joint => new JointSeen(
            joint.Key,
            now.Register.NameOf(joint.Key.Key),
            now.KindOf(state, joint.Key.Key)?.System ?? "",
            [.. joint.OrderBy(glance => glance.Position.Number).Select(glance => Seen(state, glance))])),
    ];

    private static FastenerSeen Seen(CarState state, PositionGlance glance)
    {
        var (done, of) = state.StagesOf(state.Of(glance.Position));
        return new FastenerSeen(glance.Position.Number, glance.State, done, of, glance.AwaitsWitness);
    }

    private static IEnumerable<PositionGlance> TemporaryOn(CarState state, Circumstances now) => state.Positions.Values
        .Where(book => book.Holds.IsEmpty && state.IsOn(book.Position) && now.KindOf(state, book.Position.Key) is { Temporary: true })
        .Select(book => new PositionGlance(book.Position, state.StateOf(book.Position, now.Tool), false, book.Since));
}
