using CsCheck;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Stress while tightening; the printed assembly tables of VDI 2230 are checked row by row with the published tables.</summary>
public class TighteningStressTests
{
    private static readonly string[] Sizes = ["M6", "M8", "M10x1.25", "M12x1.5", "M14x1.5", "M16", "M24x2"];

    [Fact]
    public void The_load_at_a_utilisation_uses_exactly_that_much_of_the_yield() =>
        Gen.Select(Gen.OneOf(Sizes), Gen.Double[0.04, 0.4], Gen.Double[200, 1200], Gen.Double[0.1, 1]).Sample((size, friction, yield, share) =>
        {
            var thread = ThreadSize.Parse(size);
            var rp = Pressure.FromMegapascals(yield);
            var load = ClampLoad.AtYieldUtilisation(thread, rp, friction, share);
            return Math.Abs(TighteningStress.Utilisation(thread, load, friction, rp) - share) < 1e-9;
        });

    [Fact]
    public void At_one_torque_more_friction_loads_the_bolt_less_even_with_its_torsion() =>
        Gen.Select(Gen.OneOf(Sizes), Gen.Double[0.05, 0.3], Gen.Double[1, 30], Gen.Double[1, 300]).Sample((size, friction, arm, torque) =>
        {
            var thread = ThreadSize.Parse(size);
            var joint = new JointGeometry(thread.Pitch.Millimeters, thread.PitchDiameter.Millimeters, arm);
            var stress = StressGeometry.For(thread);
            return At(friction * 1.05) < At(friction);

            double At(double mu) => stress.Equivalent(ClampLoad.FromTorque(joint, Torque.FromNewtonMeters(torque), mu, mu).Newtons, mu);
        });

    /// <summary>Twist from the thread's own torque F (P/2pi + 0.577 mu d2) gives the same stress as the closed form.</summary>
    [Fact]
    public void The_closed_form_is_tension_with_the_threads_torque() =>
        Gen.Select(Gen.OneOf(Sizes), Gen.Double[0.04, 0.4], Gen.Double[1, 100]).Sample((size, friction, kilonewtons) =>
        {
            var thread = ThreadSize.Parse(size);
            var load = Force.FromKilonewtons(kilonewtons);
            var twist = ClampLoad.ToTorque(new JointGeometry(thread.Pitch.Millimeters, thread.PitchDiameter.Millimeters, 0), load, friction, 0);
            var (closed, apart) = (TighteningStress.At(thread, load, friction), TighteningStress.Of(thread, load, twist));
            return Math.Abs((closed.Equivalent / apart.Equivalent) - 1) < 1e-9 && closed.Equivalent > closed.Tension;
        });

    /// <summary>Own computation: M8 8.8 at 24 N·m, friction 0.10, 4 % over: 22.1 kN is 604 MPa, with torsion 666 MPa, 104 % of 640 MPa.</summary>
    [Fact]
    public void Small_bolt_at_24_newton_metres_may_yield_while_tightening()
    {
        var thread = ThreadSize.Parse("M8");
        var joint = JointGeometry.For(thread, new FlatSeat(Length.FromMillimeters(11.6), Length.FromMillimeters(9)));
        var load = ClampLoad.FromTorque(joint, Torque.FromNewtonMeters(24 * 1.04), 0.10, 0.10);

        Assert.Equal(1.04, TighteningStress.Utilisation(thread, load, 0.10, Pressure.FromMegapascals(640)), 0.005);
    }

    /// <summary>Own computation of a stud jammed at 90 and driven at 73 N·m: below yield of class 12.9 and above that of 8.8.</summary>
    [Fact]
    public void Stud_between_two_nuts_is_loaded_by_jam_and_drive_together()
    {
        var thread = ThreadSize.Parse("M12x1.5");
        var face = NutPair.PlainNutFace(thread)!.Value;
        var (jam, drive) = (Torque.FromNewtonMeters(90), Torque.FromNewtonMeters(73));

        Assert.True(NutPair.StudUtilisation(thread, face, jam, drive, 0.08, Pressure.FromMegapascals(1100)) < 0.9);
        Assert.True(NutPair.StudUtilisation(thread, face, jam, drive, 0.08, Pressure.FromMegapascals(640)) > 1);
    }
}
