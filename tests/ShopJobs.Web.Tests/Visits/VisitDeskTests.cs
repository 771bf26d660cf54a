using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Visits;

public sealed class VisitDeskTests : IAsyncLifetime
{
    private readonly NewContent why = NewContent.Of(Encoding.UTF8.GetBytes("fire alarm"));
    private readonly NewContent came = NewContent.Of(Encoding.UTF8.GetBytes("new wheels"));
    private readonly NewContent other = NewContent.Of(Encoding.UTF8.GetBytes("by the owner"));
    private ShopOnDisk shop = default!;
    private CarId silver;

    private VisitDesk Visits => shop.Get<VisitDesk>();

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.SignInAsync(DemoPeople.Lead);
        var form = new CarForm
        {
            Name = "Silver",
            Model = "Lorrick 9",
            Distance = DistanceUnit.Mile,
            Customer = (await shop.Get<CustomerDesk>().CustomersAsync())[0].Id.Value.ToString(),
        };
        Assert.Null(await shop.Get<CustomerDesk>().SaveAsync(form));
        silver = form.Id;
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task A_new_car_is_not_here_before_it_comes_in_and_then_stands_on_the_floor_with_its_miles()
    {
        Assert.Equal("Has not come in yet", (await WhereAsync()).Words);
        Assert.False(await IsOnFloorAsync());

        Assert.True((await ComeInAsync("Floor")).Recorded);

        Assert.Equal(new Whereabouts(true, "Here since 2 Mar 2026, Floor space"), await WhereAsync());
        Assert.True(await IsOnFloorAsync());
        var reading = shop.Get<CarDesk>().Read(silver, null);
        Assert.Equal((49889.664m, DistanceUnit.Mile), (reading.State.Odometer!.Value, reading.Now.Distance));
        Assert.Contains("31,000 mi", reading.Now.Say(new HoldPoint(HoldReason.OdometerBelowLast) { Km = reading.State.Odometer }).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_car_in_the_shop_is_not_put_away_and_one_put_away_is_hidden_until_it_comes_in_again()
    {
        var cars = shop.Get<CustomerDesk>();
        Assert.True((await ComeInAsync("Floor")).Recorded);
        Assert.Equal("Silver is here. Send it away first: a car in the shop is never hidden.", await cars.RetireAsync(silver, retired: true));
        Assert.True((await Visits.RunAsync(silver, new LetGo(WayOut.OnTrailer, other.Digest, null), "", [other])).Recorded);

        Assert.Null(await cars.RetireAsync(silver, retired: true));
        Assert.False(await IsInFloorReadingAsync());
        Assert.Contains(await cars.CarsAsync(), car => car.Id == silver);
        Assert.Null(await cars.RetireAsync(silver, retired: false));
        Assert.True(await IsInFloorReadingAsync());

        Assert.Null(await cars.RetireAsync(silver, retired: true));
        var again = NewContent.Of(Encoding.UTF8.GetBytes("a second look"));
        Assert.True((await Visits.RunAsync(silver, new ComeIn(new OdometerReading(31000, DistanceUnit.Mile), "Floor", again.Digest), "Floor", [again])).Recorded);
        Assert.Null((await RowAsync()).RetiredAt);
    }

    [Fact]
    public async Task A_customer_is_put_away_after_the_cars_and_comes_back_with_one()
    {
        var cars = shop.Get<CustomerDesk>();
        var owner = new CustomerForm { Name = "Tamsin Orr" };
        Assert.Null(await cars.SaveAsync(owner));
        var form = CarForm.Of((await cars.CarsAsync()).Single(car => car.Id == silver));
        form.Customer = owner.Id.Value.ToString();
        Assert.Null(await cars.SaveAsync(form));

        Assert.Equal("Silver may still come. Put the cars away first, or give them their new owner.", await cars.RetireAsync(owner.Id, retired: true));
        Assert.Null(await cars.RetireAsync(silver, retired: true));
        Assert.Null(await cars.RetireAsync(owner.Id, retired: true));
        var blue = CarForm.Of((await cars.CarsAsync()).Single(car => car.Name == "Blue"));
        blue.Customer = form.Customer;
        Assert.Contains("put away as not coming back", await cars.SaveAsync(blue), StringComparison.Ordinal);

        Assert.True((await ComeInAsync("Floor")).Recorded);
        Assert.Null((await cars.CustomersAsync()).Single(customer => customer.Id == owner.Id).RetiredAt);
    }

    [Fact]
    public async Task Two_cars_on_one_lift_are_refused_by_the_name_of_the_other_and_nothing_is_written()
    {
        var refused = await ComeInAsync("LiftA");

        Assert.Equal(("Blue is there", HoldReason.PlaceTaken), (Assert.Single(refused.Reasons).Words, refused.Reasons[0].Reason));
        Assert.Equal(("Has not come in yet", ""), ((await WhereAsync()).Words, (await RowAsync()).Place));
        Assert.Equal(0, shop.Get<CarDesk>().Read(silver, null).State.Number);
    }

    [Fact]
    public async Task A_lift_is_free_again_when_its_car_has_left()
    {
        var blue = (await shop.Get<CustomerDesk>().CarsAsync()).Single(car => car.Name == "Blue");

        Assert.True((await Visits.RunAsync(blue.Id, new LetGo(WayOut.OnTrailer, other.Digest, null), "", [other])).Recorded);

        Assert.True((await ComeInAsync("LiftA")).Recorded);
        Assert.Equal("LiftA", (await RowAsync()).Place);
        Assert.Equal("Left on 2 Mar 2026, on a trailer", Where(await RowAsync("Blue")).Words);
    }

    [Fact]
    public async Task A_move_over_a_no_is_refused_and_the_place_stays_until_it_is_told_that_it_happened()
    {
        await ComeInAsync("Floor");
        await shop.Get<ProcedureImport>().ImportAsync(SeedDocuments.All, await shop.IdOfAsync("Edda"));
        var here = await shop.Get<WhoIsHere>().ActingAsync();
        await shop.Get<CarDesk>().RunAsync(silver, new CommandId(Guid.NewGuid()), here!, new OpenPositions([new("hub.nut", "rear-left", 1)], null, null));

        var refused = await Visits.RunAsync(silver, new MoveCar("Floor", "Outside"), "Outside", []);
        Assert.Contains(refused.Reasons, reason => reason.Reason == HoldReason.NotAtStage);
        Assert.Equal("Floor", (await RowAsync()).Place);

        Assert.True((await Visits.RunAsync(silver, new ReportMoved("Floor", "Outside", why.Digest), "Outside", [why])).Recorded);
        Assert.Equal("Outside", (await RowAsync()).Place);
        var moved = Assert.Single(shop.Get<CarDesk>().Read(silver, null).State.ToLookOver);
        Assert.Contains(new SpokenAgainst(HoldReason.NotAtStage, new("hub.nut", "rear-left", 1)), moved.Against);
        Assert.Equal("fire alarm", shop.Get<CarEntries>().Texts([why.Digest])[why.Digest]);
    }

    [Fact]
    public async Task Nobody_at_a_locked_tablet_moves_a_car()
    {
        shop.Circuit.User = new(new System.Security.Claims.ClaimsIdentity());
        Assert.Contains("locked", (await ComeInAsync("Floor")).NotSaved, StringComparison.Ordinal);
    }

    private Task<DeskAnswer> ComeInAsync(string place) =>
        Visits.RunAsync(silver, new ComeIn(new OdometerReading(31000, DistanceUnit.Mile), place, came.Digest), place, [came]);

    private async Task<Car> RowAsync(string name = "Silver") => (await shop.Get<CustomerDesk>().CarsAsync()).Single(car => car.Name == name);

    private async Task<Whereabouts> WhereAsync() => Where(await RowAsync());

    private Whereabouts Where(Car car) => Whereabouts.Of(car, shop.Get<CarDesk>().Read(car.Id, null), shop.Get<ShopClock>());

    private async Task<bool> IsInFloorReadingAsync() => (await shop.Get<FloorBoard>().ReadAsync()).Cars.Any(car => car.Car.Id == silver);

    private async Task<bool> IsOnFloorAsync() => (await shop.Get<FloorBoard>().ReadAsync()).Cars.Single(car => car.Car.Id == silver).IsHere;
}
