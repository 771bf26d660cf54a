using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Stands in an entry for personal or bulky content kept outside it: SHA-256 over a random salt and the content's bytes.
/// The content can be erased and the entry stays as it was.
/// </summary>
public readonly record struct ContentDigest
{
    private readonly EntryHash value;

    private ContentDigest(EntryHash value) => this.value = value;

    /// <summary>The digest of these bytes under this salt.</summary>
    public static ContentDigest Of(ReadOnlySpan<byte> salt, ReadOnlySpan<byte> bytes)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(salt);
        hash.AppendData(bytes);
        return FromBytes(hash.GetHashAndReset());
    }

    /// <summary>Takes a stored digest of exactly 32 bytes.</summary>
    public static ContentDigest FromBytes(ReadOnlySpan<byte> digest) => new(new EntryHash(digest));

    /// <summary>The 32 bytes.</summary>
    public byte[] ToArray() => value.ToArray();

    /// <summary>Reads 64 hexadecimal digits; false for anything else.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out ContentDigest digest)
    {
        var read = EntryHash.TryParse(text, out var hash);
        digest = new ContentDigest(hash);
        return read;
    }

    /// <summary>64 lower-case hexadecimal digits.</summary>
    public override string ToString() => value.ToString();
}
