using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>What the lead adds to the page that the logbook does not say.</summary>
public sealed class SummaryForm
{
    public const int ContactLength = 200;
    public const int AdviceLength = 2000;

    /// <summary>How the customer reaches the shop; remembered for the next page.</summary>
    public string Contact { get; set; } = "";

    /// <summary>As typed, in km; empty when nobody read it.</summary>
    public string Odometer { get; set; } = "";

    /// <summary>One advice a line, also those that were declined.</summary>
    public string Advice { get; set; } = "";

    /// <summary>Ended jobs that the page does not cover.</summary>
    public HashSet<JobId> LeaveOut { get; } = [];

    /// <summary>The odometer as a number; null when empty or not one.</summary>
    public decimal? OdometerKm => Releases.Odometer.Read(Odometer);

    public IReadOnlyList<string> AdviceLines =>
        Advice.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
