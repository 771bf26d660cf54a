using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

public class AngleAndSettlingTests
{
    private static readonly ThreadSize Head = ThreadSize.Parse("M11x1.5");
    private static readonly Resilience Joint = new(4e-6, 8e-7);

    /// <summary>Arithmetic: twice 90 degrees at a pitch of 1.5 mm take up 0.75 mm, as stretch and compression.</summary>
    [Fact]
    public void Half_a_turn_takes_up_half_a_pitch()
    {
        var gain = TorqueAngle.Gain(Head, Angle.FromDegrees(180), Joint);

        Assert.Equal(0.75, gain.Newtons * Joint.Sum, 1e-9);
        Assert.Equal(gain.Newtons * Joint.Bolt, TorqueAngle.Elongation(gain, Joint).Millimeters, 1e-9);
    }

    /// <summary>Own computation: 40 N·m and twice 90 degrees take an M11x1.5 12.9 with oil to yield, and no further.</summary>
    [Fact]
    public void Head_bolt_turned_twice_ends_at_its_yield()
    {
        var yield = StrengthClass.Parse("12.9").YieldStress(Head.NominalDiameter)!.Value;
        var snug = Force.FromKilonewtons(23);

        var first = TorqueAngle.After(Head, snug, Angle.FromDegrees(20), Joint, yield, 0.11);
        var both = TorqueAngle.After(Head, snug, Angle.FromDegrees(180), Joint, yield, 0.11);

        Assert.False(first.Yielded);
        Assert.True(both.Yielded);
        Assert.Equal(ClampLoad.AtYieldUtilisation(Head, yield, 0.11, 1), both.ClampLoad);
    }

    [Fact]
    public void Angle_and_load_lead_back_to_each_other() => Gen.Select(Gen.Double[0, 360], Gen.Double[1e-7, 1e-5], Gen.Double[1e-7, 1e-5]).Sample((degrees, bolt, parts) =>
    {
        var joint = new Resilience(bolt, parts);
        return Math.Abs(TorqueAngle.For(Head, TorqueAngle.Gain(Head, Angle.FromDegrees(degrees), joint), joint).Degrees - degrees) < 1e-9;
    });

    /// <summary>VDI 2230-1 table 5, from memory: one head, one nut, thread and one inner face of medium roughness settle 11 micrometres.</summary>
    [Fact]
    public void A_spacer_adds_its_face_to_what_settles()
    {
        var plain = Embedding.Settling(FaceRoughness.Medium, false, 2, 1);
        var spaced = Embedding.Settling(FaceRoughness.Medium, false, 2, 2);

        Assert.Equal(11, plain.Micrometers, 1e-9);
        Assert.Equal(13, spaced.Micrometers, 1e-9);
        Assert.True(Embedding.Loss(spaced, Joint) > Embedding.Loss(plain, Joint));
    }

    [Fact]
    public void A_stiff_short_joint_loses_more() => Gen.Select(Gen.Double[1, 30], Gen.Double[1e-7, 1e-5], Gen.Double[1e-7, 1e-5]).Sample((micrometres, bolt, parts) =>
        Embedding.Loss(Length.FromMicrometers(micrometres), new Resilience(bolt, parts))
            > Embedding.Loss(Length.FromMicrometers(micrometres), new Resilience(bolt * 1.1, parts)));

    [Fact]
    public void Re_torque_turns_by_what_has_settled() => Gen.Select(Gen.Double[20, 60], Gen.Double[1, 30]).Sample((kilonewtons, micrometres) =>
    {
        var settling = Settling.Of(Force.FromKilonewtons(kilonewtons), Length.FromMicrometers(micrometres), Joint);
        var turn = settling.TurnToRestore(Head, Joint);
        return Math.Abs(turn.Degrees - (micrometres / 1000 / 1.5 * 360)) < 1e-6
            && Math.Abs((settling.Left + settling.Loss - settling.Made).Newtons) < 1e-6;
    });

    [Fact]
    public void A_joint_cannot_lose_more_than_it_had()
    {
        var settling = new Settling(Force.FromKilonewtons(1), Force.FromKilonewtons(3));

        Assert.Equal(Force.Zero, settling.Left);
        Assert.Equal(1, settling.Share);
    }
}
