using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>Counts how things are known. A click tool's setting is never counted as measured.</summary>
internal static class EvidenceCount
{
    public static EvidenceCounts Of(SummarySubject car, IReadOnlyList<ResultLine> results)
    {
        var all = car.Joints.SelectMany(joint => joint).ToList();
        var tight = all.Where(car.IsTight).ToLookup(car.Covers);
        var here = tight[true].ToLookup(book =>
            SummarySubject.FinalPulls(book).All(pull => pull.Fact.Kind is TorqueKind.Reading or TorqueKind.AngleTurned));
        var asFound = all.Where(book => book.IsAsFound).ToList();
        return new EvidenceCounts(
            here[true].Count(),
            here[false].Count(),
            tight[true].Count(book => SummarySubject.FinalPulls(book).All(pull => pull.WitnessedBy is not null)),
            Ticks(car),
            results.Count(result => result.Basis == ResultBasis.Measured),
            results.Count(result => result.Basis == ResultBasis.LookedAt),
            results.Count(result => result.Basis == ResultBasis.Declared),
            tight[false].Count(),
            asFound.Count,
            asFound.Select(book => book.Position.Joint).Distinct().Count());
    }

    private static int Ticks(SummarySubject car) => car.Jobs.Sum(job =>
        DoneWork.Signed(car, job, car.Now.Placed(job)).Where(found => !found.Sign.Fact.NotApplicable).Sum(found => found.Sign.Fact.Ticks.Count));
}
