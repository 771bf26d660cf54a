using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Revisions;

/// <summary>A newer revision of a job's procedure, as it would be on this car.</summary>
/// <param name="Against">Why it can't be taken over; empty where it can.</param>
/// <param name="Effect">What it means for what was done; null where it does not fit the car.</param>
public sealed record NewerRevision(Procedure Procedure, string ProcedureDigest, string RegisterDigest, IReadOnlyList<SaidHold> Against, RevisionEffect? Effect);

/// <summary>Finds the current revision of a job's procedure, where that is another one than the job is done by.</summary>
public sealed class NewerRevisions(LogbookSnapshots snapshots, Documents documents)
{
    /// <summary>Revision of the current document of the job's procedure; null where the job is done by it.</summary>
    public string? NumberFor(JobBook job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return snapshots.Read(reader => Current(reader, job.Fact.Procedure) is { } current && current.Digest != job.Fact.ProcedureDigest ? current.Revision : null);
    }

    /// <summary>The current revision on this car; null where the job is done by it, or it can't be read with the register in force.</summary>
    public NewerRevision? For(CarReading reading, JobBook job)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(job);
        return snapshots.Read(reader =>
        {
            if (Current(reader, job.Fact.Procedure) is not { } current || current.Digest == job.Fact.ProcedureDigest
                || Documents.CurrentRegister(reader) is not { } register
                || (documents.Read(reader, current.Digest, register, reading.State.Joints.Follows).Value ?? documents.Read(reader, current.Digest, register).Value) is not { } procedure)
            {
                return null;
            }

            var against = Decider.AgainstFit(reading.State, procedure, job.Fact.Places, reading.Now).Select(reading.Now.Say).ToList();
            var effect = against.Count > 0 ? null : RevisionEffect.Of(reading.State, reading.Now, job, new PlacedProcedure(procedure, reading.Now.Register, [.. job.Fact.Places]));
            return new NewerRevision(procedure, current.Digest, register, against, effect);
        });
    }

    private static (string Digest, string Revision)? Current(LogbookReader reader, string code) => reader.Row(
        $"current:{code}", "SELECT Digest || ' ' || Revision FROM Procedures WHERE Code = $1 ORDER BY CurrentSince DESC LIMIT 1", [code],
        row => row is string text && text.Split(' ', 2) is [var digest, var revision] ? (digest, revision) : ((string, string)?)null);
}
