using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>A document as somebody hands it in: its file's name and its bytes.</summary>
public sealed record DocumentFile(string Name, byte[] Bytes)
{
    /// <summary>Reads no more than shows that a document is too large.</summary>
    internal static async Task<DocumentFile> ReadAsync(string name, Stream content, CancellationToken cancellation)
    {
        var bytes = new byte[DocumentText.MostBytes + 1];
        var length = await content.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, cancellation);
        return new DocumentFile(name, bytes[..length]);
    }
}
