using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Why a declaration of the car's condition no longer says how the car is.</summary>
public abstract record ConditionEnd
{
    /// <summary>The car was released since.</summary>
    public sealed record ByRelease(ReleaseKind Kind) : ConditionEnd;

    /// <summary>The car left the shop since.</summary>
    public sealed record ByLeaving : ConditionEnd;

    /// <summary>A joint was opened since, that the aspect depends on.</summary>
    public sealed record ByOpening(Joint Joint) : ConditionEnd;

    /// <summary>A job went on since, after a hold.</summary>
    public sealed record ByResumption : ConditionEnd;

    /// <summary>It is older than the register lets it last.</summary>
    public sealed record ByAge(decimal Hours) : ConditionEnd;

    /// <summary>The clock went back or jumped since: nobody knows how old it is.</summary>
    public sealed record ByClock : ConditionEnd;

    private ConditionEnd()
    {
    }
}
