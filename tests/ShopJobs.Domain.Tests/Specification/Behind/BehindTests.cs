using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Behind;

public sealed class BehindTests(ITestOutputHelper output)
{
    [Fact]
    public void A_wheel_goes_on_when_the_brake_behind_it_is_finished() => BehindRules.Book().Closes(output, 23, 52);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => BehindRules.Book().CatchesItsFaults(output);
}
