using System.Collections.Frozen;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Factor, symbol and spellings of each <see cref="TorqueUnit"/>.</summary>
public static class TorqueUnits
{
    private static readonly FrozenDictionary<string, TorqueUnit> Spellings = new Dictionary<string, TorqueUnit>
    {
        ["nm"] = TorqueUnit.NewtonMetre,
        ["newtonmetre"] = TorqueUnit.NewtonMetre,
        ["newtonmetres"] = TorqueUnit.NewtonMetre,
        ["newtonmeter"] = TorqueUnit.NewtonMetre,
        ["newtonmeters"] = TorqueUnit.NewtonMetre,
        ["lbfft"] = TorqueUnit.PoundForceFoot,
        ["lbft"] = TorqueUnit.PoundForceFoot,
        ["lbsft"] = TorqueUnit.PoundForceFoot,
        ["ftlb"] = TorqueUnit.PoundForceFoot,
        ["ftlbs"] = TorqueUnit.PoundForceFoot,
        ["ftlbf"] = TorqueUnit.PoundForceFoot,
        ["footpound"] = TorqueUnit.PoundForceFoot,
        ["footpounds"] = TorqueUnit.PoundForceFoot,
        ["poundfoot"] = TorqueUnit.PoundForceFoot,
        ["poundfeet"] = TorqueUnit.PoundForceFoot,
        ["lbfin"] = TorqueUnit.PoundForceInch,
        ["lbin"] = TorqueUnit.PoundForceInch,
        ["lbsin"] = TorqueUnit.PoundForceInch,
        ["inlb"] = TorqueUnit.PoundForceInch,
        ["inlbs"] = TorqueUnit.PoundForceInch,
        ["inlbf"] = TorqueUnit.PoundForceInch,
        ["inchpound"] = TorqueUnit.PoundForceInch,
        ["inchpounds"] = TorqueUnit.PoundForceInch,
        ["poundinch"] = TorqueUnit.PoundForceInch,
        ["kgfm"] = TorqueUnit.KilogramForceMetre,
        ["kgm"] = TorqueUnit.KilogramForceMetre,
        ["mkg"] = TorqueUnit.KilogramForceMetre,
        ["mkgf"] = TorqueUnit.KilogramForceMetre,
        ["kpm"] = TorqueUnit.KilogramForceMetre,
        ["mkp"] = TorqueUnit.KilogramForceMetre,
    }.ToFrozenDictionary();

    /// <summary>
    /// Newton metres in one unit, exact: 1 lbf = 0.45359237 kg x 9.80665 m/s2, 1 ft = 0.3048 m, 1 in = 0.0254 m
    /// (NIST SP 811, appendix B).
    /// </summary>
    public static decimal NewtonMetresPerUnit(this TorqueUnit unit) => unit switch
    {
        TorqueUnit.NewtonMetre => 1m,
        TorqueUnit.PoundForceFoot => 1.3558179483314004m,
        TorqueUnit.PoundForceInch => 0.1129848290276167m,
        TorqueUnit.KilogramForceMetre => 9.80665m,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a torque unit."),
    };

    /// <summary>The symbol shown beside a value, for example N·m.</summary>
    public static string Symbol(this TorqueUnit unit) => unit switch
    {
        TorqueUnit.NewtonMetre => "N·m",
        TorqueUnit.PoundForceFoot => "lbf·ft",
        TorqueUnit.PoundForceInch => "lbf·in",
        TorqueUnit.KilogramForceMetre => "kgf·m",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a torque unit."),
    };

    /// <summary>Reads a unit as people write it: N·m, Nm, N.m, ft-lb, lb-ft, inlb, kgm. False for anything else, never a guess.</summary>
    public static bool TryParse(string text, out TorqueUnit unit)
    {
        var letters = string.Concat(text.Where(c => !char.IsWhiteSpace(c) && !"·⋅•.-*_×".Contains(c)));
        return Spellings.TryGetValue(letters.ToLowerInvariant(), out unit);
    }
}
