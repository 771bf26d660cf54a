using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>Parts are ordinary rows that the lead enters, changes and takes out of use.</summary>
public sealed class PartCatalogueDeskTests : IAsyncLifetime
{
    private PartShop shop = default!;

    public async Task InitializeAsync() => shop = await PartShop.OpenAsync();

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task A_part_is_kept_in_one_spelling_with_who_and_when()
    {
        var form = PartShop.Stud();
        (form.Maker, form.Name, form.Thread, form.Strength, form.Price) = (" Quillon ", "Wheel  stud\n42 mm", "m12 × 1,5", "class 12.9", "8,45 eur");

        await shop.EnterAsync(form);

        var part = await shop.OneAsync();
        Assert.Equal(
            ("Quillon", "Q4-1242", "Wheel stud 42 mm", "wheel.stud", "M12x1.5", "12.9", true, 8.45m, "EUR"),
            (part.Maker, part.Number, part.Name, part.Fills, part.Thread, part.Strength, part.SingleUse, part.Price!.Value, part.Currency));
        Assert.Equal((await shop.Disk.IdOfAsync(DemoPeople.Lead.Name), shop.Disk.Time.GetUtcNow().UtcDateTime), (part.ChangedBy, part.ChangedAt));
        Assert.NotEqual(default, part.Revision);
    }

    [Fact]
    public async Task A_part_needs_no_more_than_maker_number_and_name()
    {
        await shop.EnterAsync(new PartForm { Maker = "Tarnwick", Number = "T-220F", Name = "Front damper", Currency = "GBP" });

        var part = await shop.OneAsync();
        Assert.Equal((null, null, null, null, null), (part.Fills, part.Thread, part.Strength, part.Price, part.Currency));
        Assert.False(part.SingleUse);
    }

    [Theory]
    [InlineData(nameof(PartForm.Number), "", "Write the maker's number")]
    [InlineData(nameof(PartForm.Number), " \t ", "Write the maker's number")]
    [InlineData(nameof(PartForm.Number), "12345678901234567890123456789012345678901", "at most 40 letters")]
    [InlineData(nameof(PartForm.Number), "Q4\u200B", "a character that nobody sees")]
    [InlineData(nameof(PartForm.Number), "\uFFFE4", "a character that nobody sees")]
    [InlineData(nameof(PartForm.Maker), "", "Write who makes it")]
    [InlineData(nameof(PartForm.Maker), "---", "at least one letter or figure")]
    [InlineData(nameof(PartForm.Name), "", "Write what the shop calls it")]
    [InlineData(nameof(PartForm.Fills), "wheel.nutt", "“wheel.nutt” is no joint of the shop's register")]
    [InlineData(nameof(PartForm.Thread), "M12x9", "M12x9")]
    [InlineData(nameof(PartForm.Thread), "twelve", "is not a thread size known here")]
    [InlineData(nameof(PartForm.Strength), "13.9", "is not a strength class")]
    [InlineData(nameof(PartForm.Strength), "12.9 12.9 12.9 12.9 12.9", "too long for a strength class")]
    [InlineData(nameof(PartForm.Price), "abc", "“abc” is no price")]
    [InlineData(nameof(PartForm.Price), "-1", "“-1” is no price")]
    [InlineData(nameof(PartForm.Price), "1e30", "“1e30” is no price")]
    [InlineData(nameof(PartForm.Price), "10000000", "“10000000” is no price")]
    [InlineData(nameof(PartForm.Price), "999999999999999999999999999999999", "is no price")]
    [InlineData(nameof(PartForm.Price), "1,234.50", "is no price")]
    [InlineData(nameof(PartForm.Price), "1,234", "more than two decimals")]
    [InlineData(nameof(PartForm.Price), "8.45 GBP", "The price is in GBP, the currency is “EUR”")]
    [InlineData(nameof(PartForm.Currency), "", "Write the currency in three letters")]
    [InlineData(nameof(PartForm.Currency), "E€R", "Write the currency in three letters")]
    public async Task What_is_wrong_is_said_at_its_field_and_nothing_is_written(string field, string typed, string said)
    {
        var form = PartShop.Stud();
        typeof(PartForm).GetProperty(field)!.SetValue(form, typed);

        var refused = await shop.Desk.SaveAsync(form);

        Assert.Equal(field, refused!.Field);
        Assert.Contains(said, refused.Words, StringComparison.Ordinal);
        Assert.Empty(await shop.AllAsync());
    }

    [Theory]
    [InlineData("0", 0)]
    [InlineData("9999999.99", 9_999_999.99)]
    [InlineData("0,5", 0.5)]
    [InlineData("12.500", 12.5)]
    public async Task Both_ends_of_what_a_price_may_be_are_taken(string typed, double price)
    {
        var form = PartShop.Stud();
        form.Price = typed;

        await shop.EnterAsync(form);

        Assert.Equal((decimal)price, (await shop.OneAsync()).Price);
    }

    [Theory]
    [InlineData("Quillon", "q4-1242")]
    [InlineData("QUILLON", " Q4-1242 ")]
    public async Task Maker_and_number_are_one_part_without_case(string maker, string number)
    {
        await shop.EnterAsync(PartShop.Stud());
        var again = PartShop.Stud();
        (again.Maker, again.Number) = (maker, number);

        var refused = await shop.Desk.SaveAsync(again);

        Assert.Equal(new PartRefusal(nameof(PartForm.Number), "Quillon Q4-1242 is in the catalogue already. Change that one, or read the number again."), refused);
        again.Maker = "Brackholm";
        await shop.EnterAsync(again);
        Assert.Equal(2, (await shop.AllAsync()).Count);
    }

    [Fact]
    public async Task Letters_with_accents_are_one_part_without_case_too_and_the_database_holds_it()
    {
        var form = PartShop.Stud("Übermaß-1");
        await shop.EnterAsync(form);
        var again = PartShop.Stud("U\u0308BERMAß-1");

        Assert.Equal(nameof(PartForm.Number), (await shop.Desk.SaveAsync(again))!.Field);

        var row = new PartRow { Id = new PartId(Guid.NewGuid()) };
        row.Call("QUILLON", "übermaß-1");
        await Assert.ThrowsAsync<DbUpdateException>(() => shop.Disk.RowsAsync(rows =>
        {
            rows.Parts.Add(row);
            return rows.SaveChangesAsync();
        }));
    }

    [Fact]
    public async Task Sending_the_same_form_twice_makes_one_part()
    {
        var form = PartShop.Stud();
        await shop.EnterAsync(form);

        Assert.Contains("changed this meanwhile", (await shop.Desk.SaveAsync(form))!.Words, StringComparison.Ordinal);
        Assert.Single(await shop.AllAsync());
    }

    [Fact]
    public async Task Nobody_saves_over_a_change_not_seen()
    {
        await shop.EnterAsync(PartShop.Stud());
        var (first, second) = (PartForm.Of(await shop.OneAsync()), PartForm.Of(await shop.OneAsync()));
        first.Price = "9.10";
        await shop.EnterAsync(first);
        second.Name = "Stud";

        Assert.Contains("changed this meanwhile", (await shop.Desk.SaveAsync(second))!.Words, StringComparison.Ordinal);
        Assert.Contains("changed this meanwhile", await shop.Desk.RetireAsync(second.Id, second.Revision, retired: true), StringComparison.Ordinal);
        Assert.Equal(("Wheel stud 42 mm", 9.10m, null), ((await shop.OneAsync()).Name, (await shop.OneAsync()).Price!.Value, (await shop.OneAsync()).RetiredAt));
    }

    [Fact]
    public async Task A_part_is_taken_out_of_use_and_brought_back()
    {
        await shop.EnterAsync(PartShop.Stud());

        Assert.Null(await RetireAsync(retired: true));
        Assert.Equal(shop.Disk.Time.GetUtcNow().UtcDateTime, (await shop.OneAsync()).RetiredAt);
        Assert.Contains("It is out of use: bring it back", (await shop.Desk.SaveAsync(PartShop.Stud()))!.Words, StringComparison.Ordinal);

        Assert.Null(await RetireAsync(retired: false));
        Assert.Null((await shop.OneAsync()).RetiredAt);
        Assert.Contains("not in the catalogue", await shop.Desk.RetireAsync(new PartId(Guid.NewGuid()), default, retired: true), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_but_the_lead_changes_a_part()
    {
        await shop.EnterAsync(PartShop.Stud());
        await shop.Disk.SignInAsync(DemoPeople.Chassis);

        Assert.Equal(new PartRefusal("", PartCatalogueDesk.NotYours), await shop.Desk.SaveAsync(PartShop.Stud("Q4-1248")));
        Assert.Equal(PartCatalogueDesk.NotYours, await RetireAsync(retired: true));
        Assert.Null((await shop.OneAsync()).RetiredAt);

        shop.Disk.Circuit.User = new(new System.Security.Claims.ClaimsIdentity());
        Assert.Contains("locked", (await shop.Desk.SaveAsync(PartShop.Stud("Q4-1248")))!.Words, StringComparison.Ordinal);
        Assert.Single(await shop.AllAsync());
    }

    [Fact]
    public async Task A_joint_that_the_register_has_no_more_may_stay_and_no_other_part_takes_it()
    {
        await shop.EnterAsync(PartShop.Stud());
        await shop.Disk.RowsAsync(rows => rows.Parts.ExecuteUpdateAsync(part => part.SetProperty(row => row.Fills, "wheel.gone")));
        var form = PartForm.Of(await shop.OneAsync());
        form.Price = "9";
        await shop.EnterAsync(form);

        Assert.Equal("wheel.gone", (await shop.OneAsync()).Fills);
        var other = PartShop.Stud("Q4-1248");
        other.Fills = "wheel.gone";
        Assert.Equal(nameof(PartForm.Fills), (await shop.Desk.SaveAsync(other))!.Field);
    }

    [Fact]
    public async Task The_currency_that_was_used_is_offered_next()
    {
        var settings = shop.Disk.Get<ShopSettings>();
        Assert.Equal("EUR", settings.Current.Currency);
        var form = PartShop.Stud();
        form.Currency = "gbp";

        await shop.EnterAsync(form);
        await settings.LoadAsync();

        Assert.Equal("GBP", settings.Current.Currency);
    }

    [Fact]
    public async Task A_search_finds_parts_in_which_every_word_is_somewhere()
    {
        var shelf = shop.Disk.Get<PartCatalogueShelf>();
        await shop.EnterAsync(PartShop.Stud(), PartShop.Stud("Q4-1248"), new PartForm { Maker = "Tarnwick", Number = "T-220F", Name = "Front damper" });
        Assert.Null(await shop.Desk.RetireAsync((await shop.AllAsync())[1].Id, (await shop.AllAsync())[1].Revision, retired: true));

        Assert.Equal(["Q4-1242", "T-220F"], (await shelf.SearchAsync("", retired: false)).First.Select(part => part.Number));
        Assert.Equal(["Q4-1242"], (await shelf.SearchAsync("m12 WHEEL quill", retired: false)).First.Select(part => part.Number));
        Assert.Equal(["Q4-1242", "Q4-1248"], (await shelf.SearchAsync("wheel.stud", retired: true)).First.Select(part => part.Number));
        Assert.Equal((0, 2, 1), ((await shelf.SearchAsync("quillon damper", retired: true)).Matching, (await shelf.SearchAsync("", retired: true)).InUse, (await shelf.SearchAsync("", retired: true)).Retired));
    }

    private async Task<string?> RetireAsync(bool retired)
    {
        var part = await shop.OneAsync();
        return await shop.Desk.RetireAsync(part.Id, part.Revision, retired);
    }
}
