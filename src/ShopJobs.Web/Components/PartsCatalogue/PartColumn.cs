namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>What a column of a file of parts holds, in the order of an export.</summary>
public enum PartColumn
{
    Number,
    Maker,
    Name,
    Fills,
    Thread,
    Strength,
    SingleUse,
    Price,
    Currency,
    OutOfUse,
}

/// <summary>What columns are called.</summary>
internal static class PartColumnWords
{
    /// <summary>The heading in an export.</summary>
    internal static string Heading(this PartColumn column) => column switch
    {
        PartColumn.SingleUse => "Single use",
        PartColumn.OutOfUse => "Out of use",
        _ => column.ToString(),
    };

    /// <summary>The heading inside a sentence.</summary>
    internal static string InWords(this PartColumn column) => column.Heading().ToLowerInvariant();

    /// <summary>What a file calls it too: English and German headings of price lists (common practice, no source).</summary>
    internal static IReadOnlyList<string> Others(this PartColumn column) => column switch
    {
        PartColumn.Number => ["part number", "part no", "item number", "article number", "sku", "artikelnummer", "teilenummer"],
        PartColumn.Maker => ["manufacturer", "brand", "make", "hersteller"],
        PartColumn.Name => ["description", "title", "part name", "bezeichnung"],
        PartColumn.Fills => ["joint", "fills joint"],
        PartColumn.Thread => ["thread size", "size", "gewinde"],
        PartColumn.Strength => ["strength class", "class", "grade", "festigkeit", "festigkeitsklasse"],
        PartColumn.SingleUse => ["use once", "one time use"],
        PartColumn.Price => ["unit price", "net price", "preis"],
        PartColumn.Currency => ["price currency", "währung"],
        _ => ["retired", "discontinued"],
    };
}
