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

    /// <summary>Dm of two plain hexagon nuts, <see cref="HexagonFace.BetweenNuts"/>; null for other sizes.</summary>
    public static Length? PlainNutFace(ThreadSize thread) => HexagonFace.BetweenNuts(thread);

    /// <summary>
    /// Stress in the stud between the nuts while it is driven: tension Fj/As with torsion Tdrive/(pi d0^3/12), combined by
    /// von Mises, over the yield; above 0.9 the stud itself is the limit. Greatest at the least friction, where Fj is greatest.
    /// </summary>
    public static double StudUtilisation(
        ThreadSize thread, Length meanFaceDiameter, Torque jam, Torque drive, double friction, Pressure yieldStress) =>
        TighteningStress.Of(thread, JamLoad(thread, meanFaceDiameter, jam, friction), drive).Equivalent / yieldStress;

    private static JointGeometry Geometry(ThreadSize thread, Length meanFaceDiameter) =>
        new(thread.PitchMm, thread.PitchDiameterMm, meanFaceDiameter.Millimeters / 2);
}

/// <summary>Driving torque from which a nut pair may creep, at the least and at the greatest friction of <paramref name="Friction"/>.</summary>
public readonly record struct CreepBand(Torque AtLowFriction, Torque AtHighFriction, FrictionBand Friction);
