namespace ShopJobs.Web.Accounts;

/// <summary>Where a form may send a person afterwards: into this program and nowhere else.</summary>
public static class LocalUrl
{
    /// <summary>The url when it is a plain local path, else the floor.</summary>
    public static string OrFloor(string? url) => IsLocal(url) ? url! : "/";

    /// <summary>Starts with one slash, holds no backslash and no control character, names no host.</summary>
    public static bool IsLocal(string? url) =>
        url is ['/', ..]
        && !url.StartsWith("//", StringComparison.Ordinal)
        && url.Length <= 500
        && !url.Any(letter => letter == '\\' || char.IsControl(letter));
}
