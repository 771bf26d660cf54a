using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Tools;

/// <summary>
/// The steps in which a torque wrench can be set: its marks are the multiples of <see cref="Size"/>, in the wrench's own unit.
/// What is offered for setting is one of them; what it stands for is said beside it.
/// </summary>
public readonly record struct WrenchStep
{
    /// <summary>Refuses a step that is not above zero.</summary>
    public WrenchStep(EnteredTorque size)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(size.Value, nameof(size));
        Size = size;
    }

    /// <summary>Torque from one mark to the next, above zero.</summary>
    public EnteredTorque Size { get; }

    /// <summary>The mark nearest to a torque, the higher of two that are as near; not below the first mark above zero.</summary>
    public EnteredTorque Nearest(EnteredTorque torque) =>
        Size with { Value = Math.Max(1, Math.Round(torque.NewtonMetres / Size.NewtonMetres, MidpointRounding.AwayFromZero)) * Size.Value };

    /// <summary>True where a torque is one of the marks, to a millionth of a step: units do not divide evenly into each other.</summary>
    public bool IsMark(EnteredTorque torque) => Math.Abs(Nearest(torque).NewtonMetres - torque.NewtonMetres) <= Size.NewtonMetres / 1_000_000;

    /// <summary>For example "steps of 1 N·m".</summary>
    public override string ToString() => $"steps of {Size}";
}
