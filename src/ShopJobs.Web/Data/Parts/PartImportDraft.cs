using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Parts;

/// <summary>A file of parts that somebody has handed in and not yet taken in. Each person has one at most, for <see cref="Kept"/>.</summary>
public sealed class PartImportDraft
{
    public const int NameLength = 100;

    /// <summary>How long it is kept (common practice, no source).</summary>
    public static readonly TimeSpan Kept = TimeSpan.FromHours(1);

    public Guid Id { get; init; }

    /// <summary>Whose it is: nobody else sees it or takes it in.</summary>
    public PersonId By { get; init; }

    public DateTime At { get; init; }

    /// <summary>The file's name.</summary>
    public required string Name { get; init; }

    /// <summary>The file as it came.</summary>
    public required byte[] Bytes { get; init; }
}
