namespace ShopJobs.Web.Shop;

/// <summary>The shop's name, its IANA time zone, and whether it is the demo shop with invented data.</summary>
public sealed record ShopFacts(string Name, TimeZoneInfo Zone, bool Demo)
{
    /// <summary>How customers reach the shop, as it was last put on a work summary.</summary>
    public string Contact { get; init; } = "";

    /// <summary>Three letters of the currency that prices are in (ISO 4217), as it was last used.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>Hours after which a fastener that is only hand-tight is marked (common practice, no source).</summary>
    public int HandTightHours { get; init; } = 8;

    /// <summary>True where something that came to be so then has been hand-tight for too long.</summary>
    public bool IsTooLong(DateTime since, DateTime at) => at - since > TimeSpan.FromHours(HandTightHours);
}
