using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>What the lead adds to the page that the logbook does not say.</summary>
public sealed class SummaryForm
{
    public const int ContactLength = 200;
    public const int AdviceLength = 2000;

    /// <summary>Ids of the fields, under which a tablet keeps what is typed.</summary>
    public const string ContactField = "contact";
    public const string OdometerField = "odometer";
    public const string AdviceField = "advice";
    public const string DeclinedField = "declined";
    private const string JobField = "on-page-";

    /// <summary>How the customer reaches the shop; remembered for the next page.</summary>
    public string Contact { get; set; } = "";

    /// <summary>As typed; empty when nobody read it.</summary>
    public string Odometer { get; set; } = "";

    /// <summary>What the car's odometer counts in.</summary>
    public DistanceUnit Distance { get; init; }

    /// <summary>One advice a line.</summary>
    public string Advice { get; set; } = "";

    /// <summary>One thing a line that the customer declined, with the day.</summary>
    public string Declined { get; set; } = "";

    /// <summary>Ended jobs that the page does not cover.</summary>
    public HashSet<JobId> LeaveOut { get; } = [];

    /// <summary>The odometer as it was read; null when empty or not one clear number.</summary>
    public OdometerReading? Read => OdometerReading.TryParse(Odometer, Distance, out var reading, out _) ? reading : null;

    /// <summary>The same in kilometres.</summary>
    public decimal? OdometerKm => Read?.Km;

    /// <summary>What is unclear about it, in plain words; null where nothing is.</summary>
    public string? OdometerProblem =>
        string.IsNullOrWhiteSpace(Odometer) || OdometerReading.TryParse(Odometer, Distance, out _, out var problem) ? null : problem;

    public IReadOnlyList<string> AdviceLines => LinesOf(Advice);

    public IReadOnlyList<string> DeclinedLines => LinesOf(Declined);

    /// <summary>Id of the tick that puts an ended job on the page.</summary>
    public static string FieldOf(JobId job) => $"{JobField}{job.Value}";

    private static string[] LinesOf(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
