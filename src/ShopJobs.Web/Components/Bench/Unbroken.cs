using System.Text.RegularExpressions;

namespace ShopJobs.Web.Components.Bench;

/// <summary>Keeps a figure and its unit on one line: "4 %" and "110 N·m" never come apart where a line ends.</summary>
public static partial class Unbroken
{
    /// <summary>The words with a space that does not break between each figure and its unit.</summary>
    public static string In(string words) => Between().Replace(words, "\u00a0");

    [GeneratedRegex("(?<=[0-9]) (?=(%|N·m|lbf·ft|lbf·in|kgf·m|kN|lbf|mm²|mm|in²|in(?=$|[.,;:)])|MPa|ksi|µm|°)(?![\\p{L}0-9]))")]
    private static partial Regex Between();
}
