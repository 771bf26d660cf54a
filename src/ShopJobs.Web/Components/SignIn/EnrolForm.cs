namespace ShopJobs.Web.Components.SignIn;

/// <summary>What the enrolment page sends.</summary>
public sealed class EnrolForm
{
    public string? TabletName { get; set; }

    public string? LeadName { get; set; }

    public string? Pin { get; set; }

    public string? ReturnUrl { get; set; }
}
