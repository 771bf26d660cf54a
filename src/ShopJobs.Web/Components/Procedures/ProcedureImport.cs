using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Procedures;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>
/// Takes a batch of documents into the shop, all or none: at most one joint register, and procedures, which are checked
/// against that register or the one in force. A new revision of a code becomes current; older ones stay.
/// </summary>
public sealed class ProcedureImport(IDbContextFactory<ShopDbContext> database, TimeProvider time)
{
    /// <summary>Imports the files.</summary>
    /// <param name="files">The batch.</param>
    /// <param name="by">Who hands it in; null from the machine itself. The caller asked for the right.</param>
    /// <param name="lookedBy">A second person who looked and signed, where the register takes joints away; null where nobody did.</param>
    /// <param name="cancellation">Gives up before anything is stored.</param>
    public async Task<ImportReport> ImportAsync(IReadOnlyList<DocumentFile> files, PersonId? by, PersonId? lookedBy = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(files);
        await using var shop = await database.CreateDbContextAsync(cancellation);
        while (true)
        {
            // Reading a document takes as long as it takes: nobody's work waits for it. Where another import came in between, it is read again.
            var batch = await ImportBatch.ReadAsync(shop, files, cancellation);
            if (batch.TakesAway && lookedBy is null)
            {
                batch.RefuseToTakeAway();
            }

            if (!batch.IsSound)
            {
                return batch.Report();
            }

            await using var locked = await shop.Database.BeginTransactionAsync(cancellation);
            if (await batch.StillHoldsAsync(shop, cancellation))
            {
                await StoreAsync(shop, batch, by, batch.TakesAway ? lookedBy : null, cancellation);
                await locked.CommitAsync(cancellation);
                return batch.Report();
            }
        }
    }

    private async Task StoreAsync(ShopDbContext shop, ImportBatch batch, PersonId? by, PersonId? lookedBy, CancellationToken cancellation)
    {
        var at = time.GetUtcNow().UtcDateTime;
        if (batch.NewRegister is { } register)
        {
            await shop.JointRegisters.Where(row => row.Current)
                .ExecuteUpdateAsync(rows => rows.SetProperty(row => row.Current, false), cancellation);
            if (batch.WasHere(register))
            {
                await shop.JointRegisters.Where(row => row.Digest == register.Digest).ExecuteUpdateAsync(
                    rows => rows.SetProperty(row => row.Current, true).SetProperty(row => row.LookedBy, lookedBy), cancellation);
            }
            else
            {
                shop.JointRegisters.Add(new JointRegisterRevision
                {
                    Digest = register.Digest,
                    Yaml = register.File.Bytes,
                    ImportedAt = at,
                    ImportedBy = by,
                    LookedBy = lookedBy,
                    Current = true,
                });
            }
        }

        foreach (var read in batch.NewProcedures)
        {
            var procedure = read.Procedure!.Value!;
            var newest = batch.Rows.Where(row => row.Code == procedure.Code).Select(row => row.CurrentSince).DefaultIfEmpty().Max();
            var since = at > newest ? at : newest.AddMicroseconds(1);
            if (batch.WasHere(read))
            {
                await shop.Procedures.Where(row => row.Digest == read.Digest).ExecuteUpdateAsync(rows => rows.SetProperty(row => row.CurrentSince, since).SetProperty(row => row.RetiredAt, (DateTime?)null).SetProperty(row => row.RetiredBy, (PersonId?)null), cancellation);
                continue;
            }

            shop.Procedures.Add(new ProcedureRevision
            {
                Digest = read.Digest,
                Code = procedure.Code,
                Title = procedure.Title,
                Revision = procedure.Revision,
                Yaml = read.File.Bytes,
                Demo = procedure.DemoData,
                ImportedAt = since,
                ImportedBy = by,
                CurrentSince = since,
            });
        }

        await shop.SaveChangesAsync(cancellation);
    }
}
