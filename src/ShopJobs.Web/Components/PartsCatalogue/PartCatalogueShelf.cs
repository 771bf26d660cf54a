using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>What a search finds.</summary>
/// <param name="First">Its first parts, by maker and number.</param>
/// <param name="Matching">How many it finds in all.</param>
/// <param name="InUse">Parts in use in the whole catalogue.</param>
/// <param name="Retired">Parts out of use in the whole catalogue.</param>
public sealed record PartsFound(IReadOnlyList<PartRow> First, int Matching, int InUse, int Retired);

/// <summary>A part, and the name of whoever changed it last.</summary>
public sealed record PartShown(PartRow Part, string? ChangedBy);

/// <summary>A joint that a part may fill.</summary>
public sealed record KindToFill(string Key, string Name);

/// <summary>What the pages of the parts catalogue read.</summary>
public sealed class PartCatalogueShelf(IDbContextFactory<ShopDbContext> database, ProcedureShelf procedures)
{
    /// <summary>Most parts that one list shows.</summary>
    public const int Most = 200;

    /// <summary>One part; null where there is none with that id.</summary>
    public async Task<PartShown?> FindAsync(PartId id, CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        if (await shop.Parts.AsNoTracking().FirstOrDefaultAsync(row => row.Id == id, cancellation) is not { } part)
        {
            return null;
        }

        var by = part.ChangedBy;
        return new(part, await shop.People.Where(person => person.Id == by).Select(person => person.Name).FirstOrDefaultAsync(cancellation));
    }

    /// <summary>Every part, by maker and number, those out of use too.</summary>
    public async Task<IReadOnlyList<PartRow>> AllAsync(CancellationToken cancellation = default)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.Parts.AsNoTracking().OrderBy(part => part.Key).ToListAsync(cancellation);
    }

    /// <summary>The parts in which every word stands somewhere: number, maker, name, thread, strength or joint.</summary>
    /// <param name="retired">True where those out of use are looked through too.</param>
    public async Task<PartsFound> SearchAsync(string words, bool retired, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(words);
        var asked = words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var all = await AllAsync(cancellation);
        var names = Kinds().ToDictionary(kind => kind.Key, kind => kind.Name);
        var found = all.Where(part => (retired || part.RetiredAt is null) && asked.All(word => Says(part, names, word))).ToList();
        var inUse = all.Count(part => part.RetiredAt is null);
        return new([.. found.Take(Most)], found.Count, inUse, all.Count - inUse);
    }

    /// <summary>Every joint kind of the register in force, those of its kinds of car too, by name; none while the shop has no register.</summary>
    public IReadOnlyList<KindToFill> Kinds() => procedures.CurrentRegister() is not { Register: var register } ? [] :
    [
        .. register.Kinds.Values.Concat(register.Cars.Values.SelectMany(car => car.Kinds.Values)).DistinctBy(kind => kind.Key)
            .Select(kind => new KindToFill(kind.Key, kind.Name)).OrderBy(kind => kind.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The keys of <see cref="Kinds"/>.</summary>
    public IReadOnlySet<string> KindKeys() => Kinds().Select(kind => kind.Key).ToHashSet(StringComparer.Ordinal);

    private static bool Says(PartRow part, Dictionary<string, string> names, string word) =>
        new[] { part.Number, part.Maker, part.Name, part.Thread, part.Strength, part.Fills, part.Fills is { } key ? names.GetValueOrDefault(key) : null }
            .Any(text => text?.Contains(word, StringComparison.OrdinalIgnoreCase) == true);
}
