using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Trainees;

public sealed class TraineeTests(ITestOutputHelper output)
{
    [Fact]
    public void A_trainees_step_counts_when_one_who_stood_by_answers_for_it() => TraineeRules.Book().Closes(output, 31, 166);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => TraineeRules.Book().CatchesItsFaults(output);
}
