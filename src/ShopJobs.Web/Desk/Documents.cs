using System.Collections.Concurrent;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>The shop's register and procedures as the logbooks name them: by digest, parsed once.</summary>
public sealed class Documents
{
    private readonly ConcurrentDictionary<string, JointRegister> registers = [];
    private readonly ConcurrentDictionary<(string Procedure, string Register), Procedure> procedures = [];
    private readonly ConcurrentDictionary<(string Procedure, string Register, string Places), PlacedProcedure> placed = [];

    /// <summary>Digest of the register in force; null before one is imported.</summary>
    public static string? CurrentRegister(LogbookReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return reader.Row("register", connection => Text(connection, """SELECT Digest FROM JointRegisters WHERE "Current" = 1""", null));
    }

    /// <summary>The register with this digest.</summary>
    public JointRegister Register(LogbookReader reader, string digest)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return registers.TryGetValue(digest, out var known)
            ? known
            : reader.Row($"register:{digest}", connection => registers.GetOrAdd(
                digest, _ => DocumentReading.Register(Bytes(connection, "SELECT Yaml FROM JointRegisters WHERE Digest = $digest", digest))));
    }

    /// <summary>The procedure with this digest, checked against that register.</summary>
    public Procedure Procedure(LogbookReader reader, string digest, string registerDigest)
    {
        ArgumentNullException.ThrowIfNull(reader);
        if (procedures.TryGetValue((digest, registerDigest), out var known))
        {
            return known;
        }

        var register = Register(reader, registerDigest);
        return reader.Row($"procedure:{digest}:{registerDigest}", connection => procedures.GetOrAdd(
            (digest, registerDigest),
            _ => DocumentReading.Procedure(Bytes(connection, "SELECT Yaml FROM Procedures WHERE Digest = $digest", digest), register)));
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

    private static byte[] Bytes(SqliteConnection connection, string sql, string digest)
    {
        using var command = Ask(connection, sql, digest);
        return command.ExecuteScalar() as byte[] ?? throw new InvalidOperationException($"No document has the digest {digest}.");
    }

    private static string? Text(SqliteConnection connection, string sql, string? digest)
    {
        using var command = Ask(connection, sql, digest);
        return command.ExecuteScalar() as string;
    }

    private static SqliteCommand Ask(SqliteConnection connection, string sql, string? digest)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own text reaches it.
        command.CommandText = sql;
#pragma warning restore CA2100
        if (digest is not null)
        {
            command.Parameters.AddWithValue("$digest", digest);
        }

        return command;
    }
}
