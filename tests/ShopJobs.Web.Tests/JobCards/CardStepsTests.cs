using AngleSharp.Dom;
using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.JobCards;
using ShopJobs.Web.Tests.Step;

namespace ShopJobs.Web.Tests.JobCards;

/// <summary>The steps of a job to choose from when a card is entered.</summary>
public sealed class CardStepsTests : BunitContext
{
    [Fact]
    public void Each_step_is_one_line_and_each_of_its_places_a_link_that_says_step_place_and_standing()
    {
        var placed = StepBench.Wheel().Scene("seat").Placed;
        var (signed, here) = (placed.Steps.First(), placed.Steps.Skip(1).First());

        var list = Render<CardSteps>(parameters => parameters
            .Add(steps => steps.Placed, placed)
            .Add(steps => steps.Here, here)
            .Add(steps => steps.Href, one => $"/card/{one.Id}")
            .Add(steps => steps.Standing, one => one == signed ? StepStanding.Signed : StepStanding.NotSigned));

        Assert.Equal(placed.Steps.Select(one => one.Step).Distinct().Count(), list.FindAll("li").Count);
        var links = list.FindAll("a");
        Assert.Equal(
            placed.Steps.Zip(links, (one, link) => $"{link.TextContent}, {one.Title()}: {(one == signed ? "signed" : "not signed")}"),
            links.Select(link => link.GetAttribute("aria-label")));
        Assert.Equal(["FL"], links.Select(link => link.TextContent).Distinct());
        Assert.Equal($"/card/{here.Id}", Assert.Single(links, link => link.GetAttribute("aria-current") == "step").GetAttribute("href"));
        Assert.Equal(links[0], Assert.Single(links, link => link.ClassList.Contains("is-signed")));
    }
}
