using ShopJobs.Domain.Summaries;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>How a page differs from the version before it.</summary>
/// <param name="Version">Number of the version before.</param>
/// <param name="Changes">The differences; null where that version can not be read any more.</param>
public sealed record SinceVersion(int Version, IReadOnlyList<SummaryChange>? Changes)
{
    /// <summary>Compares a page with the version before; null where there is none.</summary>
    public static SinceVersion? Of(IssuedVersion? before, WorkSummary? page) => before is null || page is null
        ? null
        : new SinceVersion(before.Version, before.Page is { } earlier ? SummaryChanges.Between(earlier, page) : null);
}
