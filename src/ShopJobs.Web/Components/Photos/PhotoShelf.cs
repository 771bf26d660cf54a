using Microsoft.Extensions.Caching.Memory;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Photos;

/// <summary>Pictures by their digest, whole and small. Small ones are made when they are asked for, and some of them remembered.</summary>
public sealed class PhotoShelf(LogbookSnapshots snapshots, PictureQueue queue) : IDisposable
{
    private const long RememberedBytes = 32 * 1024 * 1024;
    private readonly MemoryCache remembered = new(new MemoryCacheOptions { SizeLimit = RememberedBytes });

    /// <summary>The picture as it is kept; null where there is none of that digest, it was erased, or it is no picture.</summary>
    public byte[]? Find(ContentDigest digest) => snapshots.Read(reader =>
        reader.Content(digest) is StoredContent.Present { Bytes: var bytes } && Picture.IsKept(bytes.Span) ? bytes.ToArray() : null);

    /// <summary>The same, at most 320 pixels on its longer side.</summary>
    public async Task<byte[]?> FindSmallAsync(ContentDigest digest, CancellationToken cancellation = default)
    {
        // What was erased is erased, remembered or not.
        if (Find(digest) is not { } kept)
        {
            remembered.Remove(digest);
            return null;
        }

        return remembered.Get<byte[]>(digest) ?? await queue.InTurnAsync(() => remembered.Get<byte[]>(digest) ?? Make(digest, kept), cancellation);
    }

    public void Dispose() => remembered.Dispose();

    private byte[]? Make(ContentDigest digest, byte[] kept)
    {
        var small = Picture.MakeSmall(kept);
        return small.Refusal is null ? remembered.Set(digest, small.Jpeg, new MemoryCacheEntryOptions { Size = small.Jpeg.Length }) : null;
    }
}
