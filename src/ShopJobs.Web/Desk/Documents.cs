using System.Collections.Concurrent;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>The shop's register and procedures as the logbooks name them: by digest, parsed once.</summary>
public sealed class Documents
{
    private readonly ConcurrentDictionary<string, JointRegister> registers = [];
    private readonly ConcurrentDictionary<(string Procedure, string Register), LoadedDocument<Procedure>> procedures = [];
    private readonly ConcurrentDictionary<(string Procedure, string Register, string Places), PlacedProcedure> placed = [];

    /// <summary>Digest of the register in force; null before one is imported.</summary>
    public static string? CurrentRegister(LogbookReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return reader.Row("register", """SELECT Digest FROM JointRegisters WHERE "Current" = 1""", [], digest => digest as string);
    }

    /// <summary>The register with this digest.</summary>
    public JointRegister Register(LogbookReader reader, string digest)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return registers.TryGetValue(digest, out var known)
            ? known
            : reader.Row($"register:{digest}", "SELECT Yaml FROM JointRegisters WHERE Digest = $1", [digest], yaml => registers.GetOrAdd(
                digest, _ => DocumentReading.Register(Bytes(yaml, digest))));
    }

    /// <summary>The procedure with this digest, checked against that register. It went on a car, so it fits.</summary>
    public Procedure Procedure(LogbookReader reader, string digest, string registerDigest) =>
        DocumentReading.Loaded(Read(reader, digest, registerDigest));

    /// <summary>The same with its errors and cautions: one that no longer fits a newer register has no value.</summary>
    public LoadedDocument<Procedure> Read(LogbookReader reader, string digest, string registerDigest)
    {
        ArgumentNullException.ThrowIfNull(reader);
        if (procedures.TryGetValue((digest, registerDigest), out var known))
        {
            return known;
        }

        var register = Register(reader, registerDigest);
        return reader.Row($"procedure:{digest}:{registerDigest}", "SELECT Yaml FROM Procedures WHERE Digest = $1", [digest], yaml => procedures.GetOrAdd(
            (digest, registerDigest), _ => DocumentReading.Procedure(Bytes(yaml, digest), register)));
    }

    /// <summary>The job's procedure at its places.</summary>
    public PlacedProcedure Placed(LogbookReader reader, JobBook job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var key = (job.Fact.ProcedureDigest, job.Fact.RegisterDigest, string.Join(',', job.Fact.Places));
        return placed.TryGetValue(key, out var known)
            ? known
            : placed.GetOrAdd(key, new PlacedProcedure(
                Procedure(reader, job.Fact.ProcedureDigest, job.Fact.RegisterDigest),
                Register(reader, job.Fact.RegisterDigest),
                job.Fact.Places));
    }

    private static byte[] Bytes(object? yaml, string digest) =>
        yaml as byte[] ?? throw new InvalidOperationException($"No document has the digest {digest}.");
}
