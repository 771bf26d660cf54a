using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.HeldWorks;

public sealed class HeldWorkTests(ITestOutputHelper output)
{
    [Fact]
    public void What_is_held_waits_for_its_decision() => HeldWorkRules.Book().Closes(output, 196, 1538);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => HeldWorkRules.Book().CatchesItsFaults(output);
}
