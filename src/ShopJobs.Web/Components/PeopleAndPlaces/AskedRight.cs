using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>A right to be given from a day to a day, both inside; open when there is no last day.</summary>
public sealed record AskedRight(Right Right, DateOnly From, DateOnly? To);
