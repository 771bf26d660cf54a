using System.Security.Cryptography;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>Personal or bulky content to keep outside the entries that name its digest.</summary>
public sealed class NewContent
{
    private const int SaltSize = 32;

    private NewContent(byte[] salt, byte[] bytes)
    {
        Salt = salt;
        Bytes = bytes;
        Digest = ContentDigest.Of(salt, bytes);
    }

    public ContentDigest Digest { get; }

    internal byte[] Salt { get; }

    internal byte[] Bytes { get; }

    /// <summary>Takes a copy of the bytes under a salt of its own, so equal content has unequal digests.</summary>
    public static NewContent Of(ReadOnlySpan<byte> bytes) => new(RandomNumberGenerator.GetBytes(SaltSize), bytes.ToArray());
}
