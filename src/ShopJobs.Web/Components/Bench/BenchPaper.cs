namespace ShopJobs.Web.Components.Bench;

/// <summary>How a card computes.</summary>
/// <param name="Formulas">Each formula on a line.</param>
/// <param name="Symbols">Each symbol with its meaning and unit.</param>
/// <param name="Source">Where the formula and its figures come from.</param>
/// <param name="Limits">Where it holds.</param>
public sealed record BenchPaper(IReadOnlyList<string> Formulas, IReadOnlyList<BenchSymbol> Symbols, string Source, string Limits);

/// <summary>One symbol of a formula.</summary>
public sealed record BenchSymbol(string Sign, string Meaning);
