using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// A torque at which something computed is reached. It rests on assumed friction: drawn beside the room for a target and said as a
/// caution, it never empties that room nor moves a stated number.
/// </summary>
/// <param name="Name">What is reached, such as "proof load".</param>
/// <param name="Earliest">Torque delivered at which it may be reached first: at the friction that reaches it soonest.</param>
/// <param name="Latest">Torque delivered at which it is reached last.</param>
/// <param name="Sentence">The limit in one sentence with its figures.</param>
public sealed record ComputedLimit(string Name, Torque Earliest, Torque Latest, string Sentence)
{
    /// <summary>
    /// True when a torque, set with a tool that may deliver <paramref name="deviationPercent"/> too much, may reach the limit.
    /// </summary>
    public bool MayBeReachedBy(EnteredTorque torque, decimal deviationPercent) =>
        torque.ToTorque().NewtonMeters * (1 + ((double)deviationPercent / 100)) > Earliest.NewtonMeters;
}
