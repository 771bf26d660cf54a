using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Parts;

/// <summary>The nut that comes with a kit. A null value means that the maker does not state it.</summary>
public sealed record KitNut
{
    /// <summary>Its face on the wheel.</summary>
    public Stated<SeatForm>? Seat { get; init; }

    /// <summary>Full thread in it.</summary>
    public Stated<Length>? Thread { get; init; }

    /// <summary>Open, or closed at a depth.</summary>
    public Stated<NutEnd>? End { get; init; }

    /// <summary>Its class by ISO 898-2.</summary>
    public Stated<NutClass>? Class { get; init; }
}

/// <summary>The far end of a nut.</summary>
/// <param name="ClosedDepth">Depth from the start of its thread to its bottom; null for an open nut.</param>
public readonly record struct NutEnd(Length? ClosedDepth)
{
    /// <summary>"open", or for example "closed, 24 mm deep".</summary>
    public override string ToString() => ClosedDepth is { } depth
        ? FormattableString.Invariant($"closed, {depth.Millimeters:0.##} mm deep")
        : "open";
}
