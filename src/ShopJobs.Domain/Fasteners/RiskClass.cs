namespace ShopJobs.Domain.Fasteners;

/// <summary>What a failed joint may cause; the idea of VDI/VDE 2862, no conformity claimed.</summary>
public enum RiskClass
{
    /// <summary>Danger to life or limb.</summary>
    A,

    /// <summary>Loss of function.</summary>
    B,

    /// <summary>Nuisance.</summary>
    C,
}
