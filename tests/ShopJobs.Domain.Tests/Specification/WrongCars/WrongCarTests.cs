using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.WrongCars;

public sealed class WrongCarTests(ITestOutputHelper output)
{
    [Fact]
    public void A_job_taken_back_leaves_no_joint_open_and_no_step_asking() => WrongCarRules.Book().Closes(output, 76, 508);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => WrongCarRules.Book().CatchesItsFaults(output);
}
