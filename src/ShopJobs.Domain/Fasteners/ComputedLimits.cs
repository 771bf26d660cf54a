using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>The computed limits of a torque specification: as many as what is known of the joint allows.</summary>
public static class ComputedLimits
{
    /// <summary>Proof load, yield while tightening, bearing pressure, stripping, creep of a nut pair; in this order, those that can be computed.</summary>
    public static IReadOnlyList<ComputedLimit> Of(TorqueSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        return [.. OfJoint(specification), .. OfPair(specification)];
    }

    private static IEnumerable<ComputedLimit> OfJoint(TorqueSpecification s)
    {
        if (s.Friction is not { } friction || !JointGeometry.TryFor(s.Thread, s.Seat, out var joint, out _))
        {
            yield break;
        }

        if (s.Class?.ProofLoad(s.Thread) is { } proof)
        {
            yield return At("proof load", $"the proof load of {s.Thread} {s.Class}", proof);
        }

        if (s.Class?.YieldLoad(s.Thread) is not null && s.Class.YieldStress(s.Thread.NominalDiameter) is { } yield)
        {
            var earliest = ClampLoad.ToTorque(joint, ClampLoad.AtYieldUtilisation(s.Thread, yield, friction.Low, 1), friction.Low, friction.Low);
            var latest = ClampLoad.ToTorque(joint, ClampLoad.AtYieldUtilisation(s.Thread, yield, friction.High, 1), friction.High, friction.High);
            yield return new ComputedLimit("yield while tightening", earliest, latest, Sentence(
                $"yield of {s.Thread} {s.Class} under tension and torsion together", earliest, latest, friction));
        }

        if (s.Seat is FlatSeat seat && s.BearingLimit is { } pressure)
        {
            yield return At("bearing pressure", FormattableString.Invariant($"the pressure the face bears, {pressure.Megapascals:0} MPa,"),
                BearingPressure.LoadAt(seat, pressure));
        }

        if (s.Engaged is { } engaged && s.PartTensile is { } part && s.BoltTensile is { } bolt
            && Engagement.Loads(s.Thread, engaged, bolt, part) is { } loads)
        {
            yield return At("stripping", FormattableString.Invariant($"stripping of {engaged.Millimeters:0.#} mm of engaged thread"), loads.Strips);
        }

        ComputedLimit At(string name, string what, Force load)
        {
            var earliest = ClampLoad.ToTorque(joint, load, friction.Low, friction.Low);
            var latest = ClampLoad.ToTorque(joint, load, friction.High, friction.High);
            return new ComputedLimit(name, earliest, latest, Sentence(
                FormattableString.Invariant($"{what} ({load.Kilonewtons:0.0} kN)"), earliest, latest, friction));
        }
    }

    private static IEnumerable<ComputedLimit> OfPair(TorqueSpecification s)
    {
        if (s.Jam is { Value: > 0 } jam && (s.JamFaceDiameter ?? NutPair.PlainNutFace(s.Thread)) is { } face)
        {
            var creep = NutPair.Creep(s.Thread, face, jam, NutPair.AssumedFriction);
            yield return new ComputedLimit("creep of the nut pair", creep.AtLowFriction, creep.AtHighFriction, Sentence(
                $"creep of two nuts jammed at {jam}", creep.AtLowFriction, creep.AtHighFriction, creep.Friction));
        }
    }

    private static string Sentence(string what, Torque earliest, Torque latest, FrictionBand friction) => FormattableString.Invariant(
        $"{what} is reached from {earliest.NewtonMeters:0.0} N·m at friction {friction.Low:0.00} to {latest.NewtonMeters:0.0} N·m at {friction.High:0.00}");
}
