using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>One issued version with what it says now of it.</summary>
/// <param name="Book">Its entry.</param>
/// <param name="Standing">Whether it is still true.</param>
/// <param name="Content">The bytes as they were issued.</param>
/// <param name="LogbookFault">The car's logbook can't be read to its end: nothing here can be relied on.</param>
public sealed record IssuedVersion(SummaryBook Book, SummaryStanding Standing, StoredContent Content, bool LogbookFault)
{
    /// <summary>How it differs from the version before; null where it is the first, or can not be read.</summary>
    public SinceVersion? Since { get; init; }

    public int Version => Book.Fact.Version;

    /// <summary>True when it does not say what is so any more.</summary>
    public bool IsOutOfDate => LogbookFault || Standing is SummaryStanding.Replaced or SummaryStanding.Overtaken { Grave: true };

    /// <summary>Something on it became unsafe to trust; not where it was only replaced.</summary>
    public bool IsGrave => LogbookFault || Standing is { NoLonger.Count: > 0 } or SummaryStanding.Overtaken { Grave: true };

    /// <summary>What it says the car may be driven on and is no longer so; all of it where the logbook can't be relied on.</summary>
    public IReadOnlyList<ReleaseKind> NoLonger => LogbookFault ? ReleaseKinds.All : Standing.NoLonger;

    /// <summary>The page; null when its bytes were erased, altered or taken out.</summary>
    public WorkSummary? Page { get; } = Content is StoredContent.Present present ? SummaryText.Read(present.Bytes.Span) : null;
}
