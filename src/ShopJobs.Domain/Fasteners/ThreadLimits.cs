namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// The sizes a made thread may have in the usual tolerance classes: 6g bolts and 6H nuts (ISO 965-1), 2A bolts and 2B nuts
/// (ASME B1.1). Plated threads are within these limits before plating. Null where the tables hold no tolerance for the size.
/// </summary>
public static class ThreadLimits
{
    /// <summary>Limits of the bolt: 6g of a metric thread, 2A of an inch thread.</summary>
    public static ExternalThreadLimits? External(ThreadSize thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return thread.Standard == ThreadStandard.MetricIso
            ? MetricThreadTolerance.External(thread.DiameterMm, thread.PitchMm)
            : InchThreadTolerance.External(thread.DiameterMm, thread.PitchMm, thread.IsUncOrUnf);
    }

    /// <summary>Limits of the nut: 6H of a metric thread, 2B of an inch thread.</summary>
    public static InternalThreadLimits? Internal(ThreadSize thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return thread.Standard == ThreadStandard.MetricIso
            ? MetricThreadTolerance.Internal(thread.DiameterMm, thread.PitchMm)
            : InchThreadTolerance.Internal(thread.DiameterMm, thread.PitchMm, thread.IsUncOrUnf);
    }
}
