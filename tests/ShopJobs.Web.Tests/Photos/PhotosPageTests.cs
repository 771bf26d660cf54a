using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Components.Photos;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Signing;

namespace ShopJobs.Web.Tests.Photos;

/// <summary>The page of a car's photographs in each of its states.</summary>
public sealed class PhotosPageTests : DialogBench
{
    public PhotosPageTests() => ComponentFactories.AddStub<AntiforgeryToken>();

    [Fact]
    public async Task Eight_empty_tiles_name_their_views_and_take_a_picture_with_the_camera()
    {
        await SitDownAsync(DemoPeople.Chassis);
        var page = Page();

        Assert.Equal("0 of 8", page.Find(".photo-count strong").TextContent);
        Assert.Equal(
            ["Front", "Front right", "Right side", "Rear right", "Rear", "Rear left", "Left side", "Front left"], page.FindAll(".photo-tile.is-empty h2").Select(view => view.TextContent));
        Assert.Equal(
            [.. PhotoWords.Views.Select(view => view.ToString()), "other"], page.FindAll("form[data-photo]").Select(form => form.GetAttribute("data-photo")));
        Assert.All(page.FindAll("input[type=file]"), input => Assert.Equal(("environment", "image/*"), (input.GetAttribute("capture"), input.GetAttribute("accept"))));
        Assert.Contains("None yet.", page.Find(".photo-others").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[role=alert]"));
    }

    [Fact]
    public async Task A_picture_that_is_taken_elsewhere_is_seen_to_arrive()
    {
        await SitDownAsync(DemoPeople.Chassis);
        var page = Page();

        await ElsewhereAsync(DemoPeople.Engines, new TakePhoto(Picture(1), CarView.Rear));
        Says(page, "1 of 8");

        var tile = page.Find(".photo-tile.is-rear");
        Assert.DoesNotContain("is-empty", tile.ClassName!, StringComparison.Ordinal);
        Assert.Equal((Links.SmallPhoto(Picture(1)), "The car, rear"), (tile.QuerySelector("img")!.GetAttribute("src"), tile.QuerySelector("img")!.GetAttribute("alt")));
    }

    [Fact]
    public async Task A_picture_is_looked_at_large_with_who_and_when_and_voided_with_a_reason()
    {
        await ElsewhereAsync(DemoPeople.Chassis, new TakePhoto(Picture(1), CarView.Rear));
        await SitDownAsync(DemoPeople.Chassis);
        var page = Page(State.Number);
        var large = page.Find("#photo");
        Assert.Equal(("Rear", Links.Photo(Picture(1))), (large.QuerySelector("h2")!.TextContent, large.QuerySelector("img")!.GetAttribute("src")));
        Assert.Contains(DemoPeople.Chassis.Name, large.TextContent, StringComparison.Ordinal);
        Assert.Contains("2 Mar 2026, 09:01", large.TextContent, StringComparison.Ordinal);

        await page.FindAll("button").Single(button => button.TextContent == "Taken by mistake").ClickAsync(new());
        await page.Find("#photo form").SubmitAsync();
        Assert.Contains("Write the reason", page.Find("#photo").TextContent, StringComparison.Ordinal);
        Assert.Single(State.Photos);
        await page.Find("#photo-why").InputAsync(new() { Value = "That is the other car" });
        await page.Find("#photo form").SubmitAsync();

        Says(page, "The photograph is void.");
        Assert.Empty(page.FindAll("#photo"));
        Assert.Equal("0 of 8", page.Find(".photo-count strong").TextContent);
        Assert.Empty(State.Photos);
    }

    [Fact]
    public async Task What_somebody_else_took_is_only_looked_at_and_the_lead_voids_it()
    {
        await ElsewhereAsync(DemoPeople.Chassis, new TakePhoto(Picture(1), CarView.Rear));
        await SitDownAsync(DemoPeople.Engines);
        Assert.DoesNotContain("Taken by mistake", Page(State.Number).Find("#photo").TextContent, StringComparison.Ordinal);

        await SitDownAsync(DemoPeople.Lead);

        Assert.Contains("Taken by mistake", Page(State.Number).Find("#photo").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_may_not_record_looks_on()
    {
        await ElsewhereAsync(DemoPeople.Chassis, new TakePhoto(Picture(1), CarView.Rear));
        await ElsewhereAsync(DemoPeople.Chassis, new TakePhoto(Picture(2), null));
        await EndRightAsync(DemoPeople.Engines);
        await SitDownAsync(DemoPeople.Engines);
        var page = Page();

        Assert.Empty(page.FindAll("form"));
        Assert.Equal(7, page.FindAll(".photo-none").Count);
        Assert.Single(page.FindAll(".photo-list li"));
        Assert.Contains("Ask the lead", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photograph_that_is_not_of_this_visit_leads_to_the_logbook()
    {
        await SitDownAsync(DemoPeople.Chassis);

        var page = Page(999);

        Assert.Empty(page.FindAll("#photo"));
        Assert.Contains("Photograph 999 is not among those of this visit", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_car_that_is_not_in_the_book_says_so()
    {
        var page = Draw<PhotosPage>(parameters => parameters.Add(photos => photos.Id, Guid.NewGuid()), "h1");

        Assert.Contains("This car is not in the book", page.Find("h1").TextContent, StringComparison.Ordinal);
    }

    private static ContentDigest Picture(byte number) => ContentDigest.Of([number], [number]);

    private IRenderedComponent<PhotosPage> Page(long? photo = null)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo(Links.Photos(Car, photo));
        return Draw<PhotosPage>(parameters => parameters.Add(photos => photos.Id, Car.Value), ".photo-round");
    }
}
