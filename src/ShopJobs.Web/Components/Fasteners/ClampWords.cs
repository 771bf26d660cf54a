using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Components.Fasteners;

/// <summary>The clamp load of a joint in words: what the picture draws, for those who do not see it.</summary>
public static class ClampWords
{
    /// <summary>"dry", or "as stated" where a friction comes without a condition.</summary>
    public static string Of(ThreadCondition? condition) => condition switch
    {
        ThreadCondition.Dry => "dry",
        ThreadCondition.Oiled => "oiled",
        ThreadCondition.PreAppliedLocker => "pre-applied locker",
        ThreadCondition.Locker => "locker",
        ThreadCondition.AntiSeize => "anti-seize",
        _ => "friction as stated",
    };

    /// <summary>Least, nominal and greatest load, and their share of the proof load.</summary>
    public static string Of(ClampBand.Computed band)
    {
        ArgumentNullException.ThrowIfNull(band);
        var loads = FormattableString.Invariant($"{Short(band.Minimum)} / {Short(band.Nominal)} / {Load(band.Maximum)}");
        return band.Utilisation is { } share
            ? FormattableString.Invariant($"{loads}, {share.Minimum:0 %} to {share.Maximum:0 %} of proof load {Load(band.ProofLoad!.Value)}")
            : $"{loads}; no proof load is known for it";
    }

    /// <summary>What gives at a limit.</summary>
    public static string Of(ClampLimitKind kind) => kind switch
    {
        ClampLimitKind.Proof => "proof load of the bolt",
        ClampLimitKind.Bearing => "the face under the head or nut gives",
        ClampLimitKind.Stripping => "the thread strips",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a limit."),
    };

    /// <summary>What the top of a band may do, or null where it stays below every limit.</summary>
    public static string? Warning(ClampStanding standing, ClampRow row)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(row);
        if (row.Band is not ClampBand.Computed band)
        {
            return null;
        }

        var passed = standing.Limits.Where(limit => band.Maximum > limit.Load).Select(limit => limit.Kind switch
        {
            ClampLimitKind.Proof => "may stretch the bolt for good",
            ClampLimitKind.Bearing => "may crush the face",
            _ => "may strip the thread",
        });
        var yields = row.Yield is { } yield && band.Maximum > yield ? ["may yield the bolt while tightening"] : Array.Empty<string>();
        return string.Join("; ", yields.Concat(passed)) is { Length: > 0 } words ? words : null;
    }

    /// <summary>A load in kN, one decimal below 20 kN.</summary>
    public static string Load(Force load) => $"{Short(load)} kN";

    /// <summary>From one load to another: "37 to 68 kN".</summary>
    public static string Loads(Force from, Force to) => $"{Short(from)} to {Load(to)}";

    private static string Short(Force load) => load.Kilonewtons < 20
        ? FormattableString.Invariant($"{load.Kilonewtons:0.0}")
        : FormattableString.Invariant($"{load.Kilonewtons:0}");
}
