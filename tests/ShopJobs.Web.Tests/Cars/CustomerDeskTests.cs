using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Cars;

public sealed class CustomerDeskTests : IAsyncLifetime
{
    private ShopOnDisk shop = default!;

    private CustomerDesk Desk => shop.Get<CustomerDesk>();

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
    public async Task New_car_is_kept_as_typed()
    {
        var form = await NewCarAsync("Silver <script>alert('x')</script>");
        form.Note = "two\nlines \u0007";

        Assert.Null(await Desk.SaveAsync(form));

        var car = (await Desk.CarsAsync()).Single(row => row.Id == form.Id);
        Assert.Equal(("Silver <script>alert('x')</script>", "two\nlines", DistanceUnit.Mile), (car.Name, car.Note, car.Distance));
        Assert.False(car.CountsAsHere);
    }

    [Fact]
    public async Task Same_form_sent_twice_makes_one_car()
    {
        var form = await NewCarAsync("Silver");
        Assert.Null(await Desk.SaveAsync(form));

        await Desk.SaveAsync(form);

        Assert.Single(await Desk.CarsAsync(), car => car.Name == "Silver");
    }

    [Theory]
    [InlineData("", "Give the car the name")]
    [InlineData("   ", "Give the car the name")]
    [InlineData("BIue", "“BIue” looks like “Blue”, the name of another car.")]
    [InlineData("Bl\u00ADue", "It has a character that nobody sees after “Bl”.")]
    [InlineData("blue", "There is another car called Blue already.")]
    public async Task Car_needs_a_name_of_its_own(string name, string said)
    {
        Assert.Contains(said, await Desk.SaveAsync(await NewCarAsync(name)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Customer_does_not_pass_for_another_and_an_erased_one_leaves_no_name()
    {
        var first = new CustomerForm { Name = "Tamsin Orr" };
        Assert.Null(await Desk.SaveAsync(first));

        Assert.Contains("“Tamsin 0rr” looks like “Tamsin Orr”, the name of another customer.", await Desk.SaveAsync(new CustomerForm { Name = "Tamsin 0rr" }), StringComparison.Ordinal);
        Assert.Contains("nobody sees", await Desk.SaveAsync(new CustomerForm { Name = "Tamsin\u200FOrr" }), StringComparison.Ordinal);
        await shop.RowsAsync(rows => rows.Database.ExecuteSqlAsync($"UPDATE Customers SET ErasedAt = '2026-03-02' WHERE Id = {first.Id.Value}"));
        Assert.Null(await Desk.SaveAsync(new CustomerForm { Name = "Tamsin 0rr" }));
    }

    [Fact]
    public async Task Of_two_cars_alike_added_at_once_one_is_refused()
    {
        var forms = new[] { await NewCarAsync("Silver 1"), await NewCarAsync("Silver l"), await NewCarAsync("Silver  I") };

        var answers = await Task.WhenAll(forms.Select(form => Task.Run(() => Desk.SaveAsync(form))));

        Assert.Single(answers, answer => answer is null);
    }

    [Fact]
    public async Task Huge_fields_are_refused_by_name()
    {
        var form = await NewCarAsync(new string('x', 1_000_000));
        form.Note = new string('y', 1_000_000);

        var refusal = await Desk.SaveAsync(form);

        Assert.Contains("The name takes at most 40", refusal, StringComparison.Ordinal);
        Assert.Contains("The note takes at most 1000", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Car_belongs_to_a_customer_in_the_book()
    {
        var form = await NewCarAsync("Silver");
        form.Customer = Guid.NewGuid().ToString();
        Assert.Contains("not in the book", await Desk.SaveAsync(form), StringComparison.Ordinal);
        form.Customer = "";
        Assert.Contains("Pick the customer", await Desk.SaveAsync(form), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Second_of_two_leads_does_not_wipe_out_the_first_ones_change()
    {
        var blue = (await Desk.CarsAsync()).Single(car => car.Name == "Blue");
        var first = CarForm.Of(blue);
        var second = CarForm.Of(blue);
        first.Note = "first";
        second.Note = "second";

        Assert.Null(await Desk.SaveAsync(first));
        Assert.Contains("meanwhile", await Desk.SaveAsync(second), StringComparison.Ordinal);
        Assert.Equal("first", (await Desk.CarsAsync()).Single(car => car.Name == "Blue").Note);
    }

    [Fact]
    public async Task Change_says_who_and_when()
    {
        shop.Time.Advance(TimeSpan.FromMinutes(3));
        var blue = (await Desk.CarsAsync()).Single(car => car.Name == "Blue");

        var form = CarForm.Of(blue);
        form.Note = "by the gate";
        Assert.Null(await Desk.SaveAsync(form));

        var changed = (await Desk.CarsAsync()).Single(car => car.Name == "Blue");
        Assert.Equal(("by the gate", blue.Place, true), (changed.Note, changed.Place, changed.CountsAsHere));
        Assert.Equal((await shop.IdOfAsync("Edda"), shop.Time.GetUtcNow().UtcDateTime), (changed.ChangedBy!.Value, changed.ChangedAt));
        Assert.Equal(DateTimeKind.Utc, changed.ChangedAt.Kind);
    }

    [Fact]
    public async Task Nobody_but_the_lead_changes_cars_and_customers()
    {
        var form = await NewCarAsync("Silver");
        await shop.SignInAsync(DemoPeople.Engines);

        Assert.Contains("lead", await Desk.SaveAsync(form), StringComparison.Ordinal);
        Assert.Contains("lead", await Desk.SaveAsync(new CustomerForm { Name = "Somebody" }), StringComparison.Ordinal);
        Assert.Equal(DemoCars.All.Count, await shop.RowsAsync(rows => rows.Cars.CountAsync()));
    }

    private async Task<CarForm> NewCarAsync(string name) => new()
    {
        Name = name,
        Model = "Lorrick 9",
        Customer = (await Desk.CustomersAsync())[0].Id.Value.ToString(),
        Distance = DistanceUnit.Mile,
    };
}
