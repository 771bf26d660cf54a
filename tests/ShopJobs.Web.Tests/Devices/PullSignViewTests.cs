using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Tests.Step;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>After a pull the page says how it came out in a word, in the nut's own hexagon, and names the tone for it.</summary>
public sealed class PullSignViewTests : BunitContext
{
    private readonly StepBench bench = StepBench.Wheel().HandTight();

    [Fact]
    public void Before_the_first_pull_there_is_nothing_to_say()
    {
        var view = Draw();

        Assert.False(view.Find(".pull-answer").HasAttribute("data-pull-sign"));
        Assert.Empty(view.Find("[role=status]").TextContent.Trim());
    }

    [Fact]
    public void In_range_and_held_differ_in_word_hexagon_and_tone()
    {
        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[0], 1, 50, TestTools.Dial);
        var inRange = Draw();
        Assert.Equal("in-range", inRange.Find(".pull-answer").GetAttribute("data-pull-sign"));
        Assert.Contains("IN RANGE", inRange.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Contains("NEXT: 3", inRange.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Empty(inRange.FindAll(".hexagon-frame"));

        bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[2], 1, 75, TestTools.Dial);
        var held = Draw();
        Assert.Equal("held", held.Find(".pull-answer").GetAttribute("data-pull-sign"));
        Assert.Contains("HELD", held.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Single(held.FindAll(".hexagon-frame"));
    }

    private IRenderedComponent<PullSignView> Draw() => Render<PullSignView>(view => view.Add(one => one.Scene, bench.Scene("seat")));
}
