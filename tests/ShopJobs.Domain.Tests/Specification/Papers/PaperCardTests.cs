using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Papers;

public sealed class PaperCardTests(ITestOutputHelper output)
{
    [Fact]
    public void A_card_counts_when_its_doer_enters_it_whole_in_his_session_and_never_otherwise() => PaperCardRules.Book().Closes(output, 35, 40);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => PaperCardRules.Book().CatchesItsFaults(output);
}
