using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>When do the nuts of a joint count: rules 1, 2, 3, 5 and 17.</summary>
public sealed class JointSpecificationTests(ITestOutputHelper output) : SheetTests(output)
{
    private protected override void Explore(IExplorer explorer) => explorer.Take(Sheet(past: true), 20_573);

    /// <summary>The specification, with what happened before or without.</summary>
    internal static Sheet<JointState> Sheet(bool past)
    {
        var sheet = new Sheet<JointState>("A joint of two nuts in two stages", JointState.AsItCame).WithActions(past).WithRequirements();
        return past ? sheet.WithCourses().WithDefects() : sheet;
    }
}
