using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Fewer joints that the lead asked for, and that wait for a second person who looked.</summary>
public sealed record FewerAsked(long Number, DateTime At, PersonId Person, FewerJointsAsked Fact);

// Which joints the car has, as far as the register alone does not say.
public sealed partial record CarState
{
    /// <summary>The list of joints that the car follows, and its own counts.</summary>
    public JointList Joints { get; init; } = JointList.OfTheRegister;

    /// <summary>Newest entry that changed the list; 0 while none did.</summary>
    public long JointsBy { get; init; }

    /// <summary>What the lead asked to take away, by entry; it changes nothing yet.</summary>
    public ImmutableSortedDictionary<long, FewerAsked> FewerAsked { get; init; } = ImmutableSortedDictionary<long, FewerAsked>.Empty;

    private CarState WithJoints(Recorded recorded, JointListChanged fact) => (this with
    {
        Joints = Joints.With(fact.Follows, fact.Counts),
        JointsBy = recorded.Number,
        FewerAsked = fact.Asked is { } asked ? FewerAsked.Remove(asked) : FewerAsked,
    }).SuspendReleases(recorded.Number);

    private CarState WithFewerAsked(Recorded recorded, FewerJointsAsked fact) => this with
    {
        FewerAsked = FewerAsked.Add(recorded.Number, new FewerAsked(recorded.Number, recorded.At, recorded.Person, fact)),
    };
}
