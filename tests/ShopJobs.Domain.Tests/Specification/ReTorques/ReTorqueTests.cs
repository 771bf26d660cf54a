using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.ReTorques;

public sealed class ReTorqueTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_order_of_releases_drives_and_pulls_keeps_the_re_torque_of_its_first_release() => ReTorqueRules.Book().Closes(output, 2_650, 24_933);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => ReTorqueRules.Book().CatchesItsFaults(output);
}
