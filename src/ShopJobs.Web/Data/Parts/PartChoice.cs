using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;

namespace ShopJobs.Web.Data.Parts;

/// <summary>
/// An option was chosen for a group of a job. Written once and kept as it was: a later choice is a row of its own, and the newest counts.
/// </summary>
public sealed class PartChoice
{
    public const int ReasonLength = 500;
    public const int MarkLength = 64;

    /// <summary>Given by the database; a later choice has a greater one.</summary>
    public long Number { get; init; }

    public JobId JobId { get; init; }

    public required string GroupId { get; init; }

    /// <summary>The option; its row may be changed or gone since.</summary>
    public PartOptionId OptionId { get; init; }

    /// <summary>Maker and name as they were.</summary>
    public required string Option { get; init; }

    public required string Reason { get; init; }

    /// <summary>The cautions shown then, one a line.</summary>
    public required string Cautions { get; init; }

    /// <summary>The other options compared then, one a line, each with why it could not be chosen where it could not.</summary>
    public required string Others { get; init; }

    /// <summary>
    /// Mark of the option and the wheel stacks as they were shown; null in a choice from before marks were kept.
    /// </summary>
    public string? Mark { get; init; }

    public DateTime At { get; init; }

    public PersonId By { get; init; }
}
