namespace ShopJobs.Domain.Parts;

/// <summary>The number of an option that is nearest to its limit, or the furthest over it: where to look first.</summary>
/// <param name="Row">Name of the line it stands in.</param>
/// <param name="Share">Figure over limit, 1 = at the limit; infinite where nothing is left, such as no thread engaged.</param>
/// <param name="Of">Completes "80 % of ...".</param>
public sealed record Tightest(string Row, double Share, string Of)
{
    /// <summary>The share as it is read, for example "88 %", "over 999 %".</summary>
    public string Words => Share > 9.99 ? "over 999 %" : FormattableString.Invariant($"{Share:0 %}");

    internal static Tightest? In(IReadOnlyList<ComparisonRow> rows, int option) => rows
        .Select(row => row.Cells[option] is OptionCell.Computed { Share: { } share } cell ? new Tightest(row.Name, share, cell.Of) : null)
        .OfType<Tightest>()
        .MaxBy(tightest => tightest.Share);
}
