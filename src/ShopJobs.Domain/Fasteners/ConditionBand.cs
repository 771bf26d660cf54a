namespace ShopJobs.Domain.Fasteners;

/// <summary>One torque in several conditions of the threads, side by side: what oil or locker does to the clamp load.</summary>
/// <param name="Condition">Condition of threads and faces.</param>
/// <param name="Friction">Friction reckoned with; the maker's own for the stated condition where the maker gives one.</param>
/// <param name="Band">The band, or why it is not computed.</param>
public sealed record ConditionBand(ThreadCondition Condition, FrictionBand Friction, ClampBand Band)
{
    /// <summary>The stated condition first, then the others asked for.</summary>
    public static IReadOnlyList<ConditionBand> Of(
        TorqueSpecification specification, EnteredTorque torque, params IReadOnlyList<ThreadCondition> others)
    {
        ArgumentNullException.ThrowIfNull(specification);
        var stated = specification.Condition;
        return [.. (stated is { } own ? [own, .. others.Where(c => c != own)] : others)
            .Select(condition => condition == stated ? specification : specification with { Condition = condition, StatedFriction = null })
            .Select(s => new ConditionBand(s.Condition!.Value, s.Friction!, s.BandAt(torque)))];
    }
}
