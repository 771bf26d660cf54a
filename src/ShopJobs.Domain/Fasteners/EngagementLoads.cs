using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>What an engaged thread carries against the bolt itself.</summary>
/// <param name="BoltBreaks">Rm x As of the bolt.</param>
/// <param name="BoltThreadStrips">Load that strips the bolt's thread.</param>
/// <param name="NutThreadStrips">Load that strips the nut's or the part's thread.</param>
public readonly record struct EngagementLoads(Force BoltBreaks, Force BoltThreadStrips, Force NutThreadStrips)
{
    /// <summary>The smallest of the three: what the joint carries before it fails.</summary>
    public Force Least => BoltBreaks.Newtons <= Strips.Newtons ? BoltBreaks : Strips;

    /// <summary>The smaller of the two threads.</summary>
    public Force Strips => BoltThreadStrips.Newtons <= NutThreadStrips.Newtons ? BoltThreadStrips : NutThreadStrips;

    /// <summary>True where the bolt breaks before a thread strips: a break is seen, a stripped thread is not.</summary>
    public bool BoltBreaksFirst => BoltBreaks.Newtons <= Strips.Newtons;
}
