namespace ShopJobs.Domain.Logbook;

/// <summary>What was decided.</summary>
public abstract record Verdict
{
    /// <summary>Recorded. The entries go into the car's logbook in this order.</summary>
    public sealed record Accepted(IReadOnlyList<Entry> Entries) : Verdict;

    /// <summary>Refused, with every reason.</summary>
    public sealed record Refused(IReadOnlyList<HoldPoint> Reasons) : Verdict;

    private Verdict()
    {
    }
}
