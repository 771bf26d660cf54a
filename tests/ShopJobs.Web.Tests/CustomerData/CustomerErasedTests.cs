using System.Net;
using System.Text;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CustomerData;
using ShopJobs.Web.Components.Photos;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.CustomerData;

/// <summary>A customer's data is given out whole, and erased without a scratch to the books.</summary>
public sealed class CustomerErasedTests : IAsyncLifetime, IDisposable
{
    private readonly OpenShop shop = new();
    private CustomerBench bench = default!;

    private string Database => shop.Services.GetRequiredService<DataFolder>().Database;

    public async Task InitializeAsync() => bench = await CustomerBench.SetUpAsync(shop);

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task The_file_has_everything_and_no_secret()
    {
        var text = await bench.FileAsync();

        Assert.All(CustomerBench.Personal, words => Assert.Contains(JsonEncodedText.Encode(words, System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping).ToString(), text, StringComparison.Ordinal));
        Assert.DoesNotContain(bench.Link[3..], text, StringComparison.Ordinal);
        var car = JsonDocument.Parse(text).RootElement.GetProperty("cars").EnumerateArray().Single();
        Assert.Equal(1, car.GetProperty("summaries").EnumerateArray().Single().GetProperty("page").GetProperty("summary").GetProperty("version").GetInt32());
        Assert.Equal(2, car.GetProperty("visits").GetArrayLength());
        Assert.Equal(1, car.GetProperty("links").GetArrayLength());
        Assert.Equal(CustomerBench.Accepted, car.GetProperty("acceptances").EnumerateArray().Single().GetProperty("text").GetString());
    }

    [Fact]
    public async Task Photographs_of_the_car_are_given_out_and_go_and_what_was_written_to_them_stays()
    {
        var picture = await bench.PhotographAsync("Dent in the sill");
        var given = JsonDocument.Parse(await bench.FileAsync()).RootElement.GetProperty("cars").EnumerateArray().Single().GetProperty("photographs").EnumerateArray().Single();
        Assert.Equal(("rear", "Dent in the sill"), (given.GetProperty("view").GetString(), given.GetProperty("caption").GetString()));
        Assert.Equal(new byte[] { 0xFF, 0xD8, 0xFF, 0xD9 }, given.GetProperty("jpeg").GetBytesFromBase64());
        await bench.LeaveAsync();
        Assert.Contains("1 photograph of the car. What people of the shop wrote to them stays.", bench.Eraser.Plan(bench.Customer)!.Goes);
        Assert.NotNull(shop.Services.GetRequiredService<PhotoShelf>().Find(picture));

        Assert.True((await bench.EraseAsync()).Recorded);

        Assert.Null(shop.Services.GetRequiredService<PhotoShelf>().Find(picture));
        Assert.Null(await shop.Services.GetRequiredService<PhotoShelf>().FindSmallAsync(picture));
        var left = JsonDocument.Parse(await bench.FileAsync()).RootElement.GetProperty("cars").EnumerateArray().Single().GetProperty("photographs").EnumerateArray().Single();
        Assert.Equal((JsonValueKind.Null, "Dent in the sill"), (left.GetProperty("jpeg").ValueKind, left.GetProperty("caption").GetString()));
        Assert.Empty(new LogbookVerifier(Database, EntryCodec.KeysOf).Verify().Problems);
    }

    [Fact]
    public async Task Only_the_lead_takes_the_file()
    {
        var path = $"/customers/{bench.Customer.Value}/file";
        Assert.NotEqual(HttpStatusCode.OK, (await shop.NewBrowser().GetAsync(path)).Status);
        var lead = await LeadAsync();

        var answer = await lead.GetAsync(path);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains(CustomerBench.Name, answer.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await lead.GetAsync($"/customers/{Guid.NewGuid()}/file")).Status);
        await shop.RowsAsync(rows => rows.Rights.Where(right => right.Right == Right.Lead).ExecuteDeleteAsync());
        Assert.DoesNotContain(CustomerBench.Name, (await lead.GetAsync(path)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erasing_leaves_no_personal_word_in_the_file_and_every_chain_as_it_was()
    {
        await bench.LeaveAsync();
        var before = Verify();
        Assert.Empty(before.Problems);
        var records = Entries();

        var answer = await bench.EraseAsync();

        Assert.True(answer.Recorded, answer.NotSaved);
        var after = Verify();
        Assert.Empty(after.Problems);
        Assert.Equal(before.Heads, after.Heads);
        Assert.Equal(records, Entries());
        Assert.True(after.Erased > before.Erased);
        Assert.All(CustomerBench.Personal, words => Assert.False(IsOnDisk(words), $"“{words}” is still in the database file."));
        var left = await bench.FileAsync();
        Assert.All(CustomerBench.Personal, words => Assert.DoesNotContain(words, left, StringComparison.Ordinal));
        Assert.Contains(CustomerEraser.PseudonymOf(bench.Customer), left, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erasing_ends_the_links_keeps_that_it_was_confirmed_and_says_who_signed()
    {
        await bench.LeaveAsync();
        Assert.Equal(HttpStatusCode.OK, (await shop.NewBrowser().GetAsync(bench.Link)).Status);

        Assert.True((await bench.EraseAsync()).Recorded);

        Assert.Equal(HttpStatusCode.NotFound, (await shop.NewBrowser().GetAsync(bench.Link)).Status);
        var (said, customer, note) = await shop.RowsAsync(async rows => (
            await rows.Acknowledgements.SingleAsync(), await rows.Customers.SingleAsync(), await rows.DoorNotes.OrderBy(row => row.Id).LastAsync(row => row.Event == DoorEvent.CustomerErased)));
        Assert.Equal((1, ""), (said.Version, said.Words));
        Assert.Equal((bench.Work.Lead.Person, shop.Time.GetUtcNow().UtcDateTime), (customer.ErasedBy!.Value, customer.ErasedAt));
        Assert.Equal(bench.Work.Lead.Person, note.ByPersonId);
    }

    [Fact]
    public async Task While_the_car_is_here_or_at_work_nothing_is_erased()
    {
        var plan = bench.Eraser.Plan(bench.Customer)!;
        Assert.Collection(
            plan.Refusals,
            line => Assert.Contains("Blue is here.", line, StringComparison.Ordinal),
            line => Assert.Contains("Work on Blue is not finished.", line, StringComparison.Ordinal));

        var answer = await bench.EraseAsync();

        Assert.Contains("Blue is here.", answer.NotSaved, StringComparison.Ordinal);
        Assert.Equal(CustomerBench.Name, (await shop.RowsAsync(rows => rows.Customers.SingleAsync())).Name);
        Assert.True(IsOnDisk(CustomerBench.Why));
    }

    [Fact]
    public async Task What_came_after_it_was_shown_is_not_erased_unseen()
    {
        await bench.LeaveAsync();
        var shown = bench.Eraser.Plan(bench.Customer)!;
        await bench.ComeAsync("A new word.");
        await bench.GoneAsync("A friend.");

        var answer = await bench.EraseAsync(shown);

        Assert.Contains("no longer what was shown", answer.NotSaved, StringComparison.Ordinal);
        Assert.Contains(CustomerBench.Why, await bench.FileAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_who_is_not_the_lead_erases_nothing()
    {
        await bench.LeaveAsync();
        await shop.RowsAsync(rows => rows.Rights.Where(right => right.Right == Right.Lead).ExecuteDeleteAsync());

        Assert.Contains("The lead signs.", (await bench.EraseAsync()).NotSaved, StringComparison.Ordinal);
        Assert.True(IsOnDisk(CustomerBench.Why));
    }

    [Fact]
    public async Task The_owner_before_and_the_owner_of_today_each_have_their_own_time_of_the_car()
    {
        await bench.LeaveAsync();
        var buyer = new CustomerId(Guid.NewGuid());
        shop.Time.Advance(TimeSpan.FromDays(1));
        await shop.RowsAsync(async rows =>
        {
            rows.Customers.Add(new Customer { Id = buyer, Name = "Pell Draymoor" });
            rows.OwnersBefore.Add(new OwnerBefore { Id = Guid.NewGuid(), CarId = bench.Work.Car, CustomerId = bench.Customer, Until = shop.Time.GetUtcNow().UtcDateTime });
            var car = await rows.Cars.SingleAsync(row => row.Id == bench.Work.Car);
            (car.CustomerId, car.Mark, car.Note) = (buyer, "PD 9", "Likes tea.");
            return await rows.SaveChangesAsync();
        });
        shop.Time.Advance(TimeSpan.FromDays(1));
        await bench.ComeAsync("Draymoor wants a look at the brakes.");
        await bench.GoneAsync("Pell Draymoor");
        Assert.DoesNotContain("Draymoor", await bench.FileAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain("PD 9", await bench.FileAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain("Oarsby", await bench.FileAsync(buyer), StringComparison.Ordinal);
        Assert.DoesNotContain(CustomerBench.Why, await bench.FileAsync(buyer), StringComparison.Ordinal);

        Assert.True((await bench.EraseAsync()).Recorded);

        Assert.False(IsOnDisk(CustomerBench.Why));
        var file = await bench.FileAsync(buyer);
        Assert.All(
            (string[])["Pell Draymoor", "PD 9", "Likes tea.", "Draymoor wants a look at the brakes."],
            words => Assert.Contains(words, file, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_page_says_before_what_goes_and_what_stays()
    {
        var lead = await LeadAsync();

        var page = (await lead.GetAsync($"/customers/{bench.Customer.Value}/data")).Page;

        Assert.Equal($"Data of {CustomerBench.Name}", page.QuerySelector("h1")!.TextContent);
        var erase = page.QuerySelector("section[aria-labelledby=erase]")!.TextContent;
        Assert.All(bench.Eraser.Plan(bench.Customer)!.Goes.Concat(ErasurePlan.Stays), line => Assert.Contains(line, erase, StringComparison.Ordinal));
        Assert.Contains("Blue is here.", page.QuerySelector("#erase-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.True(page.QuerySelector("[aria-describedby=erase-wrong]")!.HasAttribute("disabled"));
        Assert.Equal($"/customers/{bench.Customer.Value}/file", page.QuerySelector("a[download]")!.GetAttribute("href"));
    }

    private async Task<Browser> LeadAsync()
    {
        Assert.Equal("/", (await bench.Tablet.SignInAsync("Edda", DemoPeople.Lead.Pin)).Path);
        return bench.Tablet;
    }

    private VerifyReport Verify() => new LogbookVerifier(Database, EntryCodec.KeysOf).Verify();

    private string Entries()
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Database, Mode = SqliteOpenMode.ReadOnly }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT group_concat(hex(envelope)) FROM (SELECT envelope FROM entries ORDER BY id)";
        return (string)command.ExecuteScalar()!;
    }

    /// <summary>True when the words stand anywhere in the database's files, in rows, in free pages or in the write-ahead log.</summary>
    private bool IsOnDisk(string words) => Directory.EnumerateFiles(Path.GetDirectoryName(Database)!, Path.GetFileName(Database) + "*").Any(file =>
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray().AsSpan().IndexOf(Encoding.UTF8.GetBytes(words)) >= 0;
    });
}
