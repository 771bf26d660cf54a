using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

public class StiffnessTests
{
    private static readonly Pressure Steel = BoltSection.Steel;

    /// <summary>
    /// Shigley's Mechanical Engineering Design, chapter 8 (from memory): with a head of 1.5 d, a hole of d and 30 degrees,
    /// k = 0.5774 pi E d/(2 ln[5 (0.5774 l + 0.5 d)/(0.5774 l + 2.5 d)]).
    /// </summary>
    [Fact]
    public void Clamped_parts_follow_the_textbook_cone() => Gen.Select(Gen.Double[5, 30], Gen.Double[5, 100]).Sample((d, grip) =>
    {
        var t = Math.Tan(Math.PI / 6);
        var stiffness = t * Math.PI * Steel.Megapascals * d / (2 * Math.Log(5 * ((t * grip) + (0.5 * d)) / ((t * grip) + (2.5 * d))));
        var face = new FlatSeat(Length.FromMillimeters(1.5 * d), Length.FromMillimeters(d));
        var parts = ClampedParts.Resilience(face, Length.FromMillimeters(grip), Steel, ClampedParts.UsualConeAngle);
        return Math.Abs((parts * stiffness) - 1) < 1e-9;
    });

    [Fact]
    public void A_narrow_cone_is_a_sleeve_of_the_heads_width() => Gen.Select(Gen.Double[5, 30], Gen.Double[5, 60]).Sample((d, grip) =>
    {
        var (hole, head, length) = (Length.FromMillimeters(d), Length.FromMillimeters(1.6 * d), Length.FromMillimeters(grip));
        var cone = ClampedParts.Resilience(new FlatSeat(head, hole), length, Steel, Angle.FromDegrees(0.001));
        return Math.Abs((cone / ClampedParts.Sleeve(head, hole, length, Steel)) - 1) < 1e-3;
    });

    /// <summary>Own computation from the sections: M10x1.25, 20 mm shank, 10 mm free thread, E 205 GPa.</summary>
    [Fact]
    public void A_bolt_gives_by_shank_thread_head_and_nut()
    {
        var thread = ThreadSize.Parse("M10x1.25");
        var core = Math.PI / 4 * Math.Pow(10 - (1.226869 * 1.25), 2);
        var shank = Math.PI / 4 * 100;
        var expected = ((20 / shank) + (10 / core) + (4 / shank) + (5 / core) + (4 / shank)) / 205_000;

        Assert.Equal(expected, BoltSection.Resilience(thread, Length.FromMillimeters(20), Length.FromMillimeters(10), Steel), 1e-15);
    }

    /// <summary>Shigley, chapter 8 (from memory): 25 kip preload, 6 kip a bolt, C 0.325, proof 85 ksi x 0.373 in2.</summary>
    [Fact]
    public void A_third_of_a_working_load_reaches_the_bolt()
    {
        var joint = new WorkingLoad(Force.FromPoundsForce(25_000), Force.FromPoundsForce(6_000), 0.325);
        var proof = Force.FromPoundsForce(85_000 * 0.373);

        Assert.Equal(26_950, joint.InBolt.PoundsForce, 0.1);
        Assert.Equal(1.18, joint.YieldFactor(proof), 0.005);
        Assert.Equal(3.44, joint.LoadFactor(proof), 0.005);
        Assert.Equal(6.17, joint.SeparationFactor, 0.005);
    }

    [Fact]
    public void Bolt_and_faces_share_a_load_exactly() => Gen.Select(Gen.Double[1, 60], Gen.Double[1, 60], Gen.Double[1e-7, 1e-5], Gen.Double[1e-7, 1e-5])
        .Sample((preload, load, bolt, parts) =>
        {
            var share = new Resilience(bolt, parts).LoadShare;
            var joint = new WorkingLoad(Force.FromKilonewtons(preload), Force.FromKilonewtons(load), share);
            return share is > 0 and < 1
                && Math.Abs(joint.InBolt.Kilonewtons - joint.OnFaces.Kilonewtons - load) < 1e-9
                && (joint.SeparationFactor > 1) == (joint.OnFaces > Force.Zero);
        });

    [Fact]
    public void Impossible_parts_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Resilience(0, 1e-6));
        Assert.Throws<ArgumentOutOfRangeException>(() => new WorkingLoad(Force.Zero, Force.FromNewtons(1), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ClampedParts.Sleeve(Length.FromMillimeters(9), Length.FromMillimeters(9), Length.FromMillimeters(1), Steel));
    }
}
