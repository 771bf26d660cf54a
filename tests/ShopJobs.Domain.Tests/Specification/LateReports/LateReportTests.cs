using ShopJobs.Domain.Tests.Specification.Proof;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.LateReports;

public sealed class LateReportTests(ITestOutputHelper output)
{
    [Fact]
    public void A_report_counts_in_its_own_cycle_and_session_and_in_no_other() => LateReportRules.Book().Closes(output, 9, 17);

    [Fact]
    public void Each_fault_is_caught_by_its_requirement() => LateReportRules.Book().CatchesItsFaults(output);
}
