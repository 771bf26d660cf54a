using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Cycles;

/// <summary>How many pulls a tool may make until it is calibrated again.</summary>
internal static class CycleRules
{
    private const string Counts = "a tool's cycle limit counts";

    public static RuleBook<SpentTool> Book() => new RuleBook<SpentTool>("Pulls of a tool", default, tool => tool.ToString())
        .Action("Pull", _ => true, tool => tool.PullHere())
        .Action("Pull on another car", tool => tool.Pulls <= SpentTool.Limit, tool => tool.PullElsewhere())
        .Action("Calibrate", _ => true, tool => tool.Calibrate())
        .On("Pull", "1", "BELOW-COUNTS", Counts, (before, _) => before.Pulls < SpentTool.Limit, (_, after) => after.Counted)
        .On("Pull", "1", "AT-LIMIT-COUNTS-NOT", Counts, (before, _) => before.Pulls >= SpentTool.Limit, (_, after) => !after.Counted)
        .On("Pull on another car", "1", "EVERY-CAR", Counts, (before, _) => before.Pulls < SpentTool.Limit, (before, after) => after.Pulls == before.Pulls + 1)
        .On("Calibrate", "1", "CALIBRATED-ANEW", Counts, (_, _) => true, (_, after) => after.Pulls == 0)
        .Ends("1", "BACK-FROM-THE-LAB", "Spent, sent away, and back in use", tool => tool is { Pulls: 1, Counted: true })
        .Fault("a tool is refused before its limit", "BELOW-COUNTS", "Pull", (before, _) => before.Pulls == SpentTool.Limit - 1, (_, tool) => tool with { Counted = false })
        .Fault("a worn wrench goes on", "AT-LIMIT-COUNTS-NOT", "Pull", (before, _) => before.Pulls >= SpentTool.Limit, (_, tool) => tool with { Counted = true })
        .Fault("each car counts for itself", "EVERY-CAR", "Pull on another car", (before, _) => before.Pulls < SpentTool.Limit, (before, _) => before)
        .Fault("a calibration leaves it spent", "CALIBRATED-ANEW", "Calibrate", (before, _) => before.Pulls > 0, (before, _) => before);
}
