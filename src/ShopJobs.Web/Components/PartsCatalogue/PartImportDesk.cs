using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>A file that was handed in.</summary>
public sealed record KeptFile(Guid Id, string Name, PartsFile File);

/// <summary>What became of taking a file in.</summary>
/// <param name="Refusal">Why it was not, and what to do; null where it was.</param>
/// <param name="Plan">What was looked at with the write lock in hand; null where the file is not kept any more, or the right is missing.</param>
public sealed record ImportOutcome(string? Refusal, ImportPlan? Plan);

/// <summary>
/// Takes a file of parts in, in two steps: it is kept and looked at, then it is written as it was looked at, all of it or nothing.
/// </summary>
public sealed class PartImportDesk(
    IDbContextFactory<ShopDbContext> database, WhoIsHere here, ShopChange changes, PartCatalogueShelf shelf, ShopSettings settings, ShopClock clock)
{
    internal const string Gone = "This file was taken in already, or is not kept any more. Upload it again.";
    internal const string Wrong = "Nothing was taken in: correct the cells below in the file, then upload it again.";
    internal const string Changed = "The catalogue was changed since you looked, and nothing was taken in. Look at the figures below again.";

    /// <summary>Keeps a file that can be read, in place of the one that this person handed in before.</summary>
    /// <returns>The id of what is kept, or why it is not and what to do.</returns>
    public async Task<(Guid Id, string? Refusal)> KeepAsync(string name, byte[] bytes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (PartsFile.Read(bytes, out var unreadable) is null)
        {
            return (default, unreadable);
        }

        var id = Guid.NewGuid();
        var refusal = await changes.RunAsync(
            Right.Lead,
            PartCatalogueDesk.NotYours,
            async (shop, by) =>
            {
                var since = clock.Now - PartImportDraft.Kept;
                await shop.PartImportDrafts.Where(draft => draft.By == by || draft.At < since).ExecuteDeleteAsync(cancellation);
                shop.PartImportDrafts.Add(new PartImportDraft { Id = id, By = by, At = clock.Now, Name = Shortened(name), Bytes = bytes });
                return null;
            },
            cancellation);
        return (id, refusal);
    }

    /// <summary>A file that whoever is here has handed in; null where it is not kept any more.</summary>
    public async Task<KeptFile?> FindAsync(Guid id, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await here.LookingAsync(cancellation) is { } present ? await FindAsync(shop, id, present.Person, cancellation) : null;
    }

    /// <summary>What taking it in would do now.</summary>
    /// <param name="currency">Of prices without one, three letters.</param>
    public async Task<ImportPlan> LookAsync(PartsFile file, PartColumns columns, string currency, CancellationToken cancellation = default)
    {
        var known = (await shelf.AllAsync(cancellation)).ToDictionary(part => part.Key, StringComparer.Ordinal);
        return new ImportPlanner(file, columns, currency, known, shelf.KindKeys()).Plan();
    }

    /// <summary>Writes a file that was looked at. Where the catalogue is another one than was seen, nothing is written.</summary>
    /// <param name="seen">The mark of what was looked at.</param>
    public async Task<ImportOutcome> TakeInAsync(Guid id, PartColumns columns, string currency, string seen, CancellationToken cancellation = default)
    {
        ImportPlan? plan = null;
        var refusal = await changes.RunAsync(
            Right.Lead,
            PartCatalogueDesk.NotYours,
            async (shop, by) =>
            {
                if (await FindAsync(shop, id, by, cancellation) is not { } kept)
                {
                    return Gone;
                }

                var known = await shop.Parts.ToDictionaryAsync(part => part.Key, StringComparer.Ordinal, cancellation);
                plan = new ImportPlanner(kept.File, columns, currency, known, shelf.KindKeys()).Plan();
                if (plan.AllProblems > 0 || plan.Mark != seen)
                {
                    return plan.AllProblems > 0 ? Wrong : Changed;
                }

                Write(shop, plan, by);
                await shop.PartImportDrafts.Where(draft => draft.Id == id).ExecuteDeleteAsync(cancellation);
                return null;
            },
            cancellation);
        if (refusal is null && plan!.Lines.Any(line => line.Values.Currency == currency))
        {
            await settings.RememberCurrencyAsync(currency, cancellation);
        }

        return new ImportOutcome(refusal, plan);
    }

    private void Write(ShopDbContext shop, ImportPlan plan, PersonId by)
    {
        foreach (var line in plan.Lines.Where(line => line.Kind != ImportKind.Same))
        {
            var part = line.There ?? new PartRow { Id = new PartId(Guid.NewGuid()) };
            line.Values.WriteTo(part);
            part.RetiredAt = line.Retired switch
            {
                null => part.RetiredAt,
                true => part.RetiredAt ?? clock.Now,
                false => null,
            };
            part.Touch(by, clock.Now);
            if (line.There is null)
            {
                shop.Parts.Add(part);
            }
        }
    }

    private async Task<KeptFile?> FindAsync(ShopDbContext shop, Guid id, PersonId by, CancellationToken cancellation)
    {
        var since = clock.Now - PartImportDraft.Kept;
        return await shop.PartImportDrafts.AsNoTracking().FirstOrDefaultAsync(draft => draft.Id == id && draft.By == by && draft.At >= since, cancellation) is { } draft
            && PartsFile.Read(draft.Bytes, out _) is { } file
            ? new KeptFile(draft.Id, draft.Name, file)
            : null;
    }

    private static string Shortened(string name) => name.Length > PartImportDraft.NameLength ? name[^PartImportDraft.NameLength..] : name;
}
