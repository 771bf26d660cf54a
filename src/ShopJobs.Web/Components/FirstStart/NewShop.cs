namespace ShopJobs.Web.Components.FirstStart;

/// <summary>The form that opens an empty shop.</summary>
public sealed class NewShop
{
    public string ShopName { get; set; } = "";

    public string LeadName { get; set; } = "";

    /// <summary>IANA name.</summary>
    public string Zone { get; set; } = "Europe/Berlin";
}
