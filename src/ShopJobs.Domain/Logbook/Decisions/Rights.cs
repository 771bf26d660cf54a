namespace ShopJobs.Domain.Logbook;

/// <summary>What a person may do, dated. A right, not a role name, is what a decision is given.</summary>
public enum Right
{
    Record,
    Witness,
    Author,
    Decide,
    Release,
    Lead,

    /// <summary>Learns the work: what this person pulls and signs waits for the countersignature of one who may record and stood by. Held alone.</summary>
    Trainee,
}

/// <summary>Which rights go together.</summary>
public static class RightSets
{
    /// <summary>Every right but the trainee's: those of whoever runs the shop.</summary>
    public static readonly IReadOnlyList<Right> OfTheLead = [.. Enum.GetValues<Right>().Where(right => right != Right.Trainee)];

    /// <summary>True where nobody holds both at once: a trainee answers for nothing alone.</summary>
    public static bool Exclude(Right one, Right other) => one != other && (one == Right.Trainee || other == Right.Trainee);
}
