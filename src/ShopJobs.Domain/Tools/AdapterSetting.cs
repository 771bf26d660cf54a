using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tools;

/// <summary>
/// A crowfoot or extension on a torque wrench: L from the square drive to the mark of the hand, E from the square drive to the
/// fastener, a the angle between them (0 straight out, 90 to the side, 180 back towards the hand).
/// S = T L/(L + E cos a): US Navy NAVEDTRA 14315, US Army TM 9-254. Holds only while the hand stays at the mark.
/// </summary>
public sealed record AdapterSetting
{
    /// <summary>Least lever in mm that wrench and adapter leave together.</summary>
    public const double ShortestLever = 1;

    /// <summary>
    /// L above zero; E of any sign (below zero shortens, as 180 degrees does); the angle from 0 to 180 degrees;
    /// L + E cos a above zero.
    /// </summary>
    public AdapterSetting(Length wrench, Length adapter, Angle angle)
    {
        if (!(wrench.Millimeters > 0 && double.IsFinite(wrench.Millimeters)))
        {
            throw new ArgumentOutOfRangeException(nameof(wrench), wrench, "The wrench length must be above zero.");
        }

        if (!(angle.Degrees is >= 0 and <= 180))
        {
            throw new ArgumentOutOfRangeException(nameof(angle), angle, "The angle must be from 0 to 180 degrees.");
        }

        var effective = wrench.Millimeters + (adapter.Millimeters * Cosine(angle));
        if (!(effective > 0 && double.IsFinite(effective)))
        {
            throw new ArgumentOutOfRangeException(nameof(adapter), adapter, "Wrench and adapter leave no lever: measure both again.");
        }

        Wrench = wrench;
        Adapter = adapter;
        Angle = angle;
        Ratio = (decimal)(wrench.Millimeters / effective);
    }

    /// <summary>L, square drive to the mark of the hand.</summary>
    public Length Wrench { get; }

    /// <summary>E, square drive to the fastener.</summary>
    public Length Adapter { get; }

    /// <summary>Angle of the adapter, 0 straight out.</summary>
    public Angle Angle { get; }

    /// <summary>Setting over torque at the fastener: L/(L + E cos a).</summary>
    public decimal Ratio { get; }

    /// <summary>The same adapter on a wrench of another length; null where the two leave no lever.</summary>
    public AdapterSetting? On(Length wrench) =>
        wrench.Millimeters + (Adapter.Millimeters * Cosine(Angle)) >= ShortestLever ? new AdapterSetting(wrench, Adapter, Angle) : null;

    /// <summary>What to set for a torque at the fastener, in the same unit, not rounded.</summary>
    public EnteredTorque SettingFor(EnteredTorque atFastener) => atFastener with { Value = atFastener.Value * Ratio };

    /// <summary>Torque at the fastener from a setting, in the same unit, not rounded.</summary>
    public EnteredTorque AtFastener(EnteredTorque setting) => setting with { Value = setting.Value / Ratio };

    private static double Cosine(Angle angle) => angle.Degrees switch
    {
        0 => 1,
        90 => 0,
        180 => -1,
        _ => Math.Cos(angle.Radians),
    };
}
