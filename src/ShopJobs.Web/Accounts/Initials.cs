namespace ShopJobs.Web.Accounts;

/// <summary>Two letters that stand for a person where a name does not fit.</summary>
public static class Initials
{
    /// <summary>First letters of the first and last word, or the first two letters of the only one; upper case.</summary>
    public static string Of(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return words switch
        {
            [] => "?",
            [var only] => only[..Math.Min(2, only.Length)].ToUpperInvariant(),
            [var first, .., var last] => $"{first[0]}{last[0]}".ToUpperInvariant(),
        };
    }
}
