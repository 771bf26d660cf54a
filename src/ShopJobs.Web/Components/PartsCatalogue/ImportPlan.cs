using System.Globalization;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>What a row of a file is for the catalogue.</summary>
public enum ImportKind
{
    New,
    Changed,
    Same,
}

/// <summary>A row of a file that can be taken in.</summary>
/// <param name="Row">Its number in the file.</param>
/// <param name="Values">What the part is then.</param>
/// <param name="Retired">Whether it is out of use then; null leaves that as it is.</param>
/// <param name="There">The part in the catalogue; null where it is new.</param>
public sealed record ImportLine(int Row, PartValues Values, bool? Retired, PartRow? There)
{
    /// <summary>As it was when the file was compared with the catalogue.</summary>
    public ImportKind Kind { get; } = There is null ? ImportKind.New
        : PartValues.Of(There) == Values && (Retired is not { } retired || retired == There.RetiredAt is not null) ? ImportKind.Same
        : ImportKind.Changed;
}

/// <summary>A cell that can't be taken in.</summary>
/// <param name="Row">Number of its row, the headings being row 1.</param>
/// <param name="Column">What the column holds; null where the whole row is wrong.</param>
/// <param name="Words">What is wrong and what to do.</param>
public sealed record ImportProblem(int Row, PartColumn? Column, string Words)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"Row {Row}{(Column is { } column ? $", {column.InWords()}" : "")}: {Words}");
}

/// <summary>What taking a file in would do to the catalogue as it is now.</summary>
/// <param name="Lines">The rows that can be taken in.</param>
/// <param name="Problems">The first <see cref="MostProblems"/> cells that can't.</param>
/// <param name="AllProblems">How many can't.</param>
/// <param name="Mark">Differs where anything in it differs: what was looked at is what is taken in.</param>
public sealed record ImportPlan(IReadOnlyList<ImportLine> Lines, IReadOnlyList<ImportProblem> Problems, int AllProblems, string Mark)
{
    public const int MostProblems = 100;

    public int Count(ImportKind kind) => Lines.Count(line => line.Kind == kind);

    /// <summary>"12 new, 3 changed, 40 the same".</summary>
    public string Counts => string.Create(CultureInfo.InvariantCulture, $"{Count(ImportKind.New):#,0} new, {Count(ImportKind.Changed):#,0} changed, {Count(ImportKind.Same):#,0} the same");

    /// <summary>True where nothing is wrong and something would be written.</summary>
    public bool CanBeTaken => AllProblems == 0 && Lines.Any(line => line.Kind != ImportKind.Same);
}
