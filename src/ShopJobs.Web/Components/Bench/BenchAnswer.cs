using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench;

/// <summary>What a card answers.</summary>
/// <param name="Short">The answer alone, to be read at arm's length: "Set 77 N·m".</param>
/// <param name="Sentence">The answer in one sentence with its figures.</param>
public sealed record BenchAnswer(string Short, string Sentence)
{
    /// <summary>Its figures drawn; the first also stands small on the list of cards.</summary>
    public required IReadOnlyList<BenchPicture> Pictures { get; init; }

    /// <summary>Its figures one by one.</summary>
    public IReadOnlyList<BenchLine> Lines { get; init; } = [];

    /// <summary>Figures that only read side by side.</summary>
    public BenchTable? Table { get; init; }

    /// <summary>Reasons in sentences, list by list.</summary>
    public IReadOnlyList<BenchList> Lists { get; init; } = [];

    /// <summary>What is against it, each a sentence.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The clamp load condition by condition.</summary>
    public ClampStanding? Clamp { get; init; }
}

/// <summary>One figure: what it is, the figure with its unit, and what it rests on.</summary>
public sealed record BenchLine(string What, string Figure, string? Why = null);

/// <summary>Sentences of one kind; nothing is drawn where there is none.</summary>
public sealed record BenchList(string Title, IReadOnlyList<string> Sentences);

/// <summary>Figures in rows; the first cell of a row names it.</summary>
public sealed record BenchTable(string Title, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>What the inputs say together that cannot be.</summary>
public sealed record BenchProblem(BenchField Field, string Words);
