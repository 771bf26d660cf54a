using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>A result that stands, with its basis for counting.</summary>
internal sealed record ResultLine(ShownResult Line, ResultBasis Basis);

/// <summary>Results and values that stand. A void one is not shown as current: it stands on top, as to be done again.</summary>
internal static class ResultLines
{
    public static IReadOnlyList<ResultLine> Of(SummarySubject car) => [.. Results(car), .. StepValues(car)];

    private static IEnumerable<ResultLine> Results(SummarySubject car) =>
        from result in car.State.Results.Values.OrderBy(result => result.Number)
        where result.VoidBy == 0 && !car.State.IsHeld(result) && !car.State.Fallen.ContainsKey(result.Number) && result.Number >= car.Since
        select Line(SummarySubject.ResultName(result.Fact.Name), result.Fact.Values, result.Fact.Basis);

    private static IEnumerable<ResultLine> StepValues(SummarySubject car) =>
        from job in car.Jobs
        let placed = car.Now.Placed(job)
        from found in DoneWork.Signed(car, job, placed)
        where !found.Sign.Fact.NotApplicable
        from value in found.Sign.Fact.Values
        let text = found.Step.Step.Measures.FirstOrDefault(measure => measure.Id == value.Name)?.Text ?? value.Name
        select Line(found.Step.Place is { } place ? $"{text}, {place}" : text, [value with { Name = "" }], ResultBasis.Measured);

    private static ResultLine Line(string name, IReadOnlyList<MeasuredValue> values, ResultBasis basis) => new(
        new ShownResult(name, string.Join("; ", values.Select(Words)), basis switch
        {
            ResultBasis.Measured => "measured",
            ResultBasis.LookedAt => "looked at",
            _ => "declared, not measured by us",
        }),
        basis);

    private static string Words(MeasuredValue value) =>
        $"{value.Name.Replace('-', ' ')} {value.Amount()}".Trim();
}
