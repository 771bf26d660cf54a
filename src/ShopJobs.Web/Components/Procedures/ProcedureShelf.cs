using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>The register in force, with the digest a job notes.</summary>
public sealed record ShelvedRegister(string Digest, JointRegister Register);

/// <summary>A procedure in the shop, read with the register in force.</summary>
/// <param name="Row">As it was imported.</param>
/// <param name="IsCurrent">True for the newest revision of its code.</param>
/// <param name="Document">The document; its value is null where it does not fit the register in force.</param>
public sealed record ShelvedProcedure(ProcedureRevision Row, bool IsCurrent, LoadedDocument<Procedure> Document);

/// <summary>The joint register in force, and the procedures as they read with it. Both come from the one reading of stored documents.</summary>
public sealed class ProcedureShelf(IDbContextFactory<ShopDbContext> database, LogbookSnapshots snapshots, Documents documents)
{
    /// <summary>The register in force; null while the shop has none.</summary>
    public ShelvedRegister? CurrentRegister() => snapshots.Read(reader =>
        Documents.CurrentRegister(reader) is { } digest ? new ShelvedRegister(digest, documents.Register(reader, digest)) : null);

    /// <summary>The newest revision of each code, by code.</summary>
    public async Task<IReadOnlyList<ShelvedProcedure>> CurrentAsync(CancellationToken cancellation = default) =>
        [.. (await AllAsync(cancellation)).Where(shelved => shelved.IsCurrent)];

    /// <summary>One revision, current or not; null when the shop never had it.</summary>
    public async Task<ShelvedProcedure?> FindAsync(string digest, CancellationToken cancellation = default) =>
        (await AllAsync(cancellation)).FirstOrDefault(shelved => shelved.Row.Digest == digest);

    private async Task<IReadOnlyList<ShelvedProcedure>> AllAsync(CancellationToken cancellation)
    {
        if (CurrentRegister() is not { } register)
        {
            return [];
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var rows = await shop.Procedures.AsNoTracking().ToListAsync(cancellation);
        return snapshots.Read(reader => (IReadOnlyList<ShelvedProcedure>)
        [
            .. rows.GroupBy(row => row.Code).OrderBy(code => code.Key, CodeOrder.Natural)
                .SelectMany(code => code.OrderByDescending(row => row.CurrentSince)
                    .Select((row, place) => new ShelvedProcedure(row, place == 0, documents.Read(reader, row.Digest, register.Digest)))),
        ]);
    }
}
