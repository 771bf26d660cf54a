using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>Makes the customer's page from what the logbook says. Pure.</summary>
public static class SummaryMaker
{
    /// <summary>The next version of the summary of this car as it is now.</summary>
    /// <param name="state">The car as its entries say.</param>
    /// <param name="entries">The same entries, oldest first.</param>
    /// <param name="now">Register, procedures and tools; the shop's date is the date of issue.</param>
    /// <param name="facts">What the logbook does not say.</param>
    public static WorkSummary Make(CarState state, IReadOnlyList<Recorded> entries, Circumstances now, SummaryFacts facts)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(facts);
        var car = new SummarySubject(state, now, facts);
        var last = state.Summaries.IsEmpty ? (int?)null : state.Summaries[^1].Fact.Version;
        var results = ResultLines.Of(car);
        return new WorkSummary(
            (last ?? 0) + 1,
            last,
            now.Today,
            facts.IssuedBy,
            facts.Car,
            facts.Shop,
            facts.OdometerKm,
            new LogbookMark(state.Number, facts.HeadHash),
            OpenItems.Of(car),
            Duties.Of(car),
            ReleaseLines.Of(car),
            DoneWork.Jobs(car, entries),
            Findings.Of(car, entries),
            DoneWork.BySystem(car),
            DoneWork.Parts(car, entries),
            EvidenceCount.Of(car, results),
            ClassAJoints.Of(car),
            [.. results.Select(result => result.Line)],
            facts.Advice,
            SummaryCautions.For(facts))
        {
            Odometer = facts.Odometer,
            Warranty = state.Visit?.Arrived?.Warranty is { } about ? [.. about.Joints.Select(car.Name)] : null,
        };
    }
}
