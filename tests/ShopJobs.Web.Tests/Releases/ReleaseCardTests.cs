using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Releases;

public sealed class ReleaseCardTests : ScreenBench
{
    private AskedRelease? asked;

    [Fact]
    public void No_shows_the_first_three_reasons_and_all_on_demand()
    {
        var card = Show(Readings.WithHeldNut(), ReleaseKind.Road);

        Assert.Contains("to road NO", card.Find("h2").TextContent, StringComparison.Ordinal);
        var first = card.FindAll(".release-reasons > li");
        Assert.Equal(3, first.Count);
        Assert.Contains("held: over the permitted maximum", first[0].TextContent, StringComparison.Ordinal);
        Assert.EndsWith("/held/wheel.nut/front-left/1", first[0].QuerySelector("a")!.GetAttribute("href"), StringComparison.Ordinal);
        var held = Readings.Of(Readings.WithHeldNut(), TestPerson.Lee);
        Assert.Equal(held.Now.Gather(held.HoldsOn(ReleaseKind.Road)).Count, card.FindAll(".release-all li").Count);
        Assert.Empty(card.FindAll("button[type=submit]"));
    }

    [Fact]
    public async Task Road_needs_the_odometer_and_says_what_is_not_checked_and_when_it_lapses()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);
        Assert.True(card.Find("button[type=submit]").HasAttribute("disabled"));

        await card.Find(".odometer").InputAsync(new ChangeEventArgs { Value = "48 210,5" });

        var terms = card.Find(".release-terms").TextContent;
        Assert.Contains("9 joints are as found: not checked by us.", terms, StringComparison.Ordinal);
        Assert.Contains("Lapses at 48310.5 km or after 16 Mar 2026", terms, StringComparison.Ordinal);
        Assert.Contains("Ends P5", terms, StringComparison.Ordinal);
        await card.Find("form").SubmitAsync(new());
        Assert.Equal((ReleaseKind.Road, (decimal?)48_210.5m), (asked!.Kind, asked.OdometerKm));
        Assert.Contains("9 joints are as found: not checked by us.", asked.Shown);
    }

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("-5")]
    [InlineData("1.2.3")]
    public async Task Odometer_that_is_no_number_releases_nothing(string typed)
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var card = Show(car, ReleaseKind.Road);

        await card.Find(".odometer").InputAsync(new ChangeEventArgs { Value = typed });
        await card.Find("form").SubmitAsync(new());

        Assert.Null(asked);
    }

    [Fact]
    public async Task Track_with_a_re_torque_due_waits_for_the_customers_written_acceptance()
    {
        var car = Readings.OnTheRoad();
        var reasons = Readings.Of(car, TestPerson.Lee).HoldsOn(ReleaseKind.Track, customerAccepted: true);
        Assert.DoesNotContain(reasons, point => point.Reason == HoldReason.ReTorqueDue);
        var card = Show(car, ReleaseKind.Track);
        Assert.Contains("re-torque after the first drive is not done", card.Markup, StringComparison.Ordinal);

        await card.Find("textarea").InputAsync(new ChangeEventArgs { Value = "Mail of 1 March: I do it myself" });

        Assert.DoesNotContain("re-torque after the first drive is not done", card.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(card.FindAll("textarea"));
    }

    [Fact]
    public void Release_that_ended_says_from_when_and_by_what()
    {
        var car = Readings.OnTheRoad();
        car.Open(TestPerson.Theo, null, car.Positions(TestRegister.Nut, TestRegister.Left));

        var card = Render<ReleaseCard>(parameters => parameters
            .Add(card => card.Reading, Readings.Of(car, TestPerson.Lee))
            .Add(card => card.Kind, ReleaseKind.Road)
            .Add(card => card.Ended, car.Book.ToDictionary(entry => entry.Number))
            .Add(card => card.Names, Readings.Names));

        Assert.Contains($"void from {car.Now:HH:mm}: joint opened: wheel nut front-left", card.Find(".release-stands").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<ReleaseCard> Show(CarAtWork car, ReleaseKind kind) => Render<ReleaseCard>(parameters => parameters
        .Add(card => card.Reading, Readings.Of(car, TestPerson.Lee))
        .Add(card => card.Kind, kind)
        .Add(card => card.Names, Readings.Names)
        .Add(card => card.OnRelease, release => asked = release));
}
