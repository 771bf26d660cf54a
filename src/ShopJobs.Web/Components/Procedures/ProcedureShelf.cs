using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Procedures;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>The register in force, with the digest a job notes.</summary>
public sealed record ShelvedRegister(string Digest, JointRegister Register);

/// <summary>A procedure in the shop, read with the register in force.</summary>
/// <param name="Row">As it was imported.</param>
/// <param name="IsCurrent">True for the newest revision of its code.</param>
/// <param name="Document">The document; its value is null where it does not fit the register in force.</param>
public sealed record ShelvedProcedure(ProcedureRevision Row, bool IsCurrent, LoadedDocument<Procedure> Document);

/// <summary>Gives out the joint register and the procedures. Stored documents never change, so each is read once.</summary>
public sealed class ProcedureShelf(IDbContextFactory<ShopDbContext> database)
{
    private readonly ConcurrentDictionary<string, JointRegister> registers = new();
    private readonly ConcurrentDictionary<(string Digest, string Register), LoadedDocument<Procedure>> procedures = new();

    /// <summary>The register in force; null while the shop has none.</summary>
    public async Task<ShelvedRegister?> CurrentRegisterAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var digest = await shop.JointRegisters.Where(row => row.Current).Select(row => row.Digest).SingleOrDefaultAsync(cancellation);
        return digest is not null && await RegisterAsync(digest, cancellation) is { } register ? new ShelvedRegister(digest, register) : null;
    }

    /// <summary>The register of this digest; null when the shop never had it.</summary>
    public async Task<JointRegister?> RegisterAsync(string digest, CancellationToken cancellation = default)
    {
        if (registers.TryGetValue(digest, out var known))
        {
            return known;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var row = await shop.JointRegisters.AsNoTracking().SingleOrDefaultAsync(row => row.Digest == digest, cancellation);
        return row is not null && JointRegisterDocument.Load(row.Yaml, row.Digest, cancellation).Value is { } register
            ? registers.GetOrAdd(digest, register)
            : null;
    }

    /// <summary>The procedure of this digest as it was checked against that register: what a job took. Null when either is not here.</summary>
    public async Task<Procedure?> ProcedureAsync(string digest, string registerDigest, CancellationToken cancellation = default)
    {
        if (procedures.TryGetValue((digest, registerDigest), out var known))
        {
            return known.Value;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Procedures.AsNoTracking().SingleOrDefaultAsync(row => row.Digest == digest, cancellation) is { } found
            && await RegisterAsync(registerDigest, cancellation) is { } register
            ? Read(found, new ShelvedRegister(registerDigest, register)).Value
            : null;
    }

    /// <summary>The newest revision of each code, by code.</summary>
    public async Task<IReadOnlyList<ShelvedProcedure>> CurrentAsync(CancellationToken cancellation = default) =>
        [.. (await AllAsync(cancellation)).Where(shelved => shelved.IsCurrent)];

    /// <summary>One revision, current or not; null when the shop never had it.</summary>
    public async Task<ShelvedProcedure?> FindAsync(string digest, CancellationToken cancellation = default) =>
        (await AllAsync(cancellation)).FirstOrDefault(shelved => shelved.Row.Digest == digest);

    private async Task<IReadOnlyList<ShelvedProcedure>> AllAsync(CancellationToken cancellation)
    {
        if (await CurrentRegisterAsync(cancellation) is not { } register)
        {
            return [];
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var rows = await shop.Procedures.AsNoTracking().ToListAsync(cancellation);
        return
        [
            .. rows.GroupBy(row => row.Code).OrderBy(code => code.Key, CodeOrder.Natural)
                .SelectMany(code => code.OrderByDescending(row => row.ImportedAt)
                    .Select((row, place) => new ShelvedProcedure(row, place == 0, Read(row, register)))),
        ];
    }

    private LoadedDocument<Procedure> Read(ProcedureRevision row, ShelvedRegister register) =>
        procedures.GetOrAdd((row.Digest, register.Digest), _ => ProcedureDocument.Load(row.Yaml, $"{row.Code}.yaml", register.Register));
}
