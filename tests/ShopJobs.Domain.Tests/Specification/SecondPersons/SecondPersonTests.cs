using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.SecondPersons;

public sealed class SecondPersonTests(ITestOutputHelper output)
{
    [Fact]
    public void Nobody_is_the_second_person_for_whoever_made_him_one() => SecondPersonRules.Book().Closes(output, 105, 1_265);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => SecondPersonRules.Book().CatchesItsFaults(output);
}
