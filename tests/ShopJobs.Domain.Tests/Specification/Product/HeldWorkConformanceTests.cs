using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Properties;
using ShopJobs.Domain.Tests.Specification.HeldWorks;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>The real decider and fold hold steps, results and lots as their specification does, and part from it without any of these rules.</summary>
public sealed class HeldWorkConformanceTests(ITestOutputHelper output)
{
    // A step of this car waits for no result: see HeldScenarios.Without_that_rule_the_held_result_would_do.
    public static TheoryData<string> Rules => [.. LeftOut.OfHeldWork.Select(rule => rule.Name).Where(name => name != "Step without ResultHeld")];

    [Fact]
    public void Steps_results_and_lots_are_held_as_the_rules_say()
    {
        var report = HeldWorkRules.Book().Spec.ConformExhaustive(
            () => new StoppedWheel(), (car, step) => car.Take(step), output.WriteLine, threads: 1, clone: ProductCar.Copy);
        Assert.Equal(report.Transitions, report.ConformedTransitions);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Without_one_of_its_rules_the_product_parts_from_the_specification(string left)
    {
        var rules = LeftOut.OfHeldWork.Single(rule => rule.Name == left).Without;
        Assert.ThrowsAny<CsCheckException>(() => HeldWorkRules.Book().Spec.ConformExhaustive(
            () => new StoppedWheel(rules), (car, step) => car.Take(step), output.WriteLine, threads: 1, clone: ProductCar.Copy));
    }
}
