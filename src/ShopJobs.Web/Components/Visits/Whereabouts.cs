using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Visits;

/// <summary>Whether a car is here, and since when.</summary>
/// <param name="Words">"here since 3 Mar 2026, Lift A", "left on 9 Mar 2026, driven".</param>
public sealed record Whereabouts(bool IsHere, string Words)
{
    /// <summary>Of one car. A car of before visits were kept counts as here while its logbook has no visit.</summary>
    public static Whereabouts Of(Car car, CarState state, ShopClock clock)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(clock);
        return state.Visit switch
        {
            null when car.CountsAsHere => new(true, $"here, {car.Place.Words()}"),
            null => new(false, "has not come in yet"),
            { IsOpen: true, At: { } at } => new(true, $"here since {Day(at)}, {car.Place.Words()}"),
            { End: { } end, Left: var left } => new(false, $"left on {Day(end.At)}, {(left!.Way == WayOut.Driven ? "driven" : "on a trailer")}"),
            _ => new(true, $"here, {car.Place.Words()}"),
        };

        string Day(DateTime at) => clock.OnTheWall(at).ToString("d MMM yyyy", CultureInfo.InvariantCulture);
    }
}
