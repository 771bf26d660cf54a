using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Step;

/// <summary>Ten equal readings in ten seconds are said in the answer to whoever reported them, and stand nowhere else.</summary>
public sealed class PrivateWordTests : IDisposable
{
    private const string Words = "Ten readings alike within ten seconds";
    private static readonly string[] Places = ["front-left", "front-right"];

    private readonly OpenShop shop = new();
    private Browser tablet = null!;
    private CarId car;
    private JobId job;
    private PersonId person;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Its_person_is_told_at_the_tenth_and_what_was_recorded_is_as_it_would_be()
    {
        await OpenAsync();

        var answers = await TenAsync();

        Assert.All(answers.SkipLast(1), answer => Assert.Null(answer["thought"]));
        Assert.StartsWith(Words, answers[^1]["thought"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal(answers[^2]["counts"]!.GetValue<bool>(), answers[^1]["counts"]!.GetValue<bool>());
        Assert.Equal(answers[^2]["words"]!.AsArray().Count, answers[^1]["words"]!.AsArray().Count);
    }

    [Fact]
    public async Task It_stands_on_no_page_of_the_lead_and_in_no_file()
    {
        await OpenAsync();
        await TenAsync();
        await tablet.SignInAsync(DemoPeople.Lead.Name, DemoPeople.Lead.Pin);

        foreach (var path in (string[])["/", "/my-work", "/people", $"/cars/{car.Value}", $"/cars/{car.Value}/logbook", $"/cars/{car.Value}/jobs/{job.Value}/steps/stage-50@front-left"])
        {
            var page = await tablet.GetAsync(path);
            Assert.Equal(System.Net.HttpStatusCode.OK, page.Status);
            Assert.DoesNotContain("alike", page.Text, StringComparison.Ordinal);
        }

        var folder = new FileInfo(shop.Services.GetRequiredService<DataFolder>().Database).Directory!;
        Assert.All(folder.GetFiles("shop.db*"), file => Assert.DoesNotContain("readings alike", Text(file), StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_kept_on_the_tablet_and_came_late_is_not_said_to_be_quick()
    {
        await OpenAsync();

        Assert.All(await TenAsync(late: true), answer => Assert.Null(answer["thought"]));
    }

    private static string Text(FileInfo file)
    {
        using var stream = file.Open(FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new StreamReader(stream, System.Text.Encoding.Latin1);
        return reader.ReadToEnd();
    }

    private async Task OpenAsync()
    {
        tablet = shop.NewBrowser();
        tablet.Cookies["shop.tablet"] = WorkSeed.TabletToken;
        await shop.Services.MigrateShopAsync();
        var seed = new WorkSeed(shop.Services);
        await seed.FurnishAsync();
        (car, job) = await seed.StartAsync("Blue", "P5", DemoPeople.Chassis.Name, Places);
        person = await shop.RowsAsync(rows => rows.People.Where(row => row.Name == DemoPeople.Chassis.Name).Select(row => row.Id).SingleAsync());
        await tablet.SignInAsync(DemoPeople.Chassis.Name, DemoPeople.Chassis.Pin);
    }

    private async Task<List<JsonObject>> TenAsync(bool late = false)
    {
        var answers = new List<JsonObject>();
        foreach (var place in Places)
        {
            for (var nut = 1; nut <= 5; nut++)
            {
                shop.Time.Advance(TimeSpan.FromSeconds(0.5));
                answers.Add(await PullAsync(place, nut, late));
            }
        }

        return answers;
    }

    private async Task<JsonObject> PullAsync(string place, int nut, bool late)
    {
        using var client = shop.CreateClient(new() { AllowAutoRedirect = false, HandleCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, "/cells")
        {
            Content = JsonContent.Create(new
            {
                id = Guid.NewGuid(),
                what = "Pull",
                person = person.Value,
                car = car.Value,
                job = job.Value,
                group = "wheel-nuts",
                positions = new[] { new { key = "wheel.nut", place, number = nut } },
                cycle = 0,
                stage = 1,
                visit = Array.IndexOf([1, 3, 5, 2, 4], nut),
                kind = "Reading",
                unit = "NewtonMetre",
                tool = WorkSeed.WA.Value,
                value = "50.0",
                late,
            }),
        };
        request.Headers.Add("Cookie", string.Join("; ", tablet.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        request.Headers.Add("Origin", "http://localhost");
        using var answer = await client.SendAsync(request);
        return (await answer.Content.ReadFromJsonAsync<JsonObject>())!;
    }
}
