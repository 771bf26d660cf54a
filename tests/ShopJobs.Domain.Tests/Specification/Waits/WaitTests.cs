using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Waits;

public sealed class WaitTests(ITestOutputHelper output)
{
    [Fact]
    public void Work_goes_on_over_an_unsigned_step_in_one_hand_and_nowhere_else() => WaitRules.Book().Closes(output, 834, 2_547);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => WaitRules.Book().CatchesItsFaults(output);
}
