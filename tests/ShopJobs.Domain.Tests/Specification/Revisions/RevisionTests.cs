using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Revisions;

public sealed class RevisionTests(ITestOutputHelper output)
{
    [Fact]
    public void Work_under_a_revised_procedure_stands_or_waits_and_is_never_lost() => RevisionRules.Book().Closes(output, 104, 930);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => RevisionRules.Book().CatchesItsFaults(output);
}
