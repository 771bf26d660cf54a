using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.People;

/// <summary>What a person was called before: records made until then keep it, and nobody else ever gets it.</summary>
public sealed class NameBefore
{
    public Guid Id { get; init; }

    public PersonId PersonId { get; init; }

    public required string Name { get; init; }

    /// <summary>When the name was changed, UTC.</summary>
    public DateTime Until { get; init; }

    /// <summary>Who changed it.</summary>
    public PersonId ChangedBy { get; init; }
}
