namespace ShopJobs.Web.Data.Shop;

/// <summary>One setting of the shop.</summary>
public sealed class ShopSetting
{
    public required string Key { get; init; }

    public required string Value { get; set; }
}
