namespace ShopJobs.Domain.Procedures;

/// <summary>How a declaration of one aspect of the car's condition holds.</summary>
/// <param name="OfPlace">It is said of a place, such as one wheel; otherwise of the whole car.</param>
/// <param name="LastsHours">Hours after which it has to be said again; null when only a release or an opening ends it.</param>
/// <param name="EndsAt">Keys of the joints whose opening, at that place, ends it.</param>
public sealed record ConditionAspect(bool OfPlace, decimal? LastsHours, IReadOnlyList<string> EndsAt)
{
    /// <summary>Of the whole car, without an age.</summary>
    public static readonly ConditionAspect OfCar = new(false, null, []);
}
