using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Parts;

/// <summary>
/// What lies between stud and nut on one car, as it was measured there, and the nut that is used on it. Lengths along the stud,
/// none below zero. A car has one or several: front and rear seldom measure alike.
/// </summary>
public sealed record WheelStack
{
    /// <summary>Where on the car: "front", "rear".</summary>
    public required string Name { get; init; }

    /// <summary>Hub between the seat of head or shoulder and the disc; zero where a shoulder sits on the hub's outer face.</summary>
    public Length HubFlange { get; init; }

    /// <summary>Disc or drum hat.</summary>
    public Length DiscHat { get; init; }

    /// <summary>Spacer.</summary>
    public Length Spacer { get; init; }

    /// <summary>Wheel material between its inner face and where the nut's thread begins.</summary>
    public required Length WheelPad { get; init; }

    /// <summary>Loose washer under the nut.</summary>
    public Length Washer { get; init; }

    /// <summary>Seat in the wheel.</summary>
    public required SeatForm WheelSeat { get; init; }

    /// <summary>Face of the nut used on this car.</summary>
    public required SeatForm NutSeat { get; init; }

    /// <summary>Full thread in the nut used on this car.</summary>
    public required Length NutThread { get; init; }

    /// <summary>Open, or closed at a depth.</summary>
    public NutEnd NutEnd { get; init; }

    /// <summary>Class marked on the nut by ISO 898-2; null where none is.</summary>
    public NutClass? NutClass { get; init; }

    /// <summary>The stack with a stud through it and a nut of its own or of the car.</summary>
    public WheelStudStack With(ThreadSize thread, Length stud, Length nutThread, NutEnd nutEnd) => new()
    {
        Thread = thread,
        Stud = stud,
        HubFlange = HubFlange,
        DiscHat = DiscHat,
        Spacer = Spacer,
        WheelPad = WheelPad,
        Washer = Washer,
        NutThread = nutThread,
        ClosedNutDepth = nutEnd.ClosedDepth,
    };
}
