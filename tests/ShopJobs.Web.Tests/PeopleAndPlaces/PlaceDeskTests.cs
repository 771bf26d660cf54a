using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Components.PeopleAndPlaces;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.PeopleAndPlaces;

/// <summary>The places of the shop are rows that the lead adds, renames, orders and takes out of use.</summary>
public sealed class PlaceDeskTests : IAsyncLifetime
{
    private readonly PlaceForm liftC = new() { Name = "Lift C", Kind = nameof(PlaceKind.Lift), After = "LiftB" };
    private ShopOnDisk shop = default!;

    private PlaceDesk Desk => shop.Get<PlaceDesk>();

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.SignInAsync(DemoPeople.Lead);
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task A_new_shop_starts_with_two_lifts_a_floor_place_and_outside() => Assert.Equal(
        [("Lift A", PlaceKind.Lift), ("Lift B", PlaceKind.Lift), ("Floor space", PlaceKind.Floor), ("Outside", PlaceKind.Outside)],
        (await Desk.AllAsync()).Select(place => (place.Name, place.Kind)));

    [Fact]
    public async Task A_lift_that_the_shop_added_holds_one_car_like_any_other()
    {
        Assert.Null(await Desk.SaveAsync(liftC));
        Assert.Equal(["Lift A", "Lift B", "Lift C", "Floor space", "Outside"], (await Desk.AllAsync()).Select(place => place.Name));
        Assert.True((await MoveAsync("White", liftC.Key)).Recorded);

        var refused = await MoveAsync("Grey", liftC.Key);

        Assert.Equal(("White is there", HoldReason.PlaceTaken), (Assert.Single(refused.Reasons).Words, refused.Reasons[0].Reason));
        Assert.Equal("Outside", (await CarAsync("Grey")).Place);
        Assert.True((await MoveAsync("White", "Floor")).Recorded);
        Assert.True((await MoveAsync("Grey", "Floor")).Recorded);
    }

    [Fact]
    public async Task The_present_name_and_order_are_taken_everywhere_and_no_entry_is_written()
    {
        Assert.Null(await Desk.SaveAsync(liftC));
        Assert.True((await MoveAsync("White", liftC.Key)).Recorded);
        var white = await CarAsync("White");
        var before = Read(white).HeadHash;

        var form = await FormAsync(liftC.Key);
        (form.Name, form.After) = (" Rig lift ", "");
        Assert.Null(await Desk.SaveAsync(form));

        Assert.Equal(["Rig lift", "Lift A", "Lift B", "Floor space", "Outside"], Read(white).Now.Places.InUse.Select(place => place.Name));
        Assert.EndsWith(", Rig lift", Whereabouts.Of(white, Read(white), shop.Get<ShopClock>()).Words, StringComparison.Ordinal);
        var bay = Bay.Of(await shop.Get<FloorBoard>().ReadAsync())[0];
        Assert.Equal(("Rig lift", "White"), (bay.Name, Assert.Single(bay.Cars).Car.Name));
        var book = await shop.Get<LogbookShelf>().ReadAsync(Folders.LogbookOf(white.Id), null);
        Assert.Equal("Moved from Floor space to Rig lift.", book!.Lines[0].Words);
        Assert.Equal(before, Read(white).HeadHash);
    }

    [Theory]
    [InlineData("", nameof(PlaceKind.Lift), nameof(PlaceForm.Name), "Write what the shop calls the place")]
    [InlineData("lift a", nameof(PlaceKind.Lift), nameof(PlaceForm.Name), "There is another place called Lift A already")]
    [InlineData("Lift \u0410", nameof(PlaceKind.Lift), nameof(PlaceForm.Name), "looks like “Lift A”")] // Cyrillic A
    [InlineData("\u202ELift C", nameof(PlaceKind.Lift), nameof(PlaceForm.Name), "a character that nobody sees at its beginning")]
    [InlineData("Lift C of the hall behind the yard", nameof(PlaceKind.Lift), nameof(PlaceForm.Name), "at most 30 letters")]
    [InlineData("---", nameof(PlaceKind.Lift), nameof(PlaceForm.Name), "at least one letter or figure")]
    [InlineData("Lift C", "", nameof(PlaceForm.Kind), "Choose what it is")]
    [InlineData("Lift C", "Crane", nameof(PlaceForm.Kind), "Choose what it is")]
    public async Task A_place_that_is_refused_says_why_at_its_field(string name, string kind, string field, string said)
    {
        var refused = await Desk.SaveAsync(new PlaceForm { Name = name, Kind = kind });

        Assert.Equal(field, refused!.Field);
        Assert.Contains(said, refused.Words, StringComparison.Ordinal);
        Assert.Equal(4, (await Desk.AllAsync()).Count);
    }

    [Fact]
    public async Task A_place_where_a_car_stands_keeps_its_kind_and_stays_in_use()
    {
        Assert.Equal(
            "Blue is there. Move it or send it away first: no car is left at a place that is out of use.", await Desk.RetireAsync("LiftA", retired: true));
        var form = await FormAsync("LiftA");
        form.Kind = nameof(PlaceKind.Floor);
        Assert.Equal(new PlaceRefusal(nameof(PlaceForm.Kind), "Blue is there. Move it or send it away first, then say what the place is."), await Desk.SaveAsync(form));

        Assert.True((await GoAsync(await CarAsync("Blue"))).Recorded);
        Assert.Null(await Desk.SaveAsync(form));
        Assert.Null(await Desk.RetireAsync("LiftA", retired: true));
    }

    [Fact]
    public async Task A_retired_place_is_offered_nowhere_takes_no_car_keeps_its_name_in_the_book_and_comes_back()
    {
        Assert.Null(await Desk.SaveAsync(liftC));
        Assert.True((await MoveAsync("White", liftC.Key)).Recorded);
        Assert.True((await MoveAsync("White", "Floor")).Recorded);

        Assert.Null(await Desk.RetireAsync(liftC.Key, retired: true));

        var white = await CarAsync("White");
        Assert.DoesNotContain(Read(white).Now.Places.InUse, place => place.Key == liftC.Key);
        Assert.DoesNotContain(Bay.Of(await shop.Get<FloorBoard>().ReadAsync()), bay => bay.Name == "Lift C");
        var refused = await MoveAsync("White", liftC.Key);
        Assert.Equal(("Lift C is not in use", HoldReason.PlaceNotInUse), (Assert.Single(refused.Reasons).Words, refused.Reasons[0].Reason));
        var book = await shop.Get<LogbookShelf>().ReadAsync(Folders.LogbookOf(white.Id), null);
        Assert.Equal(["Moved from Lift C to Floor space.", "Moved from Floor space to Lift C."], book!.Lines.Take(2).Select(line => line.Words));
        Assert.Contains("out of use: bring it back", (await Desk.SaveAsync(new PlaceForm { Name = "LIFT C", Kind = nameof(PlaceKind.Lift) }))!.Words, StringComparison.Ordinal);

        Assert.Null(await Desk.RetireAsync(liftC.Key, retired: false));
        Assert.True((await MoveAsync("White", liftC.Key)).Recorded);
    }

    [Fact]
    public async Task The_last_place_in_use_stays_in_use()
    {
        foreach (var car in await shop.Get<CustomerDesk>().CarsAsync())
        {
            Assert.True((await GoAsync(car)).Recorded);
        }

        foreach (var key in new[] { "LiftA", "LiftB", "Floor" })
        {
            Assert.Null(await Desk.RetireAsync(key, retired: true));
        }

        Assert.Equal("It is the only place in use: no car could come in. Add another place first.", await Desk.RetireAsync("Outside", retired: true));
        Assert.Contains("not in the book", await Desk.RetireAsync("Nowhere", retired: true), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_but_the_lead_changes_a_place_and_nobody_saves_over_a_change_not_seen()
    {
        var form = await FormAsync("LiftB");
        var same = await FormAsync("LiftB");
        form.Name = "Lift 2";
        Assert.Null(await Desk.SaveAsync(form));
        same.Name = "Lift 3";
        Assert.Contains("changed this meanwhile", (await Desk.SaveAsync(same))!.Words, StringComparison.Ordinal);

        await shop.SignInAsync(DemoPeople.Chassis);
        Assert.Equal(new PlaceRefusal("", "People, places and tablets are the lead's to change. Sign in as the lead."), await Desk.SaveAsync(liftC));
        Assert.Contains("the lead's to change", await Desk.RetireAsync("Floor", retired: true), StringComparison.Ordinal);
        Assert.Equal(["Lift A", "Lift 2", "Floor space", "Outside"], (await Desk.AllAsync()).Select(place => place.Name));
    }

    [Fact]
    public async Task Of_two_alike_added_at_once_one_is_refused()
    {
        var answers = await Task.WhenAll(new[] { "Bay l", "Bay I", "Bay 1" }.Select(name => Task.Run(() => Desk.SaveAsync(new PlaceForm { Name = name, Kind = nameof(PlaceKind.Floor) }))));

        Assert.Equal(2, answers.Count(answer => answer?.Field == nameof(PlaceForm.Name)));
        Assert.Equal(5, (await Desk.AllAsync()).Count);
    }

    private async Task<PlaceForm> FormAsync(string key)
    {
        var all = await Desk.AllAsync();
        return PlaceForm.Of(all.Single(place => place.Key == key), all);
    }

    private async Task<Car> CarAsync(string name) => (await shop.Get<CustomerDesk>().CarsAsync()).Single(car => car.Name == name);

    private CarReading Read(Car car) => shop.Get<CarDesk>().Read(car.Id, null);

    private Task<DeskAnswer> GoAsync(Car car)
    {
        var word = NewContent.Of(Encoding.UTF8.GetBytes("by the owner"));
        return shop.Get<VisitDesk>().RunAsync(car.Id, new ReportGone(WayOut.OnTrailer, word.Digest, null, word.Digest), "", [word]);
    }

    private async Task<DeskAnswer> MoveAsync(string name, string to)
    {
        var car = await CarAsync(name);
        return await shop.Get<VisitDesk>().RunAsync(car.Id, new MoveCar(car.Place, to), to, []);
    }
}
