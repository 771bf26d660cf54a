using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Visits;

/// <summary>Whether a car is here, and since when.</summary>
/// <param name="Words">"Here since 3 Mar 2026, Lift A", "Left on 9 Mar 2026, driven".</param>
public sealed record Whereabouts(bool IsHere, string Words)
{
    /// <summary>Of one car. A car of before visits were kept counts as here while its logbook has no visit.</summary>
    public static Whereabouts Of(Car car, CarReading reading, ShopClock clock)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(clock);
        var at = car.Place.Length == 0 ? "" : $", {reading.Now.Places.NameOf(car.Place)}";
        return reading.State.Visit switch
        {
            null when car.CountsAsHere => new(true, $"Here{at}"),
            null => new(false, "Has not come in yet"),
            { IsOpen: true, At: { } since } => new(true, $"Here since {Day(since)}{at}"),
            { End: { } end, Left: var left } => new(false, $"Left on {Day(end.At)}, {(left!.Way == WayOut.Driven ? "driven" : "on a trailer")}"),
            _ => new(true, $"Here{at}"),
        };

        string Day(DateTime day) => clock.Day(day);
    }
}
