using Bunit;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Summaries;

namespace ShopJobs.Web.Tests.Summaries;

public sealed class SheetEvidenceTests : BunitContext
{
    [Fact]
    public void Measured_says_torque_or_angle_and_confirmed_says_not_measured()
    {
        var sheet = Render<SheetEvidence>(parameters => parameters
            .Add(part => part.Counts, new EvidenceCounts(10, 1, 0, 0, 0, 0, 0, 0, 0, 0))
            .Add(part => part.Results, []));

        Assert.Equal(
            ["10 fasteners, torque or angle read on the tool", "1 fastener, by click tool; not measured"],
            sheet.FindAll("dd").Take(2).Select(line => line.TextContent.Trim()));
    }
}
