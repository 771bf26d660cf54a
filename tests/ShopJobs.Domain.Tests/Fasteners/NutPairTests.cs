using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Own statics, no published source; figures are own computation.</summary>
public class NutPairTests
{
    private static readonly ThreadSize Stud = ThreadSize.Parse("M12x1.5");
    private static readonly Length Face = NutPair.PlainNutFace(Stud)!.Value;

    [Fact]
    public void Plain_M12_nuts_jammed_at_90_may_creep_from_69_to_76_newton_metres()
    {
        var creep = NutPair.Creep(Stud, Face, EnteredTorque.Parse("90"), NutPair.AssumedFriction);

        Assert.Equal(14.315, Face.Millimeters, 1e-9);
        Assert.Equal(69.4, creep.AtLowFriction.NewtonMeters, 0.05);
        Assert.Equal(76.3, creep.AtHighFriction.NewtonMeters, 0.05);
    }

    /// <summary>A face as wide as that of a wheel nut, or a friction of 0.06, brings it down to about 65 N·m.</summary>
    [Fact]
    public void A_wider_face_or_less_friction_lets_them_creep_from_65()
    {
        Assert.Equal(65.6, NutPair.CreepTorque(Stud, Length.FromMillimeters(16.25), Torque.FromNewtonMeters(90), 0.08).NewtonMeters, 0.05);
        Assert.Equal(65.5, NutPair.CreepTorque(Stud, Face, Torque.FromNewtonMeters(90), 0.06).NewtonMeters, 0.05);
    }

    [Fact]
    public void Equal_friction_from_008_to_016_gives_creep_from_072_to_086_of_the_jam_torque()
    {
        foreach (var size in new[] { "M8", "M10x1.25", "M12x1.5", "M14x1.5" })
        {
            var thread = ThreadSize.Parse(size);
            foreach (var friction in new[] { 0.08, 0.12, 0.16 })
            {
                var ratio = NutPair.CreepTorque(thread, NutPair.PlainNutFace(thread)!.Value, Torque.FromNewtonMeters(50), friction).NewtonMeters / 50;
                Assert.InRange(ratio, 0.715, 0.865);
            }
        }
    }

    [Fact]
    public void Raising_the_jam_torque_raises_the_creep_torque_in_proportion_and_friction_raises_it() =>
        Gen.Select(Gen.Double[10, 200], Gen.Double[0.05, 0.3]).Sample((jam, friction) =>
        {
            var creep = NutPair.CreepTorque(Stud, Face, Torque.FromNewtonMeters(jam), friction).NewtonMeters;
            var doubled = NutPair.CreepTorque(Stud, Face, Torque.FromNewtonMeters(2 * jam), friction).NewtonMeters;
            var rougher = NutPair.CreepTorque(Stud, Face, Torque.FromNewtonMeters(jam), friction * 1.05).NewtonMeters;
            return Math.Abs(doubled - (2 * creep)) < 1e-9 * jam && rougher > creep;
        });

    [Fact]
    public void A_size_without_a_known_nut_has_no_face() => Assert.Null(NutPair.PlainNutFace(ThreadSize.Parse("7/16-20 UNF")));
}
