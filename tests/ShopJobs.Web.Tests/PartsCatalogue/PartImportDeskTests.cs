using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Demo;

namespace ShopJobs.Web.Tests.PartsCatalogue;

/// <summary>A file is taken in as it was looked at, all of it or nothing.</summary>
public sealed class PartImportDeskTests : IAsyncLifetime
{
    private const string Headings = "Number,Maker,Name,Fills,Thread,Strength,Single use,Price,Currency,Out of use\n";
    private PartShop shop = default!;

    public async Task InitializeAsync() => shop = await PartShop.OpenAsync();

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task A_file_says_what_is_new_changed_and_the_same_and_is_written_with_who_and_when()
    {
        await shop.EnterAsync(PartShop.Stud(), PartShop.Stud("Q4-1248"));
        const string file = Headings
            + "Q4-1242,Quillon,Wheel stud 42 mm,wheel.stud,M12x1.5,12.9,yes,8.45,EUR,no\n"
            + "q4-1248,QUILLON,Wheel stud 48 mm,wheel.stud,M12x1.5,12.9,yes,9.05,EUR,no\n"
            + "T-220F,Tarnwick,Front damper,,,,,642.5,GBP,\n";
        var plan = await shop.LookAsync(file);
        Assert.Equal("1 new, 1 changed, 1 the same", plan.Counts);
        shop.Disk.Time.Advance(TimeSpan.FromMinutes(5));

        var outcome = await shop.TakeInAsync(file);

        Assert.Null(outcome.Refusal);
        Assert.Equal("1 new, 1 changed, 1 the same", outcome.Plan!.Counts);
        var (same, changed, added) = await shop.AllAsync() is [var one, var two, var three] ? (one, two, three) : throw new InvalidOperationException("Not three parts.");
        Assert.Equal(("QUILLON", "q4-1248", "Wheel stud 48 mm", 9.05m), (changed.Maker, changed.Number, changed.Name, changed.Price!.Value));
        Assert.Equal(("Tarnwick", "T-220F", 642.5m, "GBP"), (added.Maker, added.Number, added.Price!.Value, added.Currency));
        var now = shop.Disk.Time.GetUtcNow().UtcDateTime;
        Assert.Equal((now.AddMinutes(-5), now, now), (same.ChangedAt, changed.ChangedAt, added.ChangedAt));
        Assert.Equal(await shop.Disk.IdOfAsync(DemoPeople.Lead.Name), added.ChangedBy);
        Assert.Empty(await DraftsAsync());
    }

    [Fact]
    public async Task An_export_that_is_imported_changes_nothing()
    {
        var formula = PartShop.Stud("=1+1");
        (formula.Maker, formula.Name, formula.Price) = ("@Brackholm", "+stud, \"long\"", "");
        var apostrophe = PartShop.Stud("'-5");
        apostrophe.Name = "''=x";
        await shop.EnterAsync(
            PartShop.Stud(), formula, apostrophe, PartShop.Stud("-100"), PartShop.Stud("'s"), new PartForm { Maker = "Übermaß; GmbH", Number = "0012", Name = "<script>alert(1)</script>" });
        Assert.Null(await shop.Desk.RetireAsync((await shop.AllAsync())[0].Id, (await shop.AllAsync())[0].Revision, retired: true));
        await shop.Disk.RowsAsync(rows => rows.Parts.Where(part => part.Number == "-100").ExecuteUpdateAsync(part => part.SetProperty(row => row.Fills, "wheel.gone")));
        var before = (await shop.AllAsync()).Select(part => (part.Id, part.Revision)).ToList();
        var file = PartsCsv.Write(await shop.AllAsync());

        var plan = await shop.LookAsync(file, "GBP");

        Assert.Empty(plan.Problems);
        Assert.Equal("0 new, 0 changed, 6 the same", plan.Counts);
        Assert.False(plan.CanBeTaken);
        Assert.Null((await shop.TakeInAsync(file)).Refusal);
        Assert.Equal(before, (await shop.AllAsync()).Select(part => (part.Id, part.Revision)));
    }

    [Fact]
    public async Task An_export_fills_an_empty_catalogue_with_the_same_parts()
    {
        var formula = PartShop.Stud("=1+1");
        formula.Name = "'@x";
        await shop.EnterAsync(PartShop.Stud(), formula);
        Assert.Null(await shop.Desk.RetireAsync((await shop.AllAsync())[0].Id, (await shop.AllAsync())[0].Revision, retired: true));
        var file = PartsCsv.Write(await shop.AllAsync());
        await shop.Disk.RowsAsync(rows => rows.Parts.ExecuteDeleteAsync());

        Assert.Null((await shop.TakeInAsync(file)).Refusal);

        Assert.Equal(file, PartsCsv.Write(await shop.AllAsync()));
        Assert.Equal(2, (await shop.AllAsync()).Count);
    }

    [Theory]
    [InlineData("Q4,Quillon,Stud,,,,,abc,,", "Row 2, price: “abc” is no price")]
    [InlineData("Q4,Quillon,Stud,,,,,-1,,", "Row 2, price: “-1” is no price")]
    [InlineData("Q4,Quillon,Stud,,,,,'-1,,", "Row 2, price: “-1” is no price")]
    [InlineData("Q4,Quillon,Stud,,,,,1e30,,", "Row 2, price: “1e30” is no price")]
    [InlineData("Q4,Quillon,Stud,,,,,10000000,,", "Row 2, price: “10000000” is no price")]
    [InlineData("Q4,Quillon,Stud,,,,,5,EURO,", "Row 2, currency: Write the currency in three letters")]
    [InlineData("Q4,Quillon,Stud,,,,,5 GBP,EUR,", "Row 2, price: The price is in GBP, the currency is “EUR”")]
    [InlineData("Q4,Quillon,Stud,wheel.nutt,,,,,,", "Row 2, fills: “wheel.nutt” is no joint of the shop's register")]
    [InlineData("Q4,Quillon,Stud,,M99q,,,,,", "Row 2, thread: \"M99q\" is not a thread size known here")]
    [InlineData("Q4,Quillon,Stud,,,13.9,,,,", "Row 2, strength: \"13.9\" is not a strength class")]
    [InlineData("Q4,Quillon,Stud,,,,maybe,,,", "Row 2, single use: “maybe” is neither yes nor no")]
    [InlineData("Q4,Quillon,Stud,,,,,,,maybe", "Row 2, out of use: “maybe” is neither yes nor no")]
    [InlineData(",Quillon,Stud,,,,,,,", "Row 2, number: Write the maker's number of the part")]
    [InlineData("Q4,,Stud,,,,,,,", "Row 2, maker: Write who makes it")]
    [InlineData("Q4,Quillon,,,,,,,,", "Row 2, name: Write what the shop calls it")]
    [InlineData("Q4,Quillon\uFFFE,Stud,,,,,,,", "Row 2, maker: It has a character that nobody sees")]
    [InlineData("Q4,Quillon,Stud", "Row 2: it has 3 cells, the headings are 10")]
    [InlineData("Q4,Quillon,Stud,,,,,,,,x", "Row 2: it has 11 cells, the headings are 10")]
    public async Task A_cell_that_is_wrong_is_named_and_nothing_of_the_file_is_written(string row, string said)
    {
        var file = Headings + row + "\nT-220F,Tarnwick,Front damper,,,,,,,\n";

        var plan = await shop.LookAsync(file);
        var outcome = await shop.TakeInAsync(file);

        Assert.StartsWith(said, Assert.Single(plan.Problems).ToString(), StringComparison.Ordinal);
        Assert.False(plan.CanBeTaken);
        Assert.Equal(PartImportDesk.Wrong, outcome.Refusal);
        Assert.Empty(await shop.AllAsync());
    }

    [Fact]
    public async Task A_huge_cell_is_shown_shortened()
    {
        var plan = await shop.LookAsync(Headings + $"Q4,Quillon,Stud,,{new string('M', 100_000)},{new string('9', 100_000)},,{new string('1', 100_000)},,\n");

        Assert.Equal([PartColumn.Thread, PartColumn.Strength, PartColumn.Price], plan.Problems.Select(problem => problem.Column!.Value));
        Assert.All(plan.Problems, problem => Assert.InRange(problem.ToString().Length, 1, 250));
    }

    [Fact]
    public async Task A_part_that_is_in_a_file_twice_is_refused_with_both_rows()
    {
        var plan = await shop.LookAsync(Headings + "Q4,Quillon,Stud,,,,,,,\nT1,Tarnwick,Damper,,,,,,,\nq4,QUILLON,Stud,,,,,,,\n");

        Assert.Equal("Row 4, number: “q4” of “QUILLON” is in row 2 already. Keep one of the two.", Assert.Single(plan.Problems).ToString());
    }

    [Fact]
    public async Task The_first_hundred_that_are_wrong_are_kept_and_all_are_counted()
    {
        var plan = await shop.LookAsync(Headings + string.Concat(Enumerable.Range(1, 150).Select(row => $"Q{row},Quillon,Stud,,,,,abc,,\n")));

        Assert.Equal((100, 150), (plan.Problems.Count, plan.AllProblems));
        Assert.Equal([2, 101], [plan.Problems[0].Row, plan.Problems[^1].Row]);
    }

    [Fact]
    public async Task A_column_that_is_not_in_the_file_leaves_a_part_as_it_is_and_an_empty_cell_takes_away()
    {
        await shop.EnterAsync(PartShop.Stud());
        Assert.Null(await shop.Desk.RetireAsync((await shop.OneAsync()).Id, (await shop.OneAsync()).Revision, retired: true));

        Assert.Null((await shop.TakeInAsync("Number;Maker;Price\nQ4-1242;Quillon;9,05\n")).Refusal);

        var part = await shop.OneAsync();
        Assert.Equal(
            ("Wheel stud 42 mm", "wheel.stud", "M12x1.5", "12.9", true, 9.05m, "EUR"),
            (part.Name, part.Fills, part.Thread, part.Strength, part.SingleUse, part.Price!.Value, part.Currency));
        Assert.NotNull(part.RetiredAt);

        Assert.Null((await shop.TakeInAsync("Number;Maker;Fills;Thread;Strength;Single use;Price;Out of use\nQ4-1242;Quillon;;;;;;\n")).Refusal);

        part = await shop.OneAsync();
        Assert.Equal((null, null, null, false, null, null, null), (part.Fills, part.Thread, part.Strength, part.SingleUse, part.Price, part.Currency, part.RetiredAt));
        Assert.Equal("Wheel stud 42 mm", part.Name);
    }

    [Fact]
    public async Task A_new_part_needs_its_name_and_one_that_is_there_does_not()
    {
        await shop.EnterAsync(PartShop.Stud());

        var plan = await shop.LookAsync("Number,Maker,Price\nQ4-1242,Quillon,9\nQ4-1248,Quillon,9\n");

        Assert.StartsWith("Row 3, name: Write what the shop calls it", Assert.Single(plan.Problems).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Number,Maker,Name,Price\nQ4,Quillon,Stud,5\n", "GBP", "GBP")]
    [InlineData("Number,Maker,Name,Price\nQ4,Quillon,Stud,5 CHF\n", "GBP", "CHF")]
    [InlineData("Number,Maker,Name,Price,Currency\nQ4,Quillon,Stud,5,\n", "GBP", "GBP")]
    [InlineData("Number,Maker,Name,Price,Currency\nQ4,Quillon,Stud,5,chf\n", "GBP", "CHF")]
    public async Task A_price_is_in_its_own_currency_or_in_the_one_that_is_given(string file, string given, string currency)
    {
        var plan = await shop.LookAsync(file, given);

        Assert.Equal((5m, currency), (Assert.Single(plan.Lines).Values.Price!.Value, plan.Lines[0].Values.Currency));
    }

    [Fact]
    public async Task What_was_looked_at_is_what_is_taken_in()
    {
        await shop.EnterAsync(PartShop.Stud());
        var bytes = Encoding.UTF8.GetBytes("Number,Maker,Price\nQ4-1242,Quillon,9\n");
        var (id, _) = await shop.Import.KeepAsync("parts.csv", bytes);
        var file = (await shop.Import.FindAsync(id))!.File;
        var columns = PartColumns.Guess(file.Headings);
        var seen = (await shop.Import.LookAsync(file, columns, "EUR")).Mark;
        var meanwhile = PartForm.Of(await shop.OneAsync());
        meanwhile.Price = "8.99";
        await shop.EnterAsync(meanwhile);

        var refused = await shop.Import.TakeInAsync(id, columns, "EUR", seen);

        Assert.Equal(PartImportDesk.Changed, refused.Refusal);
        Assert.Equal(8.99m, (await shop.OneAsync()).Price);
        Assert.Equal(PartImportDesk.Changed, (await shop.Import.TakeInAsync(id, columns, "GBP", refused.Plan!.Mark)).Refusal);
        Assert.Null((await shop.Import.TakeInAsync(id, columns, "EUR", refused.Plan!.Mark)).Refusal);
        Assert.Equal(9m, (await shop.OneAsync()).Price);
        Assert.Equal(new ImportOutcome(PartImportDesk.Gone, null), await shop.Import.TakeInAsync(id, columns, "EUR", refused.Plan!.Mark));
    }

    [Fact]
    public async Task The_right_is_asked_again_when_it_is_written()
    {
        var bytes = Encoding.UTF8.GetBytes(Headings + "Q4,Quillon,Stud,,,,,,,\n");
        var (id, _) = await shop.Import.KeepAsync("parts.csv", bytes);
        var file = (await shop.Import.FindAsync(id))!.File;
        var columns = PartColumns.Guess(file.Headings);
        var seen = (await shop.Import.LookAsync(file, columns, "EUR")).Mark;
        var lead = await shop.Disk.IdOfAsync(DemoPeople.Lead.Name);
        await shop.Disk.RowsAsync(rows => rows.Rights.Where(right => right.PersonId == lead && right.Right == Right.Lead).ExecuteDeleteAsync());

        Assert.Equal(new ImportOutcome(PartCatalogueDesk.NotYours, null), await shop.Import.TakeInAsync(id, columns, "EUR", seen));
        Assert.Equal(PartCatalogueDesk.NotYours, (await shop.Import.KeepAsync("parts.csv", bytes)).Refusal);
        Assert.Empty(await shop.AllAsync());
    }

    [Fact]
    public async Task A_file_is_seen_and_taken_in_by_nobody_else()
    {
        var (id, _) = await shop.Import.KeepAsync("parts.csv", Encoding.UTF8.GetBytes(Headings + "Q4,Quillon,Stud,,,,,,,\n"));
        var chassis = await shop.Disk.IdOfAsync(DemoPeople.Chassis.Name);
        await shop.Disk.RowsAsync(async rows =>
        {
            rows.Rights.Add(new() { Id = Guid.NewGuid(), PersonId = chassis, Right = Right.Lead, From = Shop.ShopOnDisk.Today });
            return await rows.SaveChangesAsync();
        });
        await shop.Disk.SignInAsync(DemoPeople.Chassis);

        Assert.Null(await shop.Import.FindAsync(id));
        Assert.Equal(PartImportDesk.Gone, (await shop.Import.TakeInAsync(id, PartColumns.Guess(["Number", "Maker", "Name"]), "EUR", "")).Refusal);
    }

    [Fact]
    public async Task One_file_a_person_is_kept_and_none_for_longer_than_an_hour()
    {
        var bytes = Encoding.UTF8.GetBytes(Headings + "Q4,Quillon,Stud,,,,,,,\n");
        var (first, _) = await shop.Import.KeepAsync("first.csv", bytes);
        var (second, _) = await shop.Import.KeepAsync(new string('x', 300) + ".csv", bytes);

        Assert.Null(await shop.Import.FindAsync(first));
        Assert.Equal(PartImportDraft.NameLength, (await shop.Import.FindAsync(second))!.Name.Length);
        Assert.Single(await DraftsAsync());

        shop.Disk.Time.Advance(PartImportDraft.Kept + TimeSpan.FromSeconds(1));
        await shop.Disk.SignInAsync(DemoPeople.Lead);
        Assert.Null(await shop.Import.FindAsync(second));
        await shop.Disk.SignInAsync(DemoPeople.Lead);
        var (third, _) = await shop.Import.KeepAsync("third.csv", bytes);
        Assert.Equal(third, Assert.Single(await DraftsAsync()).Id);
    }

    [Fact]
    public async Task A_file_of_a_hundred_thousand_rows_is_refused_before_anything_is_written()
    {
        var rows = string.Concat(Enumerable.Range(1, 100_000).Select(row => string.Create(CultureInfo.InvariantCulture, $"{row},Quillon,stud\n")));

        var (_, refusal) = await shop.Import.KeepAsync("large.csv", Encoding.UTF8.GetBytes("Number,Maker,Name\n" + rows));

        Assert.Contains("more than 20,000 rows", refusal, StringComparison.Ordinal);
        Assert.Empty(await DraftsAsync());
        Assert.Empty(await shop.AllAsync());
    }

    [Fact]
    public async Task A_file_with_as_many_rows_as_are_allowed_is_taken_in_as_a_whole()
    {
        var rows = string.Concat(Enumerable.Range(1, PartsFile.MostRows).Select(row => string.Create(CultureInfo.InvariantCulture, $"{row},Quillon,stud,M8,8.8,1.5\n")));

        var outcome = await shop.TakeInAsync("Number,Maker,Name,Thread,Strength,Price\n" + rows);

        Assert.Null(outcome.Refusal);
        Assert.Equal(PartsFile.MostRows, await shop.Disk.RowsAsync(shop => shop.Parts.CountAsync(part => part.Thread == "M8x1.25")));
        Assert.Equal(PartCatalogueShelf.Most, (await shop.Disk.Get<PartCatalogueShelf>().SearchAsync("", retired: false)).First.Count);
    }

    [Theory]
    [InlineData("Part-No.,MANUFACTURER,Description,unit price", "Number=0 Maker=1 Name=2 Price=3")]
    [InlineData("Artikelnummer,Hersteller,Bezeichnung,Preis,Währung", "Number=0 Maker=1 Name=2 Price=3 Currency=4")]
    [InlineData("Name,Number,Number,Maker", "Number=1 Maker=3 Name=0")]
    [InlineData("Out of use,Single use,x", "SingleUse=1 OutOfUse=0")]
    [InlineData("x,y,z", "")]
    public void Columns_are_guessed_from_their_headings(string headings, string columns) =>
        Assert.Equal(columns, PartColumns.Guess(headings.Split(',')).ToString());

    [Fact]
    public void Columns_that_are_picked_count_and_those_that_the_file_does_not_have_do_not()
    {
        var picked = new Dictionary<string, string> { ["col-number"] = "2", ["col-maker"] = "7", ["col-name"] = "-1", ["col-price"] = "x", ["col-fills"] = "0" };

        var columns = PartColumns.Picked(picked.GetValueOrDefault, 3)!;

        Assert.Equal("Number=2 Fills=0", columns.ToString());
        Assert.Equal(PartColumn.Maker, columns.Missing);
        Assert.Null(PartColumns.Picked(_ => null, 3));
    }

    private Task<List<PartImportDraft>> DraftsAsync() => shop.Disk.RowsAsync(rows => rows.PartImportDrafts.ToListAsync());
}
