using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// How the clamp load of one torque stands to what the joint bears: the band in the stated condition and in others, and the loads
/// at which something gives. Everything rests on assumed friction: it is drawn and said, and moves no stated number.
/// </summary>
/// <param name="Torque">The torque set.</param>
/// <param name="Rows">The stated condition first, then the others asked for; empty where no friction is known.</param>
/// <param name="Limits">Loads that are the same whatever the condition: proof load, bearing pressure, stripping; those that can be computed.</param>
public sealed record ClampStanding(EnteredTorque Torque, IReadOnlyList<ClampRow> Rows, IReadOnlyList<ClampLimit> Limits)
{
    /// <summary>The part that limits the torque where it is not the bolt; null where nothing is stated.</summary>
    public string? LimitedBy { get; init; }

    /// <summary>Standing of a torque on a joint, in its own condition and in <paramref name="others"/>.</summary>
    public static ClampStanding Of(TorqueSpecification specification, EnteredTorque torque, params IReadOnlyList<ThreadCondition> others)
    {
        ArgumentNullException.ThrowIfNull(specification);
        var bands = ConditionBand.Of(specification, torque, others)
            .Select(row => Row(specification, row.Condition, row.Friction, row.Band));
        return new ClampStanding(
            torque,
            specification is { Condition: null, StatedFriction: { } stated }
                ? [Row(specification, null, stated, specification.BandAt(torque)), .. bands]
                : [.. bands],
            [.. LimitsOf(specification)])
        {
            LimitedBy = specification.LimitedBy,
        };
    }

    private static ClampRow Row(TorqueSpecification s, ThreadCondition? condition, FrictionBand friction, ClampBand band) => new(
        condition,
        friction,
        band,
        s.Permitted is { IsOneValue: false } permitted
            && (s with { Condition = null, StatedFriction = friction }) is var alike
            && alike.BandAt(permitted.Minimum) is ClampBand.Computed least
            && alike.BandAt(permitted.Maximum) is ClampBand.Computed greatest
                ? (least.Minimum, greatest.Maximum)
                : null,
        s.Class?.YieldLoad(s.Thread) is not null && s.Class.YieldStress(s.Thread.NominalDiameter) is { } yield
            ? ClampLoad.AtYieldUtilisation(s.Thread, yield, friction.Low, 1)
            : null);

    private static IEnumerable<ClampLimit> LimitsOf(TorqueSpecification s)
    {
        if (s.Class?.ProofLoad(s.Thread) is { } proof)
        {
            yield return new ClampLimit(ClampLimitKind.Proof, proof);
        }

        if (s is { Seat: FlatSeat seat, BearingLimit: { } pressure })
        {
            yield return new ClampLimit(ClampLimitKind.Bearing, BearingPressure.LoadAt(seat, pressure));
        }

        if (s is { Engaged: { } engaged, PartTensile: { } part, BoltTensile: { } bolt }
            && Engagement.Loads(s.Thread, engaged, bolt, part) is { } loads)
        {
            yield return new ClampLimit(ClampLimitKind.Stripping, loads.Strips);
        }
    }
}

/// <summary>One condition of a <see cref="ClampStanding"/>.</summary>
/// <param name="Condition">Condition of threads and faces; null where a friction is stated without one.</param>
/// <param name="Friction">Friction reckoned with.</param>
/// <param name="Band">The band, or why it is not computed.</param>
/// <param name="Permitted">
/// Clamp load from the least to the greatest permitted torque, with the same tool and friction; null where one value is stated.
/// </param>
/// <param name="Yield">
/// Clamp load at which tension and torsion together reach yield at the least friction, where the top of the band lies; null where
/// the class has no yield for the thread.
/// </param>
public sealed record ClampRow(
    ThreadCondition? Condition, FrictionBand Friction, ClampBand Band, (Force Least, Force Greatest)? Permitted, Force? Yield);

/// <summary>A clamp load at which something of the joint gives.</summary>
public readonly record struct ClampLimit(ClampLimitKind Kind, Force Load);

/// <summary>What gives at a <see cref="ClampLimit"/>.</summary>
public enum ClampLimitKind
{
    /// <summary>Proof load of the bolt: above it the bolt may stretch for good.</summary>
    Proof,

    /// <summary>Pressure that the face under the turned part bears.</summary>
    Bearing,

    /// <summary>The weaker of the two threads strips.</summary>
    Stripping,
}
