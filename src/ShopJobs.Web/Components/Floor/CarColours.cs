namespace ShopJobs.Web.Components.Floor;

/// <summary>The colour of a car as written, as a colour to draw.</summary>
public static class CarColours
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["black"] = "#17191B",
        ["white"] = "#FFFFFF",
        ["grey"] = "#83888C",
        ["gray"] = "#83888C",
        ["silver"] = "#BFC4C8",
        ["red"] = "#B3261E",
        ["orange"] = "#E27A1B",
        ["yellow"] = "#EBC21C",
        ["green"] = "#2E7D4F",
        ["blue"] = "#2459A8",
        ["purple"] = "#6B3FA0",
        ["brown"] = "#6F4E37",
        ["beige"] = "#D8C9A8",
        ["gold"] = "#B8902F",
        ["pink"] = "#D67A9B",
        ["turquoise"] = "#1F9CA6",
    };

    /// <summary>The drawing colour of the last word that names one ("dark blue" is blue); null where none does.</summary>
    public static string? Of(string written)
    {
        ArgumentNullException.ThrowIfNull(written);
        return written.Split([' ', '-', ','], StringSplitOptions.RemoveEmptyEntries).Reverse()
            .Select(word => Known.GetValueOrDefault(word)).FirstOrDefault(colour => colour is not null);
    }

    /// <summary>The same as a style; null where the words name no colour, and the hatching of the style sheet stays.</summary>
    public static string? Fill(string written) => Of(written) is { } colour ? $"background: {colour}" : null;
}
