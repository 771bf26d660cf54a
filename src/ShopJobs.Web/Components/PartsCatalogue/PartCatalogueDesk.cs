using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>The lead enters parts and changes them. Commands return null, or why not and what to do.</summary>
public sealed class PartCatalogueDesk(ShopChange changes, PartCatalogueShelf shelf, ShopSettings settings, ShopClock clock)
{
    internal const string NotYours = "The parts of the shop are the lead's to change. Sign in as the lead.";
    private const string NoneLikeThat = "That part is not in the catalogue. Load the page again.";

    /// <summary>Adds a part, or changes one.</summary>
    public async Task<PartRefusal?> SaveAsync(PartForm form, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (new PartFormValidator(shelf.KindKeys()).Validate(form) is { IsValid: false, Errors: [var first, ..] })
        {
            return new PartRefusal(first.PropertyName, first.ErrorMessage);
        }

        var values = PartValues.Of(form);
        var field = "";
        var refusal = await changes.RunAsync(
            Right.Lead,
            NotYours,
            async (shop, by) =>
            {
                var said = await ChangeAsync(shop, form, values, by, cancellation);
                field = said?.Field ?? "";
                return said?.Words;
            },
            cancellation);
        if (refusal is not null)
        {
            return new PartRefusal(field, refusal);
        }

        if (values.Currency is { } currency)
        {
            await settings.RememberCurrencyAsync(currency, cancellation);
        }

        return null;
    }

    /// <summary>Takes a part out of use, or brings it back; null, or why not.</summary>
    /// <param name="revision">Revision of the row that was shown.</param>
    public Task<string?> RetireAsync(PartId id, Guid revision, bool retired, CancellationToken cancellation = default) => changes.RunAsync(
        Right.Lead,
        NotYours,
        async (shop, by) =>
        {
            if (await shop.Parts.FindAsync([id], cancellation) is not { } part)
            {
                return NoneLikeThat;
            }

            shop.Entry(part).Property(row => row.Revision).OriginalValue = revision;
            part.RetiredAt = retired ? clock.Now : null;
            part.Touch(by, clock.Now);
            return null;
        },
        cancellation);

    private async Task<PartRefusal?> ChangeAsync(ShopDbContext shop, PartForm form, PartValues values, PersonId by, CancellationToken cancellation)
    {
        var key = PartRow.KeyOf(values.Maker, values.Number);
        if (await shop.Parts.AsNoTracking().FirstOrDefaultAsync(other => other.Key == key && other.Id != form.Id, cancellation) is { } other)
        {
            return new(nameof(PartForm.Number), $"{other.Maker} {other.Number} is in the catalogue already. {(other.RetiredAt is null ? "Change that one, or read the number again." : "It is out of use: bring it back, or read the number again.")}");
        }

        var part = await shop.Parts.FindAsync([form.Id], cancellation);
        if (part is null && form.Revision != default)
        {
            return new("", NoneLikeThat);
        }

        if (part is null)
        {
            part = new PartRow { Id = form.Id };
            shop.Parts.Add(part);
        }
        else
        {
            shop.Entry(part).Property(row => row.Revision).OriginalValue = form.Revision;
        }

        values.WriteTo(part);
        part.Touch(by, clock.Now);
        return null;
    }
}
