using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Clock;

/// <summary>The words about the shop's clock, and what is shown when the lead signs the time.</summary>
internal static class ClockDialogs
{
    /// <summary>A step of the clock: "went back by 2 d 0 h: it should have shown 29 Nov 2026 14:02 and showed 27 Nov 2026 14:02".</summary>
    public static string Words(ClockStep step, Func<DateTime, DateTime> onTheWall) => string.Create(
        CultureInfo.InvariantCulture,
        $"The clock {(step.By < TimeSpan.Zero ? "went back" : "jumped ahead")} by {ClockSpan.Words(step.By)}: it should have shown {WallTime.Minute(onTheWall(step.Was))} and showed {WallTime.Minute(onTheWall(step.Showed))}");

    /// <summary>Day and time as somebody reads it from a wall: "Sunday 29 Nov 2026, 14:02".</summary>
    public static string Wall(DateTime wall) => WallTime.Weekday(wall);

    /// <summary>The time, signed as right.</summary>
    /// <param name="reading">What was shown.</param>
    public static ToSign<SetClock> ToSet(ClockReading reading, ShopClock clock) => new(
        new SignRequest(
            "SIGN: compared by me with a clock I trust",
            "The clock is right",
            [
                $"It shows {Wall(reading.OnTheWall)}",
                .. reading.Shop.Steps.Where(step => step.IsOpen).Select(step => Words(step, clock.OnTheWall)),
                .. reading.Waiting.Select(waiting => $"Goes on from here: {waiting.Words}"),
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = Right.Lead },
        shown => new SetClock(shown, reading.Shop.Number));
}
