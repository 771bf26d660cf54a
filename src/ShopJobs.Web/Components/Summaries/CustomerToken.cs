using System.Buffers;
using System.Buffers.Text;
using System.Security.Cryptography;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The secret in a customer's link: 128 random bits, written as 22 letters of base64url. Only its SHA-256 is kept.</summary>
public static class CustomerToken
{
    private const int Size = 16;
    private const int Letters = 22;

    /// <summary>A new secret, for the link only.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Size));

    /// <summary>What is kept of a secret; null for a text that can't be one.</summary>
    public static byte[]? HashOf(string? token)
    {
        Span<byte> secret = stackalloc byte[Size];
        return token is { Length: Letters }
            && Base64Url.DecodeFromChars(token, secret, out _, out var written) == OperationStatus.Done && written == Size
            && Base64Url.EncodeToString(secret) == token
            ? SHA256.HashData(secret)
            : null;
    }
}
