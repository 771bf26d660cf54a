using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Floor;

/// <summary>The places of the shop as they are drawn.</summary>
public sealed class BayTests
{
    private readonly FloorCar blue = Readings.OnFloor(new CarAtWork());

    [Fact]
    public void Two_lifts_share_the_width_and_a_third_or_another_place_takes_all_of_it() => Assert.Equal(
        [BaySide.Left, BaySide.Right, BaySide.Whole, BaySide.Whole, BaySide.Whole, BaySide.Whole],
        Of([Place("1", PlaceKind.Lift), Place("2", PlaceKind.Lift), Place("3", PlaceKind.Lift), Place("4", PlaceKind.Floor), Place("5", PlaceKind.Lift), Place("6", PlaceKind.Outside)])
            .Select(bay => bay.Side));

    [Fact]
    public void A_place_out_of_use_is_not_drawn_while_it_is_empty()
    {
        Assert.Equal(["2"], Of([Place("1", PlaceKind.Lift) with { InUse = false }, Place("2", PlaceKind.Floor)]).Select(bay => bay.Key));
        Assert.Equal("Blue", Assert.Single(Of([Place("LiftA", PlaceKind.Lift) with { InUse = false }], blue)[0].Cars).Car.Name);
    }

    [Fact]
    public void A_car_that_stands_at_no_place_of_the_shop_is_still_seen()
    {
        var bays = Of([Place("1", PlaceKind.Lift)], blue, blue with { IsHere = false });

        Assert.Equal(("No place of the shop", "Blue"), (bays[^1].Name, Assert.Single(bays[^1].Cars).Car.Name));
    }

    private static ShopPlace Place(string key, PlaceKind kind) => new(key, $"Place {key}", kind);

    private static IReadOnlyList<Bay> Of(ShopPlace[] places, params FloorCar[] cars) =>
        Bay.Of(new FloorScene(cars, [], DateTime.UnixEpoch, default) { Places = new(places) });
}
