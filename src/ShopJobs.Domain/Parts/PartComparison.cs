using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>
/// Options for one joint side by side: each with its verdict and the number nearest to its limit, and the lines in which they are
/// compared, those that differ first.
/// </summary>
/// <param name="Options">The options in the order they were given.</param>
/// <param name="Rows">The lines, those that differ first; inside both in their usual order. Their cells stand in the order of the options.</param>
public sealed record PartComparison(IReadOnlyList<ComparedOption> Options, IReadOnlyList<ComparisonRow> Rows)
{
    /// <summary>Compares options for a joint.</summary>
    public static PartComparison Of(JointToFill joint, IReadOnlyList<PartOption> options)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(options);
        var figures = options.Select(option => new OptionFigures(option, joint)).ToList();
        var rows = OptionRows.For(joint)
            .Select(row => new ComparisonRow(row.Name, [.. figures.Select(row.Cell)]))
            .OrderBy(row => row.Differs ? 0 : 1)
            .ToList();
        return new PartComparison(
            [
                .. figures.Select((one, index) => new ComparedOption(one.Option, OptionVerdict.Of(one), Tightest.In(rows, index))
                {
                    Stacks = [.. one.Stacks.Where(stack => stack.Stud is not null).Select(stack => (stack.Wheel.Name, stack.Stud!))],
                }),
            ],
            rows);
    }
}

/// <summary>One line of a comparison.</summary>
/// <param name="Name">What it is about.</param>
/// <param name="Cells">One cell an option.</param>
public sealed record ComparisonRow(string Name, IReadOnlyList<OptionCell> Cells)
{
    /// <summary>True where not every option reads the same in it.</summary>
    public bool Differs => Cells.Select(cell => cell.Text).Distinct().Count() > 1;
}

/// <summary>One option of a comparison.</summary>
/// <param name="Option">The option.</param>
/// <param name="Verdict">Whether it can be chosen, and what to know first.</param>
/// <param name="Tightest">Its worst number; null where none of its numbers has a limit.</param>
public sealed record ComparedOption(PartOption Option, OptionVerdict Verdict, Tightest? Tightest)
{
    /// <summary>The option on each wheel stack on which its length can be judged, by the stack's name; empty off a wheel.</summary>
    public IReadOnlyList<(string Name, WheelStudStack Stack)> Stacks { get; init; } = [];
}
