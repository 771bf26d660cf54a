using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

/// <summary>A tool that went out of use before its pull was typed can be named, and the screen says that it will not count.</summary>
public sealed class ToolPickerTests : BunitContext
{
    private readonly StepBench bench = StepBench.Wheel().HandTight();
    private readonly List<ToolId?> used = [];

    public ToolPickerTests() => bench.Car.TellTool(TestTools.Click, new Quarantined(CarAtWork.Reason));

    [Fact]
    public async Task What_was_pulled_with_it_already_can_be_recorded_and_is_never_the_offer_itself()
    {
        var picker = Show(null);
        var click = picker.FindAll(".tool-list li").Single(line => line.TextContent.Contains("out of use", StringComparison.Ordinal));

        Assert.True(click.QuerySelector(".tool-offer")!.HasAttribute("disabled"));
        await click.QuerySelector(".tool-pulled")!.ClickAsync(new());
        Assert.Equal([TestTools.Click], used);
    }

    [Fact]
    public async Task The_screen_says_that_it_will_not_count_and_lets_go_of_it()
    {
        var picker = Show(Offers.Single(offer => offer.Id == TestTools.Click));

        Assert.Contains("does not count: the tool is out of use", Words(picker.Find(".tool-used").TextContent), StringComparison.Ordinal);
        await picker.Find(".tool-used button").ClickAsync(new());
        Assert.Equal([null], used);
    }

    [Fact]
    public void It_is_never_taken_by_itself()
    {
        var scene = bench.Scene("seat");
        Assert.NotEqual(TestTools.Click, ToolOffer.Pick(Offers, TestTools.Click, scene.State, scene.Job.Id, Cell, TestPerson.Tess.Id)?.Id);
    }

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private Cell Cell => ((NextAction.PullNow)bench.Scene("seat").Next).Cell;

    private IReadOnlyList<ToolOffer> Offers => ToolOffer.For(bench.Scene("seat").Reading, bench.Scene("seat").Job, Cell);

    private IRenderedComponent<ToolPicker> Show(ToolOffer? chosen) => Render<ToolPicker>(picker => picker
        .Add(one => one.Offers, [.. Offers.OrderBy(offer => offer.Fits)])
        .Add(one => one.Chosen, chosen)
        .Add(one => one.OnUsed, (ToolId? tool) => used.Add(tool)));
}
