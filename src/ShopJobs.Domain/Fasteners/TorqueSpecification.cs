using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// What an instruction asks of one kind of fastener at its final stage. What may be missing is null here;
/// <see cref="TorqueSpecificationValidator"/> says what is not allowed to be.
/// </summary>
public sealed record TorqueSpecification
{
    /// <summary>Thread that is turned.</summary>
    public required ThreadSize Thread { get; init; }

    /// <summary>Strength class of the bolt or stud; null where the maker gives none.</summary>
    public StrengthClass? Class { get; init; }

    /// <summary>True where the class is one the part is said to be equal to, and not marked on it.</summary>
    public bool ClassIsEquivalent { get; init; }

    /// <summary>The face under the turned part; null where it is not known.</summary>
    public Seat? Seat { get; init; }

    /// <summary>Condition that the torque assumes; null where the instruction does not say.</summary>
    public ThreadCondition? Condition { get; init; }

    /// <summary>Friction the maker states; null = <see cref="FrictionBand.Assumed"/> of the condition.</summary>
    public FrictionBand? StatedFriction { get; init; }

    /// <summary>Permitted torque, both ends inside.</summary>
    public TorqueRange? Permitted { get; init; }

    /// <summary>Torque to aim at; may be left out only where the instruction states one value.</summary>
    public EnteredTorque? Target { get; init; }

    /// <summary>Torque that jams two nuts to drive a stud; null where there is no pair.</summary>
    public EnteredTorque? Jam { get; init; }

    /// <summary>Mean diameter of the face between the jammed nuts; null = plain hexagon nuts.</summary>
    public Length? JamFaceDiameter { get; init; }

    /// <summary>Deviation of the driving tool in percent, plus or minus, 0 to below 100; null = class limit of ISO 6789 at the target.</summary>
    public decimal? ToolDeviationPercent { get; init => field = Checked(value); }

    /// <summary>Deviation of the tool that jams, in percent, 0 to below 100; null = class limit of ISO 6789 at the jam torque.</summary>
    public decimal? JamToolDeviationPercent { get; init => field = Checked(value); }

    /// <summary>What the instruction says about run-down torque.</summary>
    public RunDown RunDown { get; init; }

    /// <summary>Run-down torque of the self-locking part, least to greatest; null where it is not known.</summary>
    public RunDownTorque? RunDownTorque { get; init; }

    /// <summary>Class of the nut on the bolt; null where there is none or it is not known.</summary>
    public NutClass? Nut { get; init; }

    /// <summary>Full thread engaged in nut or part; null where it is not known.</summary>
    public Length? Engaged { get; init; }

    /// <summary>Tensile strength of the nut or part with the internal thread; null where it is not known.</summary>
    public Pressure? PartTensile { get; init; }

    /// <summary>Pressure that the face under the turned part bears; null where it is not known.</summary>
    public Pressure? BearingLimit { get; init; }

    /// <summary>The part that limits the torque where it is not the bolt, such as "the wheel bearing"; null where nothing is stated.</summary>
    public string? LimitedBy { get; init; }

    /// <summary>What a failure may cause.</summary>
    public required RiskClass Risk { get; init; }

    /// <summary>The target, or the one value where the instruction states one; null where neither is there.</summary>
    public EnteredTorque? TargetOrOneValue => Target ?? (Permitted is { IsOneValue: true } one ? one.Minimum : null);

    /// <summary>Stated friction, else the one assumed for the condition; null without either.</summary>
    public FrictionBand? Friction => StatedFriction ?? (Condition is { } condition ? FrictionBand.Assumed(condition) : null);

    /// <summary>Tensile strength of the bolt by its class; null where the class has none for the thread.</summary>
    public Pressure? BoltTensile => Class?.UltimateLoad(Thread) is null ? null : Class.TensileStrength(Thread.NominalDiameter);

    /// <summary>Deviation of the driving tool in percent that computations use for <paramref name="torque"/>.</summary>
    public decimal DeviationPercentAt(EnteredTorque torque) => ToolDeviationPercent ?? ToolDeviation.ClassLimitPercent(torque);

    /// <summary>Clamp band of a torque on this joint; not computed, with the reason, where something needed is not known.</summary>
    public ClampBand BandAt(EnteredTorque torque) =>
        ClampLoadBand.For(torque, DeviationPercentAt(torque), Thread, Seat, Friction, Class);

    /// <summary>
    /// Greatest driving torque that the jam allows, Tjam (1 - w_jam)/(1 + w), in N·m; null where nothing is jammed.
    /// </summary>
    public decimal? JamLimitNewtonMetres => Jam is { } jam
        ? TargetLimits.JamLimit(
            jam, JamToolDeviationPercent ?? ToolDeviation.ClassLimitPercent(jam), DeviationPercentAt(TargetOrOneValue ?? jam))
        : null;

    private static decimal? Checked(decimal? percent)
    {
        ToolDeviation.Check(percent ?? 0);
        return percent;
    }
}
