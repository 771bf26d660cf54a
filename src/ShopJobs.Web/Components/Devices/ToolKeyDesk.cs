using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data;

namespace ShopJobs.Web.Components.Devices;

/// <summary>Which tool a key stands for. Keys are random and only their hashes are stored.</summary>
public sealed class ToolKeyDesk(IDbContextFactory<ShopDbContext> database)
{
    private const int KeyBytes = 32;
    private const int LongestKey = 100;

    /// <summary>The tool of a key that has not ended; null for any other text.</summary>
    public async Task<ToolId?> FindAsync(string? key, CancellationToken cancellation = default)
    {
        if (key is not { Length: > 0 and < LongestKey })
        {
            return null;
        }

        var hash = HashOf(key);
        await using var shop = await database.CreateDbContextAsync(cancellation);
        return await shop.ToolKeys.AsNoTracking()
            .Where(row => row.KeyHash == hash && row.EndedAt == null)
            .Select(row => (ToolId?)new ToolId(row.ToolId))
            .SingleOrDefaultAsync(cancellation);
    }

    internal static string NewKey() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(KeyBytes));

    internal static byte[] HashOf(string key) => SHA256.HashData(Encoding.UTF8.GetBytes(key));
}
