using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

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
        var counts = EvidenceCount.Of(car, results);
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
            counts,
            ClassAJoints.Of(car),
            [.. results.Select(result => result.Line)],
            facts.Advice,
            SummaryCautions.For(facts))
        {
            Odometer = facts.Odometer,
            Drive = DriveAnswers.Of(car),
            ComeBacks = Duties.ComeBacks(car),
            Told = PlainWords.Told(car),
            Known = PlainWords.Known(car, counts),
            Mistakes = Mistakes.Of(car, Findings.OfOurs(car, entries)),
            Declined = facts.Declined,
            Drawn = [.. car.Joints.Select(joint => Drawn(car, joint))],
            Warranty = state.Visit?.Arrived?.Warranty is { } about ? [.. about.Joints.Select(car.Name)] : null,
        };
    }

    private static DrawnJoint Drawn(SummarySubject car, IGrouping<Joint, PositionBook> joint) => new(
        joint.Key.Key, joint.Key.Place, car.KindName(joint.Key.Key),
        [.. joint.OrderBy(book => book.Position.Number).Select(book => car.State.StateOf(book.Position, car.Now.Tool))])
    {
        System = car.Now.Register.Kinds.GetValueOrDefault(joint.Key.Key)?.System,
    };
}
