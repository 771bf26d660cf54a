using System.Globalization;

namespace ShopJobs.Web.Data.Procedures;

/// <summary>How codes of procedures are put in order.</summary>
public static class CodeOrder
{
    /// <summary>Numbers in a code count as numbers: P2 before P10.</summary>
    public static StringComparer Natural { get; } = StringComparer.Create(CultureInfo.InvariantCulture, CompareOptions.NumericOrdering | CompareOptions.IgnoreCase);
}
