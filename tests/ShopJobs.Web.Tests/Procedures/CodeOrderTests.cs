using ShopJobs.Web.Data.Procedures;

namespace ShopJobs.Web.Tests.Procedures;

public sealed class CodeOrderTests
{
    [Fact]
    public void Numbers_in_a_code_count_as_numbers() =>
        Assert.Equal(["P1", "p2", "P10", "P10a"], new[] { "P10a", "P10", "P1", "p2" }.Order(CodeOrder.Natural));
}
