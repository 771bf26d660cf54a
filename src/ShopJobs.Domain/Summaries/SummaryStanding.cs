using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>Whether an issued version is still true. The version itself never changes.</summary>
public abstract record SummaryStanding
{
    /// <summary>What it said the car may be driven on, road or track, and is no longer so: suspended, ended or taken back.</summary>
    public IReadOnlyList<ReleaseKind> NoLonger { get; init; } = [];

    /// <summary>It is the newest, and there is nothing against it.</summary>
    public sealed record Current : SummaryStanding;

    /// <summary>A newer version was issued.</summary>
    public sealed record Replaced(int By, DateTime At) : SummaryStanding;

    /// <summary>It is the newest, and the car is no longer as it says.</summary>
    /// <param name="Since">Instant (UTC) of the first entry that says so; null where no entry does, as after a change of the joint register.</param>
    /// <param name="Opened">Joints opened since, in words.</param>
    /// <param name="Reasons">What else is against it, in words.</param>
    /// <param name="Grave">False when only good was recorded, such as a release: nothing on the page became unsafe to trust.</param>
    public sealed record Overtaken(DateTime? Since, IReadOnlyList<string> Opened, IReadOnlyList<string> Reasons, bool Grave) : SummaryStanding;

    private SummaryStanding()
    {
    }
}
