using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>One option on one wheel stack of the car.</summary>
/// <param name="Wheel">The stack.</param>
/// <param name="NutSeat">Face of the nut on it: the kit's own, else the car's; null where the kit's is not stated.</param>
/// <param name="Stud">Stack with stud and nut; null with <paramref name="Missing"/>.</param>
/// <param name="Missing">What is not stated, so that the length is not judged; null where it is.</param>
internal sealed record StackFigures(WheelStack Wheel, SeatForm? NutSeat, WheelStudStack? Stud, string? Missing)
{
    /// <summary>True where the nut of the kit is used, and not the car's.</summary>
    public required bool OwnNut { get; init; }

    /// <summary>An option on a stack.</summary>
    public static StackFigures Of(PartOption option, WheelStack wheel)
    {
        var nut = option.Nut;
        var nutThread = nut is null ? wheel.NutThread : nut.Thread?.Value;
        var nutEnd = nut is null ? wheel.NutEnd : nut.End?.Value;
        var seat = nut is null ? wheel.NutSeat : nut.Seat?.Value;
        if (option is { Thread.Value: { } thread, Length.Value: var length } && nutThread is { } engaging && nutEnd is { } end)
        {
            return new StackFigures(wheel, seat, wheel.With(thread, length, engaging, end), null) { OwnNut = nut is not null };
        }

        var missing = option.Thread is null ? "the thread is not stated"
            : option.Length is null ? "the length is not stated"
            : "thread or end of the kit's nut is not stated";
        return new StackFigures(wheel, seat, null, missing) { OwnNut = nut is not null };
    }
}
