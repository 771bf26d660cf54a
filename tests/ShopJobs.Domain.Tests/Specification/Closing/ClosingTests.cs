using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Closing;

public sealed class ClosingTests(ITestOutputHelper output)
{
    [Fact]
    public void Nobody_drives_before_the_closing_check() => ClosingRules.Book().Closes(output, 13, 156);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => ClosingRules.Book().CatchesItsFaults(output);
}
