using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>A result that is valid, with its basis for counting.</summary>
internal sealed record ResultLine(ShownResult Line, ResultBasis Basis);

/// <summary>Results and values that are valid. A void one is not shown as current: it is listed on top, as to be done again.</summary>
internal static class ResultLines
{
    public static IReadOnlyList<ResultLine> Of(SummarySubject car) => [.. Results(car), .. StepValues(car)];

    private static IEnumerable<ResultLine> Results(SummarySubject car) =>
        from result in car.State.Results.Values.OrderBy(result => result.Number)
        where result.VoidBy == 0 && !car.State.IsHeld(result) && !car.State.Fallen.ContainsKey(result.Number) && result.Number >= car.Since
        where !result.DoubtsOn(car.Now.Tool).Any()
        select Line(car.ResultName(result.Fact.Name), [.. Values(car, result.Fact), .. Notes(car, result.Fact)], result.Fact.Basis);

    private static IEnumerable<string> Values(SummarySubject car, ResultRecorded fact)
    {
        var kind = car.Now.Register.ResultOf(fact.Name);
        return fact.Values.Select(value => kind.Measures.FirstOrDefault(measure => measure.Id == value.Name) is { } measure
            ? $"{measure.Text}: {value.Amount()}"
            : Words(value));
    }

    private static IEnumerable<string> Notes(SummarySubject car, ResultRecorded fact)
    {
        var kind = car.Now.Register.ResultOf(fact.Name);
        return (fact.Notes ?? []).Select(note => $"{kind.Notes.FirstOrDefault(asked => asked.Id == note.Name)?.Text ?? note.Name}: {note.Text}");
    }

    private static IEnumerable<ResultLine> StepValues(SummarySubject car) =>
        from job in car.Jobs
        let placed = car.Now.Placed(job)
        from found in DoneWork.Signed(car, job, placed)
        where !found.Sign.Fact.NotApplicable
        from value in found.Sign.Fact.Values
        let text = found.Step.Step.Measures.FirstOrDefault(measure => measure.Id == value.Name)?.Text ?? value.Name
        select Line(found.Step.Place is { } place ? $"{text}, {place}" : text, [Words(value with { Name = "" })], ResultBasis.Measured);

    private static ResultLine Line(string name, IReadOnlyList<string> values, ResultBasis basis) => new(
        new ShownResult(name, string.Join("; ", values), basis switch
        {
            ResultBasis.Measured => "measured",
            ResultBasis.LookedAt => "looked at",
            _ => "declared, not measured by us",
        }),
        basis);

    private static string Words(MeasuredValue value) =>
        $"{value.Name.Replace('-', ' ')} {value.Amount()}".Trim();
}
