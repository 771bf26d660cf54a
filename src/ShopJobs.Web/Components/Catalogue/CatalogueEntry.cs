namespace ShopJobs.Web.Components.Catalogue;

/// <summary>One page of the app in one state.</summary>
/// <param name="Feature">What it belongs to.</param>
/// <param name="Route">The page's own route.</param>
/// <param name="State">Which page or state it is, in a few words.</param>
/// <param name="Address">Where it is seen in this shop; null where nothing in the shop stands so.</param>
public sealed record CatalogueEntry(string Feature, string Route, string State, string? Address);
