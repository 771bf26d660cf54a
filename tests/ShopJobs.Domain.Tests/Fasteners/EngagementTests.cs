using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

public class EngagementTests
{
    private static readonly string[] Sizes = ["M5", "M6", "M8x1", "M10x1.25", "M12x1.5", "M16", "1/4-28 UNF", "1/2-13 UNC", "5/8-18 UNF"];

    [Fact]
    public void Stripping_and_breaking_cross_at_the_critical_engagement() => Cases.Sample((thread, bolt, part) =>
    {
        var critical = Engagement.Critical(thread, bolt, part)!.Value;
        var at = Engagement.Loads(thread, critical, bolt, part)!.Value;
        var shorter = Engagement.Loads(thread, critical * 0.99, bolt, part)!.Value;
        var longer = Engagement.Loads(thread, critical * 1.01, bolt, part)!.Value;
        return Math.Abs((at.Strips / at.BoltBreaks) - 1) < 1e-9
            && !shorter.BoltBreaksFirst && shorter.Least < at.BoltBreaks
            && longer.BoltBreaksFirst && longer.Least.Newtons == longer.BoltBreaks.Newtons;
    });

    [Fact]
    public void A_softer_part_needs_more_thread() => Cases.Sample((thread, bolt, part) =>
        Engagement.Critical(thread, bolt, part * 0.5) >= Engagement.Critical(thread, bolt, part));

    /// <summary>FED-STD-H28 formula 1: 1/4-20, equal materials, limits from memory: 0.1728 in (own answer).</summary>
    [Fact]
    public void Quarter_inch_needs_0_173_inch_in_its_own_material() => Assert.Equal(
        0.1728,
        Engagement.EqualMaterials(Area.FromSquareInches(0.0318), Length.FromInches(0.05), Length.FromInches(0.207), Length.FromInches(0.2127)).Inches,
        0.0005);

    [Fact]
    public void A_part_weaker_than_its_thread_is_wide_raises_the_length_by_J()
    {
        var areas = ThreadStripping.Areas(ThreadSize.Parse("M10x1.5"), Length.FromMillimeters(10))!.Value;

        Assert.True(areas.Nut > areas.Bolt);
        Assert.True(Engagement.UnequalFactor(areas, Pressure.FromMegapascals(800), Pressure.FromMegapascals(800)) < 1);
        Assert.True(Engagement.UnequalFactor(areas, Pressure.FromMegapascals(1040), Pressure.FromMegapascals(300)) > 1);
    }

    /// <summary>NASA TM-106943 (Dec 1995) Table III: insert 1/4-28, 0.36 in long, parent 85 ksi: 21029 lbf.</summary>
    [Fact]
    public void An_insert_strips_the_parent_over_seven_eighths_of_its_cylinder() => Assert.Equal(
        21_029,
        ThreadStripping.Load(
            ThreadStripping.InsertArea(Length.FromInches(0.25), Length.FromInches(0.36)), Pressure.FromKilopoundsForcePerSquareInch(85)).PoundsForce,
        21_029 * 0.004);

    [Fact]
    public void Without_limits_nothing_is_computed() =>
        Assert.Null(Engagement.Critical(ThreadSize.Parse("M100x4"), Pressure.FromMegapascals(800), Pressure.FromMegapascals(800)));

    private static Gen<(ThreadSize, Pressure, Pressure)> Cases => Gen.Select(
        Gen.OneOf(Sizes), Gen.Double[400, 1220], Gen.Double[150, 1220],
        (size, bolt, part) => (ThreadSize.Parse(size), Pressure.FromMegapascals(bolt), Pressure.FromMegapascals(part)));
}
