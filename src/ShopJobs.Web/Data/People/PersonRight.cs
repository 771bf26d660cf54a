using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.People;

/// <summary>A right of one person, from a day to a day, both inside, in the shop's zone.</summary>
public sealed class PersonRight
{
    public Guid Id { get; init; }

    public PersonId PersonId { get; init; }

    public Right Right { get; init; }

    public DateOnly From { get; init; }

    /// <summary>Last day; null while it runs.</summary>
    public DateOnly? To { get; set; }

    public bool HoldsOn(DateOnly day) => From <= day && (To is null || day <= To);
}
