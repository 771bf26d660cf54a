using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Riding;

/// <summary>What a joint rides on: rules 1, 2 and 3.</summary>
public sealed class RidingSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet().WithCourses().WithDefects(), 291);

    internal static Sheet<RidingState> Sheet(bool minutes = true) =>
        new Sheet<RidingState>("A nut that rides on a stud, and the pair that drives it", RidingState.AsItCame)
            .WithActions(minutes).WithRequirements();
}
