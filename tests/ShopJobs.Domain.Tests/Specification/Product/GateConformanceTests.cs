using CsCheck;
using ShopJobs.Domain.Tests.Specification.Before;
using ShopJobs.Domain.Tests.Specification.Conditions;
using ShopJobs.Domain.Tests.Specification.Holds;
using ShopJobs.Domain.Tests.Specification.Joint;
using ShopJobs.Domain.Tests.Specification.Riding;
using ShopJobs.Domain.Tests.Specification.ToolDoubt;
using ShopJobs.Domain.Tests.Specification.UseAsIs;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car goes along every transition of the specifications of the gate and says of its positions what they say.</summary>
public sealed class GateConformanceTests(ITestOutputHelper output)
{
    [Fact]
    public void A_joint_counts_by_its_own_evidence() => Conforms(JointSpecificationTests.Sheet(past: false), JointProduct.Car, JointProduct.Step);

    [Fact]
    public void A_nut_counts_with_what_it_rides_on() => Conforms(RidingSpecificationTests.Sheet(), RidingProduct.Car, RidingProduct.Step);

    [Fact]
    public void Use_as_is_stands_in_for_what_it_names() => Conforms(UseAsIsSpecificationTests.Sheet(), UsedProduct.Car, UsedProduct.Step);

    [Fact]
    public void A_hold_is_cleared_only_by_its_decision() => Conforms(HoldsSpecificationTests.Sheet(), HeldProduct.Car, HeldProduct.Step);

    [Fact]
    public void A_tool_in_doubt_holds_what_it_tightened() => Conforms(ToolDoubtSpecificationTests.Sheet(), DoubtProduct.Car, DoubtProduct.Step);

    [Fact]
    public void A_condition_ends_as_the_rules_say() => Conforms(ConditionsSpecificationTests.Sheet(), ConditionProduct.Car, ConditionProduct.Step);

    [Fact]
    public void Work_waits_for_what_comes_before() => Conforms(BeforeSpecificationTests.Sheet(), BeforeProduct.Car, BeforeProduct.Step);

    private void Conforms<T>(Sheet<T> sheet, Func<DrivenCar> create, Func<DrivenCar, Transition<T>, string?> step)
        where T : notnull
    {
        var report = sheet.Spec.ConformExhaustive(create, step, output.WriteLine, threads: 1, clone: car => car.Copy());
        output.WriteLine($"{report.ConformedTransitions} of {report.Transitions} transitions");
        Assert.Equal(report.Transitions, report.ConformedTransitions);
    }
}
