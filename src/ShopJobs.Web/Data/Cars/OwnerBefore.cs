using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Cars;

/// <summary>Whose car it was before it changed hands: what was said and kept until then is that customer's.</summary>
public sealed class OwnerBefore
{
    public Guid Id { get; init; }

    public CarId CarId { get; init; }

    public CustomerId CustomerId { get; init; }

    /// <summary>When the car got another owner in the book, UTC.</summary>
    public DateTime Until { get; init; }
}
