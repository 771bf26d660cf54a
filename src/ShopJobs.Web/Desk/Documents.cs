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
    private readonly ConcurrentDictionary<(string Procedure, string Register, string? Follows), LoadedDocument<Procedure>> procedures = [];
    private readonly ConcurrentDictionary<(string Procedure, string Register, JointList Joints, string Places), PlacedProcedure> placed = [];

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

    /// <summary>The procedure with this digest as it was put on a car that followed this list of that register. It went on, so it fits.</summary>
    private Procedure Procedure(LogbookReader reader, string digest, string registerDigest, string follows) =>
        DocumentReading.Loaded(Read(reader, digest, registerDigest, follows));

    /// <summary>The procedure with its errors and cautions: one that no longer fits a newer register has no value.</summary>
    /// <param name="follows">The list of the register that the car follows; null where it may be on any car that it fits.</param>
    public LoadedDocument<Procedure> Read(LogbookReader reader, string digest, string registerDigest, string? follows = null)
    {
        ArgumentNullException.ThrowIfNull(reader);
        if (procedures.TryGetValue((digest, registerDigest, follows), out var known))
        {
            return known;
        }

        var register = Register(reader, registerDigest);
        return reader.Row($"procedure:{digest}:{registerDigest}:{follows}", "SELECT Yaml FROM Procedures WHERE Digest = $1", [digest], yaml => procedures.GetOrAdd(
            (digest, registerDigest, follows),
            _ => follows is null ? DocumentReading.Procedure(Bytes(yaml, digest), register) : DocumentReading.Procedure(Bytes(yaml, digest), register, follows)));
    }

    /// <summary>The job's procedure at its places.</summary>
    public PlacedProcedure Placed(LogbookReader reader, JobBook job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var joints = job.Fact.Joints ?? JointList.OfTheRegister;
        var key = (job.Fact.ProcedureDigest, job.Fact.RegisterDigest, joints, string.Join(',', job.Fact.Places));
        return placed.TryGetValue(key, out var known)
            ? known
            : placed.GetOrAdd(key, new PlacedProcedure(
                Procedure(reader, job.Fact.ProcedureDigest, job.Fact.RegisterDigest, joints.Follows),
                Register(reader, job.Fact.RegisterDigest).For(joints),
                job.Fact.Places));
    }

    private static byte[] Bytes(object? yaml, string digest) =>
        yaml as byte[] ?? throw new InvalidOperationException($"No document has the digest {digest}.");
}
