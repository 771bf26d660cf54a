using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>Rules on torque tools from standards and public manuals, with the figures that this code computes with.</summary>
public static class PublishedToolRules
{
    private const string Iso2017 = "ISO 6789-1:2017";
    private const string Navy = "US Navy NAVEDTRA 14315";

    private static readonly EnteredTorque Ten = new(10, TorqueUnit.NewtonMetre);
    private static readonly EnteredTorque AboveTen = new(11, TorqueUnit.NewtonMetre);

    /// <summary>All rules held here.</summary>
    public static IReadOnlyList<PublishedRule> All { get; } =
    [
        new("screwdriver classes (type I/II D-F), any size",
            $"+-{ToolClass.SettingScrewdriver.PermittedPercent(Ten):0} %", $"{Iso2017}, from memory"),
        new("wrench classes up to 10 N.m", $"+-{ToolClass.SettingGraduated.PermittedPercent(Ten):0} %", $"{Iso2017}, from memory"),
        new("wrench classes above 10 N.m", $"+-{ToolClass.SettingGraduated.PermittedPercent(AboveTen):0} %", $"{Iso2017}, from memory"),
        new("torsion or bending bar classes, any size", $"+-{ToolClass.IndicatingBar.PermittedPercent(AboveTen):0} %", $"{Iso2017}, from memory"),
        new("recalibration interval", string.Create(
            CultureInfo.InvariantCulture,
            $"{RecalibrationInterval.Iso6789.Months} months from first use or {RecalibrationInterval.Iso6789.Cycles} cycles, whichever first"),
            $"{Iso2017}, 5.3, from memory"),
        new("torque range starts at", "lowest marked value; must be calibrated there", Iso2017),
        new("electronic wrench resolution", "at most 1/4 of declared MPD at that reading", Iso2017),
        new("reading device uncertainty", "at most 1/4 of tool MPD (2003: better than +-1 %)", "ISO 6789:2003"),
        new("setting tool ramp", "from 80 % to 100 % of target in 0.5 to 4 s", "ISO 6789:2003, type II class A"),
        new("pre-test exercise",
            $"type II: {ToolClasses.SettingPreloads} loads at maximum before the test; type I: one preload to maximum then zero", "ISO 6789:2003"),
        new("wrench to choose",
            "0-25 lbf.in use 30; 25-140 lbf.in use 150; 140-550 use 600 lbf.in; 30-140 lbf.ft use 150; 140-240 use 250; 240-1000 use 1000",
            "US Army TM 55-2840-251-23, table E-1"),
        new("handle pipe (cheater)", "not allowed; force at the handle mark", $"instruction sheet; {Navy}"),
        new("handle setting formula holds only", "when force acts at the point the length was measured from", Navy),
        new("calibration", "at least yearly and after a drop or abuse", "FAA AC 43.13-1B (9/8/98), par. 7-40"),
        new("use", "final tightening only, not for breaking loose", "US Army TB 43-0218"),
    ];
}
