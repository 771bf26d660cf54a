using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Instruments;

/// <summary>How the shop speaks of an instrument.</summary>
public static class InstrumentWords
{
    public static string Words(this InstrumentKind kind) => kind switch
    {
        InstrumentKind.Gauge => "gauge",
        InstrumentKind.Scales => "scales",
        InstrumentKind.AlignmentRig => "alignment rig",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of instrument."),
    };

    /// <summary>What a check found.</summary>
    public static string Words(bool? good) => good switch
    {
        true => "within its limits",
        false => "outside its limits",
        null => "not read",
    };
}
