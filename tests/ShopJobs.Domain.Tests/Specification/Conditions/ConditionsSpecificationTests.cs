using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Conditions;

/// <summary>How the car stands while a joint is pulled: rule 13.</summary>
public sealed class ConditionsSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet().WithCourses().WithDefects(), 313);

    internal static Sheet<ConditionState> Sheet() =>
        new Sheet<ConditionState>("The condition of the car at two places", ConditionState.NothingSaid).WithActions().WithRequirements();
}
