using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Figures are own computation with the long form of VDI 2230, exact P/2pi and 1/(2 cos 30).</summary>
public class ClampLoadTests
{
    private static readonly ThreadSize Wheel = ThreadSize.Parse("M12x1.5");
    private static readonly FlatSeat WheelFlat = new(Length.FromMillimeters(19), Length.FromMillimeters(13.5));

    [Theory]
    [InlineData(0.10, 65.2, 0.141)]
    [InlineData(0.14, 48.5, 0.189)]
    [InlineData(0.20, 35.1, 0.261)]
    public void Wheel_nut_at_110_newton_metres(double friction, double kilonewtons, double nutFactor)
    {
        var joint = Joint(Wheel, WheelFlat);

        Assert.Equal(kilonewtons, ClampLoad.FromTorque(joint, Torque.FromNewtonMeters(110), friction, friction).Kilonewtons, 0.05);
        Assert.Equal(nutFactor, ClampLoad.NutFactor(joint, Wheel, friction, friction), 0.0005);
    }

    /// <summary>The same nut on a 60 degree cone of the same mean radius: bearing friction doubles.</summary>
    [Fact]
    public void A_cone_seat_gives_less_clamp_load_than_a_flat_one()
    {
        var cone = new ConeSeat(Angle.FromDegrees(60), Length.FromMillimeters(16.25));

        Assert.Equal(32.3, ClampLoad.FromTorque(Joint(Wheel, cone), Torque.FromNewtonMeters(110), 0.14, 0.14).Kilonewtons, 0.05);
    }

    [Theory]
    [InlineData("M8", "8.8", 11.6, 9, 21, 24)]
    [InlineData("M10x1.5", "8.8", 14.6, 11, 41, 47)]
    [InlineData("M12x1.5", "10.9", 16.6, 13.5, 105, 120)]
    [InlineData("M14x1.5", "10.9", 19.6, 15.5, 170, 195)]
    public void Torque_for_three_quarters_of_proof_load(string size, string strength, double head, double hole, double at12, double at14)
    {
        var thread = ThreadSize.Parse(size);
        var joint = Joint(thread, new FlatSeat(Length.FromMillimeters(head), Length.FromMillimeters(hole)));
        var force = StrengthClass.Parse(strength).ProofLoad(thread)!.Value * 0.75;

        Assert.Equal(at12, ClampLoad.ToTorque(joint, force, 0.12, 0.12).NewtonMeters, at12 < 100 ? 0.5 : 2.5);
        Assert.Equal(at14, ClampLoad.ToTorque(joint, force, 0.14, 0.14).NewtonMeters, at14 < 100 ? 0.5 : 2.5);
    }

    [Fact]
    public void Torque_and_clamp_load_lead_back_to_each_other() => Joints.Sample((joint, torque, threads, seat) =>
    {
        var back = ClampLoad.ToTorque(joint, ClampLoad.FromTorque(joint, Torque.FromNewtonMeters(torque), threads, seat), threads, seat);
        return Math.Abs(back.NewtonMeters - torque) <= 1e-12 * torque;
    });

    [Fact]
    public void More_torque_clamps_more_and_more_friction_clamps_less() => Joints.Sample((joint, torque, threads, seat) =>
    {
        var force = Force(torque, threads, seat);
        return Force(torque * 1.01, threads, seat) > force && Force(torque, threads * 1.01, seat) < force && Force(torque, threads, seat * 1.01) < force;

        double Force(double t, double threadFriction, double seatFriction) =>
            ClampLoad.FromTorque(joint, Torque.FromNewtonMeters(t), threadFriction, seatFriction).Newtons;
    });

    [Fact]
    public void Loosening_takes_less_than_tightening_by_twice_the_pitch() => Joints.Sample((joint, torque, threads, seat) =>
    {
        var force = ClampLoad.FromTorque(joint, Torque.FromNewtonMeters(torque), threads, seat);
        var difference = torque - ClampLoad.LooseningTorque(joint, force, threads, seat).NewtonMeters;
        return Math.Abs(difference - (force.Newtons * joint.Pitch / Math.PI / 1000)) <= 1e-9 * torque;
    });

    /// <summary>Own statics: at 17 mm on a ball of 12 mm radius the face leans so that it is pressed 1.417 times the clamp load.</summary>
    [Fact]
    public void A_ball_seat_wedges_less_than_a_cone_of_60_degrees_and_more_than_a_flat()
    {
        var ball = new BallSeat(Length.FromMillimeters(12), Length.FromMillimeters(17));

        Assert.Equal(1 / Math.Sqrt(1 - Math.Pow(8.5 / 12, 2)), ball.WedgeFactor, 1e-12);
        Assert.Equal(1.417, ball.WedgeFactor, 0.001);
        Assert.Equal(2, new ConeSeat(Angle.FromDegrees(60), Length.FromMillimeters(17)).WedgeFactor, 1e-12);
        Assert.Equal(1, WheelFlat.WedgeFactor);
    }

    [Fact]
    public void A_ball_seat_is_the_cone_that_touches_it() => Gen.Select(Gen.Double[8, 30], Gen.Double[0.2, 0.9]).Sample((radius, share) =>
    {
        var mean = Length.FromMillimeters(2 * radius * share);
        var cone = new ConeSeat(Angle.FromRadians(2 * Math.Acos(share)), mean);
        return Math.Abs(cone.BearingArm / new BallSeat(Length.FromMillimeters(radius), mean).BearingArm - 1) < 1e-9;
    });

    [Fact]
    public void A_missing_seat_is_said()
    {
        Assert.False(JointGeometry.TryFor(Wheel, null, out _, out var reason));
        Assert.Contains("no seat", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Impossible_seats_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlatSeat(Length.FromMillimeters(13), Length.FromMillimeters(13.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ConeSeat(Angle.FromDegrees(0), Length.FromMillimeters(16)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ConeSeat(Angle.FromDegrees(60), Length.FromMillimeters(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BallSeat(Length.FromMillimeters(-1), Length.FromMillimeters(17)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BallSeat(Length.FromMillimeters(12), Length.FromMillimeters(24)));
    }

    private static Gen<(JointGeometry Joint, double Torque, double Threads, double Seat)> Joints => Gen.Select(
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[4, 30], Gen.Double[3, 25], (p, d2, arm) => new JointGeometry(p, d2, arm)),
        Gen.Double[1, 500], Gen.Double[0.04, 0.4], Gen.Double[0.04, 0.4]);

    private static JointGeometry Joint(ThreadSize thread, Seat seat) =>
        JointGeometry.For(thread, seat);
}
