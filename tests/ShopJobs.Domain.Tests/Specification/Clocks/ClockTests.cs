using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Clocks;

public sealed class ClockTests(ITestOutputHelper output)
{
    [Fact]
    public void However_the_clock_is_set_no_cure_ends_early_and_no_fact_is_refused() => ClockRules.Book().Closes(output, 4_674, 20_902);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => ClockRules.Book().CatchesItsFaults(output);
}
