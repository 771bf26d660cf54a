using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>How the catalogue speaks of a part.</summary>
public static class PartWords
{
    /// <summary>The joint by its name; the key where the register does not have it, and nothing where none is named.</summary>
    public static string Fills(string? key, IReadOnlyList<KindToFill> kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        return key is null ? "" : kinds.FirstOrDefault(kind => kind.Key == key)?.Name ?? $"{key}, not in the register";
    }

    /// <summary>"84.50 EUR", or nothing.</summary>
    public static string Price(PartRow part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Price is null ? "" : $"{PartForm.Written(part.Price)} {part.Currency}";
    }
}
