using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Parts;

/// <summary>Everything worked out for one option on one joint, each figure by the code that computes it elsewhere too.</summary>
internal sealed record OptionFigures(PartOption Option, JointToFill Joint)
{
    /// <summary>The torque reckoned with; null where the maker states none.</summary>
    public ReckonedTorque? Torque { get; } = ReckonedTorque.For(Option, Joint.Asked);

    /// <summary>What the option asks of the joint, as a specification; null where its thread is not stated.</summary>
    public TorqueSpecification? Specification => Option.Thread?.Value is not { } thread
        ? null
        : Joint.Asked with
        {
            Thread = thread,
            Class = Option.Strength?.Value.Class,
            ClassIsEquivalent = Option.Strength?.Value.Evidence == StrengthEvidence.SaidOnly,
            Seat = SeatFails || Joint.TurnedOn ? null : Joint.Asked.Seat,
            Condition = Option.Condition?.Value ?? Joint.Asked.Condition,
            Permitted = Option.Torque?.Value,
            Target = Torque?.Torque,
            Jam = Option.Jam?.Value,
        };

    /// <summary>The band of clamp load at the torque reckoned with.</summary>
    public ClampBand Band => Specification is not { } specification ? new ClampBand.NotComputed("the thread is not stated")
        : Joint.TurnedOn ? new ClampBand.NotComputed("an angle is turned on from the torque, so the torque does not tell the clamp load")
        : Torque is null ? new ClampBand.NotComputed("no torque is stated")
        : SeatFails ? new ClampBand.NotComputed("its seat does not match, and the torque of one seat is never carried over to another")
        : specification.BandAt(Torque.Torque);

    /// <summary>Proof load by ISO 898-1; null where class or thread is not stated or the class has no value for it.</summary>
    public Force? ProofLoad => Option is { Thread.Value: { } thread, Strength.Value.Class: { } strength } ? strength.ProofLoad(thread) : null;

    /// <summary>True where the face under it is stated and is another than the joint's.</summary>
    public bool SeatFails => Option.Seat is { } seat && Joint.Asked.Seat is { } asked && seat.Value != SeatForm.Of(asked);

    /// <summary>The option on each wheel stack; empty for a joint that is not on a wheel.</summary>
    public IReadOnlyList<StackFigures> Stacks { get; } = Joint.OnWheel ? [.. Joint.Stacks.Select(stack => StackFigures.Of(Option, stack))] : [];

    /// <summary>Kits that this job needs; null where the pieces are not stated.</summary>
    public int? Kits => Option.Pieces is { Value: > 0 and var pieces } ? (Joint.Count + pieces - 1) / pieces : null;
}
