namespace ShopJobs.Domain.Tools;

/// <summary>Type and class of a hand torque tool by ISO 6789-1:2017 (from memory of the standard).</summary>
public enum ToolClass
{
    /// <summary>Type I class A: wrench with torsion or bending bar.</summary>
    IndicatingBar,

    /// <summary>Type I class B: wrench with rigid housing and dial or display.</summary>
    IndicatingDial,

    /// <summary>Type I class C: electronic wrench.</summary>
    IndicatingElectronic,

    /// <summary>Type I class D or E: indicating screwdriver.</summary>
    IndicatingScrewdriver,

    /// <summary>Type II class A: adjustable wrench with scale or display.</summary>
    SettingGraduated,

    /// <summary>Type II class B: wrench with a fixed setting.</summary>
    SettingFixed,

    /// <summary>Type II class C: adjustable wrench without a scale.</summary>
    SettingUngraduated,

    /// <summary>Type II class D, E or F: setting screwdriver.</summary>
    SettingScrewdriver,

    /// <summary>Type II class G: adjustable wrench with bending bar.</summary>
    SettingBar,
}
