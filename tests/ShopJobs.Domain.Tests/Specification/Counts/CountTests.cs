using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Counts;

public sealed class CountTests(ITestOutputHelper output)
{
    [Fact]
    public void No_position_that_was_ever_touched_leaves_the_release() => CountRules.Book().Closes(output, 70, 310);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => CountRules.Book().CatchesItsFaults(output);
}
