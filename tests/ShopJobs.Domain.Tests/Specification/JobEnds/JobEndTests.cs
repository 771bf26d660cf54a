using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.JobEnds;

public sealed class JobEndTests(ITestOutputHelper output)
{
    [Fact]
    public void A_job_ends_rests_and_is_given_up_without_letting_the_car_go() => JobEndRules.Book().Closes(output, 104, 1196);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => JobEndRules.Book().CatchesItsFaults(output);
}
