using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Visits;

public sealed class VisitTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_order_of_coming_moving_and_leaving_keeps_the_gate() => VisitRules.Book().Closes(output, 285, 4_857);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => VisitRules.Book().CatchesItsFaults(output);
}
