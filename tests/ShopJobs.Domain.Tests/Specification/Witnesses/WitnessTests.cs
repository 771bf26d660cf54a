using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Witnesses;

public sealed class WitnessTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_order_of_three_people_at_a_joint_keeps_the_second_person_another() => WitnessRules.Book().Closes(output, 313, 2_460);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => WitnessRules.Book().CatchesItsFaults(output);
}
