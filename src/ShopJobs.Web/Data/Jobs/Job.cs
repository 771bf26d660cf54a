using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Jobs;

/// <summary>A procedure put on a car. How far it is, is read from the car's logbook and nowhere else.</summary>
public sealed class Job
{
    public JobId Id { get; init; }

    public CarId CarId { get; init; }

    public required string ProcedureDigest { get; init; }

    public required string RegisterDigest { get; init; }

    /// <summary>Places the procedure is put on, separated by commas.</summary>
    public required string Places { get; init; }

    public required string Title { get; set; }

    /// <summary>What the customer asked for, in their words.</summary>
    public string AskedFor { get; set; } = "";

    public DateTime StartedAt { get; init; }

    public PersonId StartedBy { get; init; }
}
