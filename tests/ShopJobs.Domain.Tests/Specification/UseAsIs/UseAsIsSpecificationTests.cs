using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What use as is stands in for: rule 1.</summary>
public sealed class UseAsIsSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet(UsedActions.Values).WithCourses().WithDefects(), 320);

    internal static Sheet<UsedState> Sheet(params Piece[] values) =>
        new Sheet<UsedState>("A class A nut that is used as is", UsedState.Open).WithActions(values).WithRequirements();
}
