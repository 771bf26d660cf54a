using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>What the summary says that is not in the car's logbook.</summary>
/// <param name="Car">The car as the customer knows it.</param>
/// <param name="Shop">Shop and contact.</param>
/// <param name="IssuedBy">Initials or role of who issues it.</param>
/// <param name="AskedFor">The customer's words, by job.</param>
/// <param name="OdometerKm">Odometer as read, if it was.</param>
/// <param name="Advice">Advice given.</param>
/// <param name="LeaveOut">Ended jobs that this page does not cover; a running job is never left out.</param>
/// <param name="HeadHash">Chain hash of the newest entry.</param>
/// <param name="Initials">Initials of a person.</param>
/// <param name="Day">The shop's date at an instant (UTC).</param>
public sealed record SummaryFacts(
    SummaryCar Car,
    SummaryShop Shop,
    string IssuedBy,
    IReadOnlyDictionary<JobId, string> AskedFor,
    decimal? OdometerKm,
    IReadOnlyList<string> Advice,
    IReadOnlySet<JobId> LeaveOut,
    string HeadHash,
    Func<PersonId, string> Initials,
    Func<DateTime, DateOnly> Day)
{
    /// <summary>The odometer as it was entered, with its unit; null where it was not read.</summary>
    public string? Odometer { get; init; }

    /// <summary>What the customer declined.</summary>
    public IReadOnlyList<string> Declined { get; init; } = [];

    /// <summary>True while no third person works in the shop who could confirm that its second person stands for himself.</summary>
    public bool NoThird { get; init; }
}
