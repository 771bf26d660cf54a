namespace ShopJobs.Domain.Tests.Specification.LateReports;

/// <summary>A pull that a tablet without a line has kept, until it is sent.</summary>
/// <param name="OtherSession">Whoever made it was signed in again since.</param>
/// <param name="OtherCycle">The nut was opened since, and run down again.</param>
internal readonly record struct LateReport(bool Made, bool OtherSession, bool OtherCycle, bool Sent, bool Counts)
{
    public static LateReport Start => default;

    public bool Waits => Made && !Sent;

    public LateReport Send() => this with { Sent = true, Counts = !OtherSession && !OtherCycle };
}
