using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>A new person as the lead types it. The id is made with the form, so sending twice makes one person.</summary>
public sealed class PersonForm
{
    public PersonId Id { get; init; } = new(Guid.NewGuid());

    public string Name { get; set; } = "";

    /// <summary>Rights from today.</summary>
    public HashSet<Right> Rights { get; } = [Right.Record];
}
