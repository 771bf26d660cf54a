using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Parts;

/// <summary>The joint that an option would fill: what the job's procedure asks of it, how many pieces, and what it goes through.</summary>
/// <param name="Asked">What the procedure asks of one fastener at its final stage.</param>
/// <param name="Count">Fasteners on this job, 0 or more.</param>
/// <param name="OnWheel">True where it goes through a wheel, so that the car's wheel stacks decide the length.</param>
/// <param name="Stacks">The car's wheel stacks; empty where none was measured.</param>
public sealed record JointToFill(TorqueSpecification Asked, int Count, bool OnWheel, IReadOnlyList<WheelStack> Stacks)
{
    private const string Wheels = "wheels";

    /// <summary>True where the torque is only the start and an angle is turned on from it: then it does not tell the clamp load.</summary>
    public bool TurnedOn { get; init; }

    /// <summary>A group of a procedure as it is placed by a job, on a car with these wheel stacks.</summary>
    public static JointToFill Of(PlacedProcedure placed, JointGroup group, IReadOnlyList<WheelStack> stacks)
    {
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(group);
        return new JointToFill(
            group.Specification(),
            placed.Groups.Where(instance => instance.Group.Id == group.Id).Sum(instance => instance.Count),
            placed.Register.Kinds[group.Key].System == Wheels,
            stacks)
        {
            TurnedOn = group.IsTurned,
        };
    }
}
