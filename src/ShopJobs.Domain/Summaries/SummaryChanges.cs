namespace ShopJobs.Domain.Summaries;

/// <summary>What changed from one version of a car's page to the next, read from the two pages alone. Pure.</summary>
/// <remarks>Lines are compared whole; what is worded differently is gone and new. The cautions, the counts and the shop's own lines are left out.</remarks>
public static class SummaryChanges
{
    /// <summary>The differences, part by part in the order of the page; empty where the two say the same.</summary>
    public static IReadOnlyList<SummaryChange> Between(WorkSummary before, WorkSummary now)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(now);
        return
        [
            .. Lines(ChangePart.Open, before, now, page => page.Open.Select(item => item.Words)),
            .. Lines(ChangePart.Duty, before, now, page => page.Duties),
            .. Releases(before, now),
            .. Lines(ChangePart.Work, before, now, page => page.Work.Select(work => work.Title)),
            .. Findings(before, now),
            .. Standing(ChangePart.Tightened, before, now, page => page.Done.SelectMany(system => system.Lines)),
            .. Lines(ChangePart.Fitted, before, now, page => page.Parts.Select(part => $"{part.Part}: {part.Where}")),
            .. Standing(ChangePart.Result, before, now, page => page.Results.Select(result => $"{result.Name}: {result.Values}")),
            .. Lines(ChangePart.Advice, before, now, page => page.Advice),
            .. Lines(ChangePart.Declined, before, now, page => page.Declined ?? []),
        ];
    }

    // A line of a release that is not given is said by the page itself; only what was given or is given is a change.
    private static IEnumerable<SummaryChange> Releases(WorkSummary before, WorkSummary now) =>
        Standing(ChangePart.Release, before, now, page => page.Releases.Where(release => release.Given).Select(release => release.Words));

    // An older page tells the shop's mistakes among what was found.
    private static IEnumerable<SummaryChange> Findings(WorkSummary before, WorkSummary now)
    {
        var apart = before.Mistakes is not null && now.Mistakes is not null;
        return
        [
            .. Lines(ChangePart.Finding, before, now, page => page.Found.Where(found => !(apart && found.Ours)).Select(found => $"{found.Words}: {found.Decision}")),
            .. apart ? Lines(ChangePart.Mistake, before, now, page => page.Mistakes!.Select(mistake => mistake.Words)) : [],
        ];
    }

    private static IEnumerable<SummaryChange> Lines(ChangePart part, WorkSummary before, WorkSummary now, Func<WorkSummary, IEnumerable<string>> of) =>
        Differences(part, of(before), of(now), ChangeKind.New, ChangeKind.Gone);

    private static IEnumerable<SummaryChange> Standing(ChangePart part, WorkSummary before, WorkSummary now, Func<WorkSummary, IEnumerable<string>> of) =>
        Differences(part, of(before), of(now), ChangeKind.StandsNow, ChangeKind.StandsNoLonger);

    private static IEnumerable<SummaryChange> Differences(
        ChangePart part, IEnumerable<string> before, IEnumerable<string> now, ChangeKind come, ChangeKind gone) =>
    [
        .. now.Except(before).Select(words => new SummaryChange(come, part, words)),
        .. before.Except(now).Select(words => new SummaryChange(gone, part, words)),
    ];
}
