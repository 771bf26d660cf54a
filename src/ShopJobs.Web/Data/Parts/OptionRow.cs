using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;

namespace ShopJobs.Web.Data.Parts;

/// <summary>An option compared for a group of a job.</summary>
public sealed class OptionRow : TrackedRow
{
    public const int NameLength = 40;
    public const int GroupLength = 100;

    public PartOptionId Id { get; init; }

    public JobId JobId { get; init; }

    /// <summary>Id of the group in the job's procedure.</summary>
    public required string GroupId { get; init; }

    public required string Name { get; set; }

    public required string Maker { get; set; }

    /// <summary>What stands behind the strength; counts only where a strength is stated.</summary>
    public StrengthEvidence Evidence { get; set; }

    /// <summary>True where the kit brings its own nut.</summary>
    public bool OwnNut { get; set; }

    /// <summary>What the maker states. What is not stated has no row here.</summary>
    public List<OptionValue> Values { get; } = [];
}
