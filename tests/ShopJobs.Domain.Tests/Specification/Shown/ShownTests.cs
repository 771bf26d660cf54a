using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Shown;

public sealed class ShownTests(ITestOutputHelper output)
{
    [Fact]
    public void Whatever_happens_behind_an_open_dialog_only_what_was_shown_is_signed() => ShownRules.Book().Closes(output, 70, 216);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => ShownRules.Book().CatchesItsFaults(output);
}
