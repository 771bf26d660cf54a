namespace ShopJobs.Domain.Parts;

/// <summary>
/// A value and the line it was read from. Where the maker does not state one there is null in its place, and never a zero or a
/// value that is usual.
/// </summary>
/// <param name="Value">The value as the maker states it.</param>
/// <param name="Source">Document, revision and page, or that it was measured here; not blank.</param>
public sealed record Stated<T>(T Value, string Source)
    where T : notnull
{
    /// <summary>Document, revision and page, or that it was measured here.</summary>
    public string Source { get; } = string.IsNullOrWhiteSpace(Source)
        ? throw new ArgumentException("A stated value names its source.", nameof(Source))
        : Source;
}
