using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Cycles;

public sealed class CycleTests(ITestOutputHelper output)
{
    [Fact]
    public void A_tool_counts_up_to_its_limit_and_from_its_calibration_on() => CycleRules.Book().Closes(output, 8, 22);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => CycleRules.Book().CatchesItsFaults(output);
}
