using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Tests.Step;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>A scanned label picks its tool where it can do the next pull, and says why not where it can't.</summary>
public sealed class LabelAnswerTests
{
    private readonly IReadOnlyList<ToolOffer> offers = StepBench.Offers(StepBench.Wheel().HandTight().Scene("seat"));

    [Fact]
    public void A_tool_that_can_do_the_pull_is_picked()
    {
        var answer = LabelAnswer.Of(ToolLabel.CodeOf(TestTools.Dial).ToLowerInvariant(), offers);

        Assert.Equal((TestTools.Dial, true, "D1 is in hand."), (answer.Tool, answer.Taken, answer.Words));
    }

    [Fact]
    public void A_tool_that_cannot_says_why_not()
    {
        var answer = LabelAnswer.Of(ToolLabel.CodeOf(TestTools.Overdue), offers);

        Assert.False(answer.Taken);
        Assert.Equal("W5 is not taken: the tool is past its calibration. Take another tool.", answer.Words);
    }

    [Fact]
    public void A_label_of_no_tool_here_says_so()
    {
        Assert.Contains("No tool in use here has the label T99999999", LabelAnswer.Of("T99999999", offers).Words, StringComparison.Ordinal);
        Assert.Contains("no tool label", LabelAnswer.Of("110", offers).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tools_with_one_label_are_chosen_by_hand()
    {
        var twin = offers[0] with { Id = new ToolId(new Guid([.. offers[0].Id.Value.ToByteArray()[..8], 9, 9, 9, 9, 9, 9, 9, 9])) };

        var answer = LabelAnswer.Of(ToolLabel.CodeOf(offers[0].Id), [.. offers, twin]);

        Assert.False(answer.Taken);
        Assert.Contains("Two tools have the label", answer.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_pull_is_next_no_tool_is_taken()
    {
        Assert.Equal("No pull is next here, so no tool is taken.", LabelAnswer.Of(ToolLabel.CodeOf(TestTools.Dial), []).Words);
    }
}
