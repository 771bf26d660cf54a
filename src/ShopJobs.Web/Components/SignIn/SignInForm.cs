namespace ShopJobs.Web.Components.SignIn;

/// <summary>What the sign-in page sends.</summary>
public sealed class SignInForm
{
    public string? Name { get; set; }

    public string? Pin { get; set; }

    public string? ReturnUrl { get; set; }
}
