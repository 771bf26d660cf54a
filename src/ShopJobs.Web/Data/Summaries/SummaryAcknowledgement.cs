using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Summaries;

/// <summary>The customer said, on the page of the link, that a version of the work summary was read. Once a version.</summary>
public sealed class SummaryAcknowledgement
{
    public const int WordsLength = 1000;

    public Guid Id { get; init; }

    public CarId CarId { get; init; }

    /// <summary>Whose car it was at that time.</summary>
    public CustomerId CustomerId { get; init; }

    /// <summary>The version that was read.</summary>
    public int Version { get; init; }

    /// <summary>When, UTC.</summary>
    public DateTime At { get; init; }

    /// <summary>What the customer added; empty where nothing.</summary>
    public string Words { get; set; } = "";
}
