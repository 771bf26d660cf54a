namespace ShopJobs.Web.Shop;

/// <summary>The shop's name, its IANA time zone, and whether it is the demo shop with invented data.</summary>
public sealed record ShopFacts(string Name, TimeZoneInfo Zone, bool Demo)
{
    /// <summary>How customers reach the shop, as it was last put on a work summary.</summary>
    public string Contact { get; init; } = "";
}
