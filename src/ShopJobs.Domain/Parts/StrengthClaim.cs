using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>The evidence for a strength class.</summary>
public enum StrengthEvidence
{
    /// <summary>The class is marked on the part.</summary>
    Marked,

    /// <summary>A test report comes with the lot.</summary>
    Tested,

    /// <summary>It is said, with neither grade mark nor test.</summary>
    SaidOnly,
}

/// <summary>A strength class and its evidence.</summary>
public sealed record StrengthClaim(StrengthClass Class, StrengthEvidence Evidence)
{
    /// <summary>For example "10.9, marked on the part".</summary>
    public override string ToString() => Evidence switch
    {
        StrengthEvidence.Marked => $"{Class}, marked on the part",
        StrengthEvidence.Tested => $"{Class}, with a test report",
        _ => $"{Class}, claimed, not proven",
    };
}
