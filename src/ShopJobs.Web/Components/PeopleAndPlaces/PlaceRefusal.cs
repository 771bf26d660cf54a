namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>Why a place was not saved and what to do.</summary>
/// <param name="Field">The property of <see cref="PlaceForm"/> it is about; empty where it is about none.</param>
public sealed record PlaceRefusal(string Field, string Words);
