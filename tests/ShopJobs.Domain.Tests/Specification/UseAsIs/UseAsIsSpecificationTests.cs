using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>What use as is stands in for: rule 1.</summary>
public sealed class UseAsIsSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet().WithCourses().WithDefects(), 126);

    internal static Sheet<UsedState> Sheet() =>
        new Sheet<UsedState>("A class A nut that is used as is", UsedState.Open).WithActions().WithRequirements();
}
