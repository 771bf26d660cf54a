using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.LateReports;

/// <summary>When a report counts that comes late.</summary>
internal static class LateReportRules
{
    private const string InItsOwn = "A report counts only in the cycle and session it was made in";

    public static RuleBook<LateReport> Book() => Faults(
        new RuleBook<LateReport>("Reports that come late", LateReport.Start, report => report.ToString())
            .Action("Make it", report => !report.Made, report => report with { Made = true })
            .Action("Lock and return", report => report.Waits, report => report)
            .Action("Sign in again", report => report.Waits, report => report with { OtherSession = true })
            .Action("Open the nut and run it down", report => report.Waits, report => report with { OtherCycle = true })
            .Action("Send it", report => report.Waits, report => report.Send())
            .Rests(report => report.Sent)
            .On("Send it", "17", "SESSION-IT-WAS-MADE-IN", InItsOwn, (before, _) => before.OtherSession, (_, after) => !after.Counts)
            .On("Send it", "17", "CYCLE-IT-WAS-MADE-IN", InItsOwn, (before, _) => before.OtherCycle, (_, after) => !after.Counts)
            .On("Send it", "17", "IN-ITS-OWN-COUNTS", InItsOwn, (before, _) => !before.OtherSession && !before.OtherCycle, (_, after) => after.Counts)
            .On("Lock and return", "15, 17", "LOCK-KEEPS-REPORTS", "a lock and return by the same person is the same session",
                (_, _) => true, (before, after) => after.OtherSession == before.OtherSession)
            .Ends("17", "SENT-AFTER-A-LOCK", "The line was gone, the tablet locked, its person came back and sent it", report => report is { Sent: true, Counts: true }));

    private static RuleBook<LateReport> Faults(RuleBook<LateReport> book) => book
        .Fault("a report of an earlier session counts", "SESSION-IT-WAS-MADE-IN", "Send it",
            (before, _) => before is { OtherSession: true, OtherCycle: false }, (_, report) => report with { Counts = true })
        .Fault("a report of an earlier cycle counts", "CYCLE-IT-WAS-MADE-IN", "Send it",
            (before, _) => before is { OtherSession: false, OtherCycle: true }, (_, report) => report with { Counts = true })
        .Fault("what comes late never counts", "IN-ITS-OWN-COUNTS", "Send it",
            (before, _) => before is { OtherSession: false, OtherCycle: false }, (_, report) => report with { Counts = false })
        .Fault("a lock takes the reports that wait with it", "LOCK-KEEPS-REPORTS", "Lock and return",
            (before, _) => !before.OtherSession, (_, report) => report with { OtherSession = true });
}
