namespace ShopJobs.Domain.Procedures;

/// <summary>What a car may be released to. The digest that is kept of a request holds the number: a new kind takes the next one.</summary>
public enum ReleaseKind
{
    /// <summary>Moved by hand, in the shop only.</summary>
    Move = 0,

    /// <summary>Driven on the road by a named person for a stated distance, to get what only a drive can give. It ends at return or with the day.</summary>
    RoadTest = 3,

    /// <summary>Driven on the road.</summary>
    Road = 1,

    /// <summary>Driven on track.</summary>
    Track = 2,
}

/// <summary>The releases in the order in which a car gets them.</summary>
public static class ReleaseKinds
{
    /// <summary>From the least that is allowed to the most.</summary>
    public static readonly IReadOnlyList<ReleaseKind> All = [ReleaseKind.Move, ReleaseKind.RoadTest, ReleaseKind.Road, ReleaseKind.Track];
}

/// <summary>The least a joint must be for a release.</summary>
public enum LeastState
{
    /// <summary>Every position counts, or is as found and untouched.</summary>
    Counts,

    /// <summary>Hand-tight is enough. Only for <see cref="ReleaseKind.Move"/>, never wheel, hub, steering or brake joints.</summary>
    HandTight,

    /// <summary>Every position was made and counts here: as found is not enough.</summary>
    MadeHere,
}
