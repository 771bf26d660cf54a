using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Corrections;

public sealed class CorrectionTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_order_of_corrections_needs_two_people_to_make_a_pull_count() => CorrectionRules.Book().Closes(output, 1_628, 6_661);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => CorrectionRules.Book().CatchesItsFaults(output);
}
