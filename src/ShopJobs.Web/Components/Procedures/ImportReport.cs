using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>What became of one document of a batch.</summary>
public enum DocumentFate
{
    /// <summary>It is in the shop now.</summary>
    Stored,

    /// <summary>The same bytes were in the shop before; nothing was done.</summary>
    AlreadyHere,

    /// <summary>It has errors.</summary>
    Refused,

    /// <summary>It has no error, but another document of the batch has.</summary>
    NotTaken,
}

/// <summary>One document of a batch.</summary>
/// <param name="Name">Name of its file.</param>
/// <param name="Digest">SHA-256 of its bytes, lower-case hex.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Words">The same in words.</param>
/// <param name="Problems">Errors and cautions by line.</param>
public sealed record ImportedDocument(
    string Name, string Digest, DocumentFate Fate, string Words, IReadOnlyList<DocumentProblem> Problems);

/// <summary>What became of a batch: all of it is in the shop, or nothing.</summary>
public sealed record ImportReport(IReadOnlyList<ImportedDocument> Documents)
{
    /// <summary>True when no document was refused.</summary>
    public bool IsTaken => Documents.All(document => document.Fate is DocumentFate.Stored or DocumentFate.AlreadyHere);
}
