using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Jobs;

/// <summary>Who is on a job or on one step of it.</summary>
public sealed class Assignment
{
    public Guid Id { get; init; }

    public JobId JobId { get; init; }

    /// <summary>The step instance; null for the whole job.</summary>
    public string? StepInstanceId { get; init; }

    public PersonId PersonId { get; init; }

    public DateTime From { get; init; }

    /// <summary>Null while it runs.</summary>
    public DateTime? To { get; set; }
}
