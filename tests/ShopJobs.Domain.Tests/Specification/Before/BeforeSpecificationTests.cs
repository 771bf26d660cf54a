using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Before;

/// <summary>What work waits for: rules 1, 5 and 11.</summary>
public sealed class BeforeSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet().WithCourses().WithDefects(), 53);

    internal static Sheet<BeforeState> Sheet() =>
        new Sheet<BeforeState>("A step that waits for another", BeforeState.AtFirst).WithActions().WithRequirements();
}
