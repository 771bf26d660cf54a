using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace ShopJobs.Web.Accounts;

/// <summary>The digest of exactly what was on the screen when somebody signed.</summary>
public static class ShownDigest
{
    /// <summary>
    /// SHA-256 over the meaning and then each line, every one preceded by its length in bytes (UTF-8, four bytes,
    /// big-endian), so that no two different screens read the same.
    /// </summary>
    public static byte[] Of(string meaning, IEnumerable<string> lines)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> length = stackalloc byte[4];
        foreach (var text in lines.Prepend(meaning))
        {
            var bytes = Encoding.UTF8.GetBytes(text);
            BinaryPrimitives.WriteInt32BigEndian(length, bytes.Length);
            hash.AppendData(length);
            hash.AppendData(bytes);
        }

        return hash.GetHashAndReset();
    }
}
