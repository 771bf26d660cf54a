using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// What lies on a wheel stud, from the seat under its head outward: hub flange, disc hat, spacer, wheel pad, washer, nut. Lengths
/// along the stud, none below zero. Own arithmetic; the rules it is judged by are in <see cref="WheelStudFit"/>.
/// </summary>
public sealed record WheelStudStack
{
    /// <summary>Thread of the stud.</summary>
    public required ThreadSize Thread { get; init; }

    /// <summary>Stud length from the seat under the head to its end, chamfer taken off.</summary>
    public required Length Stud { get; init => field = NotBelowZero(value); }

    /// <summary>Hub flange between the head and the disc.</summary>
    public required Length HubFlange { get; init => field = NotBelowZero(value); }

    /// <summary>Disc or drum hat.</summary>
    public Length DiscHat { get; init => field = NotBelowZero(value); }

    /// <summary>Spacer.</summary>
    public Length Spacer { get; init => field = NotBelowZero(value); }

    /// <summary>Wheel material between its inner face and where the nut's thread begins.</summary>
    public required Length WheelPad { get; init => field = NotBelowZero(value); }

    /// <summary>Loose washer under the nut.</summary>
    public Length Washer { get; init => field = NotBelowZero(value); }

    /// <summary>Full thread in the nut.</summary>
    public required Length NutThread { get; init => field = NotBelowZero(value); }

    /// <summary>Depth of a closed nut from its thread's start to its bottom; null for an open nut.</summary>
    public Length? ClosedNutDepth { get; init => field = value is { } v ? NotBelowZero(v) : null; }

    /// <summary>Stud that reaches into the nut, below zero where the stud does not reach it.</summary>
    public Length Available => Stud - HubFlange - DiscHat - Spacer - WheelPad - Washer;

    /// <summary>Engaged thread: the smaller of what is available and what the nut has; not below zero.</summary>
    public Length Engaged => Available < Length.Zero ? Length.Zero : Available < NutThread ? Available : NutThread;

    /// <summary>Engaged turns, engaged/P.</summary>
    public double Turns => Engaged / Thread.Pitch;

    /// <summary>Stud seen beyond an open nut's thread; zero where it does not reach the end.</summary>
    public Length Showing => Available > NutThread ? Available - NutThread : Length.Zero;

    /// <summary>Room left in a closed nut before the stud touches its bottom; below zero it bottoms. Null for an open nut.</summary>
    public Length? RoomInClosedNut => ClosedNutDepth - Available;

    private static Length NotBelowZero(Length value) => value >= Length.Zero && double.IsFinite(value.Millimeters)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A length in a stack is not below zero.");
}
