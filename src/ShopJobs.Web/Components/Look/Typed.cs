namespace ShopJobs.Web.Components.Look;

/// <summary>Tidies what people type.</summary>
public static class Typed
{
    /// <summary>Without blanks around it and without control characters; line breaks stay.</summary>
    public static string Clean(string? text) =>
        new string([.. (text ?? "").Where(letter => !char.IsControl(letter) || letter == '\n')]).Trim();
}
