using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The lead ended a job whose steps are all signed.</summary>
public sealed record JobEnded(JobId Job, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job };
}

/// <summary>A job rests: until it is resumed nothing that is reported of it counts, and nothing of it is signed.</summary>
public sealed record JobPutOnHold(JobId Job, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A job goes on after a hold. What was said of the car's condition before has ended.</summary>
/// <param name="RunDownAgain">Numbers of the hand-tight entries of before whose fasteners are not at torque: they are no longer valid.</param>
public sealed record JobResumed(JobId Job, IReadOnlyList<long> RunDownAgain, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job };
}

/// <summary>A job was given up. Its unsigned steps ask no more; what it opened stays open.</summary>
public sealed record JobCancelled(JobId Job, ContentDigest Reason, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A job that was put on the wrong car was taken back. Its openings stand, and its steps ask until each is closed or was never done.</summary>
/// <param name="LeftOpen">Lasting positions that it opened and nobody has closed.</param>
public sealed record JobTakenBack(JobId Job, IReadOnlyList<JointPosition> LeftOpen, ContentDigest Reason, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Positions = LeftOpen, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A job goes on by a newer revision of its procedure.</summary>
/// <param name="Steps">Signed steps that ask something else now: their sign-offs have fallen.</param>
/// <param name="Outside">Numbers of the pulls that are outside what the newer revision asks: they are held until somebody decides.</param>
public sealed record RevisionAdopted(
    JobId Job, string Revision, string ProcedureDigest, string RegisterDigest, IReadOnlyList<string> Steps, IReadOnlyList<long> Outside, string Shown) : Entry
{
    /// <summary>Which joints the car had then; null where it followed the register's own list.</summary>
    public JointList? Joints { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, About = Outside };
}
