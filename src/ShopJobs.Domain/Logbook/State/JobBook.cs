using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a job ended by.</summary>
public enum JobEnd
{
    /// <summary>It has not ended, or runs again.</summary>
    None,

    /// <summary>A release to road or track, all its steps being signed.</summary>
    ByRelease,

    /// <summary>The lead, all its steps being signed.</summary>
    ByTheLead,

    /// <summary>It was given up.</summary>
    Cancelled,

    /// <summary>It was put on the wrong car.</summary>
    TakenBack,
}

/// <summary>A word of the lead on a job: that it rests, has ended, was given up or taken back.</summary>
/// <param name="Reason">Why, kept outside the entry; null where none is asked.</param>
public sealed record JobWord(long Number, DateTime At, PersonId Person, ContentDigest? Reason);

/// <summary>A job on this car.</summary>
public sealed record JobBook(JobId Id, long Number, DateTime StartedAt, JobStarted Fact)
{
    /// <summary>Newest sign-off of each step instance, voided ones included.</summary>
    public ImmutableDictionary<string, SignOff> SignOffs { get; init; } = ImmutableDictionary<string, SignOff>.Empty;

    /// <summary>Newest word that a step instance is done and signed later, whether it is still valid or not.</summary>
    public ImmutableDictionary<string, FinishedStep> Finished { get; init; } = ImmutableDictionary<string, FinishedStep>.Empty;

    /// <summary>True once anything was opened, fitted, tightened or signed under it.</summary>
    public bool Begun { get; init; }

    /// <summary>Entry that ended it; 0 while none did.</summary>
    public long ClosedBy { get; init; }

    /// <summary>What it ended by.</summary>
    public JobEnd End { get; init; }

    /// <summary>Since when, by whom and why it is on hold; null while it is not.</summary>
    public JobWord? OnHold { get; init; }

    /// <summary>When, by whom and why it was ended by hand, given up or taken back; null where it was not.</summary>
    public JobWord? Word { get; init; }

    /// <summary>Of a job that was taken back: what it had opened and nobody had closed.</summary>
    public IReadOnlyList<JointPosition> LeftOpen { get; init; } = [];

    /// <summary>Of a job that was taken back: something that it opened is not closed, so its steps still ask.</summary>
    public bool IsUnclosed { get; init; }

    /// <summary>True while its steps ask to be done.</summary>
    public bool IsRunning => ClosedBy == 0 || IsUnclosed;

    /// <summary>True while work on it goes on: it runs, is not on hold and was not taken back.</summary>
    public bool IsAtWork => ClosedBy == 0 && OnHold is null;
}
