using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Two nuts jammed on a stud to drive it. Own statics, no published source and untested on a bench: a caution with its band,
/// never a hold. Inner nut held, outer nut tightened to Tjam and driven; the same friction in the threads and between the nuts.
/// </summary>
public static class NutPair
{
    /// <summary>
    /// Least and greatest friction for which creep is judged, in the threads and between the nuts: common practice, no source.
    /// The low end stands for oil left on the threads.
    /// </summary>
    public static FrictionBand AssumedFriction { get; } = new(0.08, 0.12, 0.16, "common practice, no source");

    /// <summary>F_j = Tjam/(P/2pi + mu d2/(2 cos 30) + mu Dm/2), the load between the nuts; Dm = mean diameter of the nut face.</summary>
    public static Force JamLoad(ThreadSize thread, Length meanFaceDiameter, Torque jam, double friction) =>
        ClampLoad.FromTorque(Geometry(thread, meanFaceDiameter), jam, friction, friction);

    /// <summary>
    /// T_pair = 2 mu d2/(2 cos 30) F_j: driving torque from which both nuts may creep along the stud together.
    /// The pitch cancels: one nut moves with its load, the other against it.
    /// </summary>
    public static Torque CreepTorque(ThreadSize thread, Length meanFaceDiameter, Torque jam, double friction) =>
        Torque.FromNewtonMeters(
            2 / Math.Sqrt(3) * friction * thread.PitchDiameter.Meters * JamLoad(thread, meanFaceDiameter, jam, friction).Newtons);

    /// <summary>Greatest driving torque at the outer nut that moves neither nut: the smaller of Tjam and <see cref="CreepTorque"/>.</summary>
    public static Torque GreatestDrive(ThreadSize thread, Length meanFaceDiameter, Torque jam, double friction)
    {
        var creep = CreepTorque(thread, meanFaceDiameter, jam, friction);
        return creep < jam ? creep : jam;
    }

    /// <summary>
    /// T_break = F_j (mu d2/(2 cos 30) - P/2pi + mu Dm/2): torque at which the inner nut backs away when the wrong nut is driven.
    /// </summary>
    public static Torque WrongNutBreak(ThreadSize thread, Length meanFaceDiameter, Torque jam, double friction) =>
        ClampLoad.LooseningTorque(
            Geometry(thread, meanFaceDiameter), JamLoad(thread, meanFaceDiameter, jam, friction), friction, friction);

    /// <summary>
    /// The band of <see cref="CreepTorque"/> over a friction band; it rises with friction.
    /// </summary>
    public static CreepBand Creep(ThreadSize thread, Length meanFaceDiameter, EnteredTorque jam, FrictionBand friction) => new(
        CreepTorque(thread, meanFaceDiameter, jam.ToTorque(), friction.Low),
        CreepTorque(thread, meanFaceDiameter, jam.ToTorque(), friction.High),
        friction);

    /// <summary>
    /// Dm = (dw + d)/2 of a plain hexagon nut, dw the least bearing diameter of ISO 4032 (from memory); null for other sizes.
    /// </summary>
    public static Length? PlainNutFace(ThreadSize thread)
    {
        double? bearing = (thread.Standard, thread.DiameterMm) switch
        {
            (ThreadStandard.MetricIso, 6) => 8.88,
            (ThreadStandard.MetricIso, 8) => 11.63,
            (ThreadStandard.MetricIso, 10) => 14.63,
            (ThreadStandard.MetricIso, 12) => 16.63,
            (ThreadStandard.MetricIso, 14) => 19.64,
            (ThreadStandard.MetricIso, 16) => 22.49,
            _ => null,
        };
        return bearing is { } dw ? Length.FromMillimeters((dw + thread.DiameterMm) / 2) : null;
    }

    private static JointGeometry Geometry(ThreadSize thread, Length meanFaceDiameter) =>
        new(thread.PitchMm, thread.PitchDiameterMm, meanFaceDiameter.Millimeters / 2);
}

/// <summary>Driving torque from which a nut pair may creep, at the least and at the greatest friction of <paramref name="Friction"/>.</summary>
public readonly record struct CreepBand(Torque AtLowFriction, Torque AtHighFriction, FrictionBand Friction);
