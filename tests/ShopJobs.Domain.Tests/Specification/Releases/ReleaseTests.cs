using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Releases;

public sealed class ReleaseTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_order_of_events_after_a_release_ends_or_suspends_it_and_says_so() => ReleaseRules.Book().Closes(output, 203, 1_316);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => ReleaseRules.Book().CatchesItsFaults(output);
}
