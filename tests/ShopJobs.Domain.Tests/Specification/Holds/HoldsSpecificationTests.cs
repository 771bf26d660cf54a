using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Holds;

/// <summary>What holds a position and what lifts it: rule 7.</summary>
public sealed class HoldsSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet().WithCourses().WithDefects(), 380);

    internal static Sheet<HeldState> Sheet() =>
        new Sheet<HeldState>("A held nut, and the stud it rides on", HeldState.Open).WithActions().WithRequirements();
}
