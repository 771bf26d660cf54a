using System.Security.Cryptography;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>What became of a document: the whole of it, or nothing and every reason.</summary>
/// <param name="Name">Name of the file, for people.</param>
/// <param name="Digest">SHA-256 of the bytes, lower-case hex.</param>
/// <param name="Value">Null exactly when a problem is an error.</param>
/// <param name="Problems">Errors and cautions by line.</param>
public sealed record LoadedDocument<T>(string Name, string Digest, T? Value, IReadOnlyList<DocumentProblem> Problems)
    where T : class
{
    /// <summary>As far as it was read, also with errors; null where nothing could be made of it. Good for finding further errors alone.</summary>
    public T? Draft { get; init; }

    /// <summary>Problems for which the document is not taken.</summary>
    public IEnumerable<DocumentProblem> Errors => Problems.Where(problem => !problem.IsCaution);

    /// <summary>Problems with which it is taken.</summary>
    public IEnumerable<DocumentProblem> Cautions => Problems.Where(problem => problem.IsCaution);
}

/// <summary>The name of a document by its content.</summary>
public static class DocumentDigest
{
    /// <summary>SHA-256 of the bytes, lower-case hex.</summary>
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
