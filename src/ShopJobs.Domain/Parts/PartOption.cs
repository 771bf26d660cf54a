using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Parts;

/// <summary>
/// One part or kit that could fill a joint, with what its maker states. A null value means that the maker does not state it.
/// </summary>
public sealed record PartOption
{
    /// <summary>Its id.</summary>
    public required PartOptionId Id { get; init; }

    /// <summary>What it is called, such as "Q4".</summary>
    public required string Name { get; init; }

    /// <summary>Who makes it.</summary>
    public required string Maker { get; init; }

    /// <summary>Thread of the bolt or stud.</summary>
    public Stated<ThreadSize>? Thread { get; init; }

    /// <summary>Strength class, and its evidence.</summary>
    public Stated<StrengthClaim>? Strength { get; init; }

    /// <summary>Length from the face under head or shoulder to the end, chamfer taken off.</summary>
    public Stated<Length>? Length { get; init; }

    /// <summary>Face under the head, or under the shoulder of a stud.</summary>
    public Stated<SeatForm>? Seat { get; init; }

    /// <summary>Torque that its instruction permits, or its one value.</summary>
    public Stated<TorqueRange>? Torque { get; init; }

    /// <summary>Torque with which two nuts are jammed to drive it.</summary>
    public Stated<EnteredTorque>? Jam { get; init; }

    /// <summary>Condition of threads and faces that the torque assumes.</summary>
    public Stated<ThreadCondition>? Condition { get; init; }

    /// <summary>The nut that comes in the kit; null where none does and the car's own is used.</summary>
    public KitNut? Nut { get; init; }

    /// <summary>Pieces in one kit.</summary>
    public Stated<int>? Pieces { get; init; }

    /// <summary>Price of one kit.</summary>
    public Stated<Price>? Price { get; init; }

    /// <summary>Maker and name, for example "Quillon Q4".</summary>
    public override string ToString() => $"{Maker} {Name}";
}
