namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>Why a part was not saved and what to do.</summary>
/// <param name="Field">The property of <see cref="PartForm"/> it is about; empty where it is about none.</param>
public sealed record PartRefusal(string Field, string Words);
