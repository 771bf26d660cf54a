namespace ShopJobs.Domain.Summaries;

/// <summary>How a line of the customer's page differs from the version before.</summary>
public enum ChangeKind
{
    /// <summary>It was not on the version before.</summary>
    New,

    /// <summary>It was on the version before and is not any more.</summary>
    Gone,

    /// <summary>It is valid now and was not: a release, a joint at torque, a result.</summary>
    StandsNow,

    /// <summary>It was valid and is not any more.</summary>
    StandsNoLonger,
}

/// <summary>The part of the page a change is in.</summary>
public enum ChangePart
{
    Open,
    Duty,
    Release,
    Work,
    Finding,
    Mistake,
    Tightened,
    Fitted,
    Result,
    Advice,
    Declined,
}

/// <summary>One difference between two versions of a car's page.</summary>
/// <param name="Words">The line itself: as it is now, or as it was where it is gone.</param>
public sealed record SummaryChange(ChangeKind Kind, ChangePart Part, string Words);
