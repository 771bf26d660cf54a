using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Stands in an entry for personal or bulky content kept outside it: SHA-256 over a random salt and the content's bytes.
/// The content can be erased and the entry stays as it was.
/// </summary>
/// <param name="Hex">64 lower-case hexadecimal digits.</param>
public readonly record struct ContentDigest(string Hex)
{
    /// <summary>The digest of these bytes under this salt.</summary>
    public static ContentDigest Of(ReadOnlySpan<byte> salt, ReadOnlySpan<byte> bytes)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(salt);
        hash.AppendData(bytes);
        return FromBytes(hash.GetHashAndReset());
    }

    /// <summary>Takes a stored digest of exactly 32 bytes.</summary>
    public static ContentDigest FromBytes(ReadOnlySpan<byte> digest) => new(new EntryHash(digest).ToString());

    /// <summary>The 32 bytes.</summary>
    public byte[] ToArray() => Convert.FromHexString(Hex);

    /// <summary>Reads 64 hexadecimal digits in either case; false for anything else.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out ContentDigest digest)
    {
        var read = EntryHash.TryParse(text, out var hash);
        digest = new ContentDigest(hash.ToString());
        return read;
    }

    public override string ToString() => Hex;
}
