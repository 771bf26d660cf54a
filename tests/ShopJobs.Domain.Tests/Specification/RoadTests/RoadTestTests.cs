using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.RoadTests;

public sealed class RoadTestTests(ITestOutputHelper output)
{
    [Fact]
    public void A_road_test_lets_a_result_wait_and_nothing_else() => RoadTestRules.Book().Closes(output, 58, 400);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => RoadTestRules.Book().CatchesItsFaults(output);
}
