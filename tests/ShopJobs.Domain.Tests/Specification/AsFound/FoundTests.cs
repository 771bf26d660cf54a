using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.AsFound;

public sealed class FoundTests(ITestOutputHelper output)
{
    [Fact]
    public void How_a_car_was_found_is_written_down_before_it_is_opened() => FoundRules.Book().Closes(output, 39, 164);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => FoundRules.Book().CatchesItsFaults(output);
}
