using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>What is to be erased, or why nothing is.</summary>
/// <param name="Contents">Contents beside the logbooks: their bytes and salts go, the entries that name them stay.</param>
/// <param name="Rows">Ordinary rows that are valid or fall with it.</param>
/// <param name="Refused">Why nothing is erased, in sentences; null where it is.</param>
internal sealed record Erasure(IReadOnlyList<ContentDigest> Contents, Action<SqliteTransaction>? Rows, string? Refused = null)
{
    /// <summary>Nothing is erased.</summary>
    public static Erasure No(string why) => new([], null, why);
}
