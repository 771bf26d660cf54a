using System.Text.Json.Serialization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>A signed command on a job as a whole: what was shown is the car's whole logbook.</summary>
public abstract record JobCommand(JobId Job, string Shown) : SignedCommand(Shown);

/// <summary>End a job whose steps are all signed.</summary>
public sealed record EndJob(JobId Job, string Shown) : JobCommand(Job, Shown);

/// <summary>Let a job rest. It only takes assurance away.</summary>
public sealed record PutJobOnHold(JobId Job, ContentDigest Reason) : Report;

/// <summary>Let a job go on after a hold.</summary>
public sealed record ResumeJob(JobId Job, string Shown) : JobCommand(Job, Shown);

/// <summary>Give a job up.</summary>
public sealed record CancelJob(JobId Job, ContentDigest Reason, string Shown) : JobCommand(Job, Shown);

/// <summary>Take a job back that was put on the wrong car.</summary>
public sealed record TakeJobBack(JobId Job, ContentDigest Reason, string Shown) : JobCommand(Job, Shown);

/// <summary>Take over a newer revision of its procedure for a job.</summary>
/// <param name="Procedure">The newer revision.</param>
public sealed record AdoptRevision(
    JobId Job, [property: JsonIgnore] Procedure Procedure, string ProcedureDigest, string RegisterDigest, string Shown) : JobCommand(Job, Shown);
