using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Results;

public sealed class ResultTests(ITestOutputHelper output)
{
    [Fact]
    public void A_result_is_one_by_its_joints_its_figures_and_its_instrument() => ResultRules.Book().Closes(output, 31, 155);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => ResultRules.Book().CatchesItsFaults(output);
}
