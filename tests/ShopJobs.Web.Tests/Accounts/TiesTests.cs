using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.PeopleAndPlaces;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Accounts;

/// <summary>Whoever made a person's PIN could sign as that person: until it is the person's own, and somebody else says so, both are told apart by nobody.</summary>
public sealed class TiesTests : IAsyncLifetime
{
    private static readonly byte[] Shown = ShownDigest.Of("Tests", ["What is signed"]);
    private ShopOnDisk shop = null!;
    private PersonId lead;
    private PersonId third;

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        third = await shop.IdOfAsync(DemoPeople.Engines.Name);
        lead = await shop.SignInAsync(DemoPeople.Lead);
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task A_pin_that_somebody_else_made_signs_nothing_until_its_owner_took_another()
    {
        var (id, pin) = await AddAsync("Tarn");

        var refused = Assert.IsType<SignatureAnswer.Refused>(await SignAsync(id, pin));
        Assert.Contains("Somebody else made the PIN of Tarn", refused.Words, StringComparison.Ordinal);

        await SitDownAsync(id, "Tarn");
        Assert.True(await shop.Get<OwnPinDesk>().IsNeededAsync());
        var taken = await shop.Get<OwnPinDesk>().TakeAsync(pin);
        Assert.False(await shop.Get<OwnPinDesk>().IsNeededAsync());

        Assert.IsType<SignatureAnswer.Signed>(await SignAsync(id, taken.Pin!));
        Assert.IsType<SignatureAnswer.Refused>(await SignAsync(id, pin));
    }

    [Fact]
    public async Task A_reset_pin_signs_nothing_either()
    {
        var jorn = await shop.IdOfAsync(DemoPeople.Chassis.Name);
        Assert.IsType<SignatureAnswer.Signed>(await SignAsync(jorn, DemoPeople.Chassis.Pin));

        var given = Assert.IsType<PinGiven.Given>(await shop.Get<PeopleDesk>().ResetPinAsync(jorn));

        Assert.IsType<SignatureAnswer.Refused>(await SignAsync(jorn, given.Pin));
        Assert.Equal([lead], TiedTo(jorn));
    }

    [Fact]
    public async Task A_wrong_pin_takes_no_other()
    {
        var (id, _) = await AddAsync("Tarn");
        await SitDownAsync(id, "Tarn");

        var taken = await shop.Get<OwnPinDesk>().TakeAsync("000000");

        Assert.Null(taken.Pin);
        Assert.Contains("not the PIN of Tarn", taken.Refusal, StringComparison.Ordinal);
        Assert.True(await shop.Get<OwnPinDesk>().IsNeededAsync());
    }

    [Fact]
    public async Task A_person_is_tied_to_whoever_added_them_until_a_third_confirms()
    {
        var (id, pin) = await AddAsync("Tarn");
        Assert.Equal([lead], TiedTo(id));
        Assert.Equal("Nothing here waits for that person's word. Load the page again.", await ConfirmAsync(id, third, DemoPeople.Engines.Pin));

        await OwnPinAsync(id, pin);
        Assert.Equal([lead], TiedTo(id));
        Assert.NotNull(await ConfirmAsync(id, lead, DemoPeople.Lead.Pin));
        Assert.Equal([lead], TiedTo(id));

        Assert.Null(await ConfirmAsync(id, third, DemoPeople.Engines.Pin));
        Assert.Empty(TiedTo(id));

        Assert.Null(await shop.Get<PeopleDesk>().GiveAsync(id, Right.Decide, ShopOnDisk.Today, null));
        Assert.Equal([lead], TiedTo(id));
        Assert.Equal([DoorEvent.RightGiven], (await shop.Get<PeopleDesk>().TiesOfAsync(id)).Ties.Select(tie => tie.What));
    }

    [Fact]
    public async Task A_signature_for_another_screen_confirms_nobody()
    {
        var (id, pin) = await AddAsync("Tarn");
        await OwnPinAsync(id, pin);
        var signed = Assert.IsType<SignatureAnswer.Signed>(await SignAsync(third, DemoPeople.Engines.Pin));

        Assert.NotNull(await shop.Get<PeopleDesk>().ConfirmAsync(id, signed.Proof, ShownDigest.Of("Tests", ["Something else"])));

        Assert.Equal([lead], TiedTo(id));
    }

    [Fact]
    public void Nobody_of_the_demo_shop_is_tied() => Assert.Empty(TiedTo(third));

    private IReadOnlySet<PersonId> TiedTo(PersonId person)
    {
        var car = shop.RowsAsync(rows => rows.Cars.Select(row => row.Id).FirstAsync()).GetAwaiter().GetResult();
        return shop.Get<CarDesk>().Read(car, person).Now.TiedTo;
    }

    private async Task<(PersonId Id, string Pin)> AddAsync(string name)
    {
        var form = new PersonForm { Name = name };
        form.Rights.Add(Right.Record);
        var given = Assert.IsType<PinGiven.Given>(await shop.Get<PeopleDesk>().AddAsync(form));
        return (form.Id, given.Pin);
    }

    private async Task OwnPinAsync(PersonId id, string pin)
    {
        await SitDownAsync(id, "Tarn");
        Assert.NotNull((await shop.Get<OwnPinDesk>().TakeAsync(pin)).Pin);
        await shop.SignInAsync(DemoPeople.Lead);
    }

    private async Task SitDownAsync(PersonId id, string name) =>
        shop.Circuit.User = PersonClaims.Of(await shop.Get<SessionDesk>().OpenAsync(id, shop.Tablet), name);

    private Task<SignatureAnswer> SignAsync(PersonId signer, string pin) =>
        shop.Get<SignatureDesk>().VerifyAsync(signer, pin, new CommandId(Guid.NewGuid()), Shown);

    private async Task<string?> ConfirmAsync(PersonId id, PersonId by, string pin) =>
        await shop.Get<PeopleDesk>().ConfirmAsync(id, Assert.IsType<SignatureAnswer.Signed>(await SignAsync(by, pin)).Proof, Shown);
}
