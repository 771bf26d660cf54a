using Bunit;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Summaries;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class SheetEvidenceTests : BunitContext
{
    [Fact]
    public void Measured_says_torque_or_angle_and_a_click_wrench_that_it_gives_no_reading_and_none_is_left_out()
    {
        var sheet = Render<SheetEvidence>(parameters => parameters
            .Add(part => part.Counts, new EvidenceCounts(10, 1, 0, 0, 0, 0, 0, 0, 0, 0))
            .Add(part => part.Results, []));

        Assert.Equal(
            ["10 fasteners, torque or angle read on the tool", "1 fastener tightened at its set torque; it gives no reading"],
            sheet.FindAll("dd").Select(line => line.TextContent.Trim()));
    }
}
