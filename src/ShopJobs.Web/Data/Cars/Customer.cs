using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Cars;

/// <summary>Who owns the car and answers the telephone.</summary>
public sealed class Customer : TrackedRow
{
    public const int NameLength = 80;
    public const int ContactLength = 200;

    public CustomerId Id { get; init; }

    public required string Name { get; set; }

    /// <summary>Telephone, mail or both, as the customer gave it.</summary>
    public string Contact { get; set; } = "";

    /// <summary>When the customer was put away as not coming back, UTC; null while cars of theirs may come.</summary>
    public DateTime? RetiredAt { get; set; }

    /// <summary>When the personal data was erased last, UTC; null while it never was.</summary>
    public DateTime? ErasedAt { get; init; }

    /// <summary>Who signed that.</summary>
    public PersonId? ErasedBy { get; init; }
}
