namespace ShopJobs.Domain.Fasteners;

/// <summary>The family a thread size belongs to.</summary>
public enum ThreadStandard
{
    /// <summary>ISO metric, ISO 68-1 profile, sizes of ISO 261.</summary>
    MetricIso,

    /// <summary>Unified inch, ASME B1.1.</summary>
    UnifiedInch,
}
