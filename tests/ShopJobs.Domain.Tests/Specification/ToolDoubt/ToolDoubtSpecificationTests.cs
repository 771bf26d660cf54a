using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.ToolDoubt;

/// <summary>What a tool in doubt holds and what lifts it: rule 9.</summary>
public sealed class ToolDoubtSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet().WithCourses().WithDefects(), 820);

    internal static Sheet<DoubtState> Sheet() =>
        new Sheet<DoubtState>("A wrench in doubt", DoubtState.AtFirst).WithActions().WithRequirements();
}
