using System.Buffers.Binary;
using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// The chain value of an entry: SHA-256 (FIPS 180-4) over the previous entry's value and the envelope's bytes.
/// The default value, 32 zero bytes, comes before the first entry.
/// </summary>
public readonly record struct EntryHash
{
    /// <summary>Length in bytes.</summary>
    public const int Size = SHA256.HashSizeInBytes;

    /// <summary>What the first entry of a logbook is chained to.</summary>
    public static readonly EntryHash BeforeFirst;

    private readonly UInt128 high;
    private readonly UInt128 low;

    /// <summary>Takes exactly 32 bytes; throws <see cref="ArgumentException"/> for any other length.</summary>
    public EntryHash(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length != Size)
        {
            throw new ArgumentException($"A hash has {Size} bytes, not {bytes.Length}.", nameof(bytes));
        }

        high = BinaryPrimitives.ReadUInt128BigEndian(bytes);
        low = BinaryPrimitives.ReadUInt128BigEndian(bytes[16..]);
    }

    /// <summary>The value of the entry whose envelope has these bytes and which follows this one.</summary>
    public EntryHash Next(ReadOnlySpan<byte> envelope)
    {
        const int OnStack = 2048;
        var length = Size + envelope.Length;
        Span<byte> joined = length <= OnStack ? stackalloc byte[OnStack] : new byte[length];
        CopyTo(joined);
        envelope.CopyTo(joined[Size..]);
        Span<byte> hash = stackalloc byte[Size];
        SHA256.HashData(joined[..length], hash);
        return new EntryHash(hash);
    }

    /// <summary>Writes the 32 bytes to the start of <paramref name="target"/>.</summary>
    public void CopyTo(Span<byte> target)
    {
        BinaryPrimitives.WriteUInt128BigEndian(target, high);
        BinaryPrimitives.WriteUInt128BigEndian(target[16..], low);
    }

    /// <summary>The 32 bytes.</summary>
    public byte[] ToArray()
    {
        var bytes = new byte[Size];
        CopyTo(bytes);
        return bytes;
    }

    /// <summary>Reads 64 hexadecimal digits in either case; false for anything else.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out EntryHash hash)
    {
        Span<byte> bytes = stackalloc byte[Size];
        var read = text is { Length: 2 * Size }
            && Convert.FromHexString(text, bytes, out _, out _) == System.Buffers.OperationStatus.Done;
        hash = read ? new EntryHash(bytes) : default;
        return read;
    }

    /// <summary>64 lower-case hexadecimal digits.</summary>
    public override string ToString() => Convert.ToHexStringLower(ToArray());
}
