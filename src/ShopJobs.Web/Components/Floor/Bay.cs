using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Floor;

/// <summary>How much of the plan's width a bay takes.</summary>
public enum BaySide
{
    Left,
    Right,
    Whole,
}

/// <summary>A place as it is drawn on the plan, with the cars that stand there.</summary>
/// <param name="Key">Key of the place; empty where the cars stand at no place of the shop.</param>
public sealed record Bay(string Key, string Name, PlaceKind Kind, BaySide Side, IReadOnlyList<FloorCar> Cars)
{
    /// <summary>The shop's places in its order: two lifts that follow one another share the width, everything else takes all of it.</summary>
    public static IReadOnlyList<Bay> Of(FloorScene reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var here = reading.Cars.Where(car => car.IsHere).ToLookup(car => reading.Places.Find(car.Car.Place));
        var places = reading.Places.All.Where(place => place.InUse || here.Contains(place)).ToList();
        var bays = places.Zip(SidesOf(places), (place, side) => new Bay(place.Key, place.Name, place.Kind, side, [.. here[place]])).ToList();
        return here.Contains(null) ? [.. bays, new Bay("", "No place of the shop", PlaceKind.Floor, BaySide.Whole, [.. here[null]])] : bays;
    }

    private static IEnumerable<BaySide> SidesOf(IReadOnlyList<ShopPlace> places)
    {
        var left = false;
        for (var i = 0; i < places.Count; i++)
        {
            var next = i + 1 < places.Count && places[i + 1].Kind == PlaceKind.Lift;
            var side = places[i].Kind != PlaceKind.Lift ? BaySide.Whole : left ? BaySide.Right : next ? BaySide.Left : BaySide.Whole;
            left = side == BaySide.Left;
            yield return side;
        }
    }
}
