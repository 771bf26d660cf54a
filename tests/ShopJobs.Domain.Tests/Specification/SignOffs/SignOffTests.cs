using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.SignOffs;

public sealed class SignOffTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_order_of_opening_pulling_signing_and_correcting_keeps_the_sign_offs_honest() => SignOffRules.Book().Closes(output, 761, 5_760);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => SignOffRules.Book().CatchesItsFaults(output);
}
