using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>
/// What was held and is no fastener, a lot of parts, a step or a result, and how it was decided. Where its failure is a danger to life
/// it stays on the page as <see cref="ClassAFindings"/> says; of a step and a result nobody knows, so it is.
/// </summary>
internal static class HeldWorkFindings
{
    public static IEnumerable<Finding> Of(SummarySubject car, long number, WorkDecided fact)
    {
        var hold = car.State.WorkHolds[fact.Hold];
        if (What(car, hold) is { } what && (number >= car.Since || (IsClassA(car, hold) && Stays(car, number, fact, hold))))
        {
            yield return new Finding($"{what}: stopped because of damage or doubt", Decision(car, number, fact, hold), IsUsed(car, number, fact, hold));
        }
    }

    private static string? What(SummarySubject car, WorkHold hold) => hold.Fact switch
    {
        { Lot: { } lot } => string.Join("; ", car.State.FittedFrom(lot).Select(book => car.Name(book.Position.Joint)).Distinct()) is { Length: > 0 } where
            ? $"parts marked “{lot}”, {where}"
            : $"parts marked “{lot}”",
        { Job: { } job, Step: { } step } => car.Now.Placed(car.State.Jobs[job]).Step(step)?.Title(),
        { Result: { } result } => car.State.Correctables[result].Entry is ResultRecorded fact ? car.ResultName(fact.Name) : null,
        _ => null,
    };

    private static bool IsClassA(SummarySubject car, WorkHold hold) =>
        hold.Fact.Lot is not { } lot || Deciding.RiskOf(car.State, car.Now, hold.Fact, lot) == RiskClass.A;

    private static bool Stays(SummarySubject car, long number, WorkDecided fact, WorkHold hold) => fact.Disposition == Disposition.UseAsIs
        ? IsUsed(car, number, fact, hold)
        : DoneAgain(car, number, hold) is not { } again || !car.IsToldSince(again);

    /// <summary>Used as it is, and still so.</summary>
    private static bool IsUsed(SummarySubject car, long number, WorkDecided fact, WorkHold hold) =>
        fact.Disposition == Disposition.UseAsIs && hold.Fact switch
        {
            { Lot: { } lot } => car.State.FittedFrom(lot).Any(),
            { Result: { } result } => car.State.Results.Values.Any(stands => stands.Number == result && stands.VoidBy == 0),
            _ => DoneAgain(car, number, hold) is null,
        };

    private static string Decision(SummarySubject car, long number, WorkDecided fact, WorkHold hold) => fact.Disposition switch
    {
        Disposition.UseAsIs when !IsUsed(car, number, fact, hold) => "used as it was; done again since",
        Disposition.UseAsIs when fact.Acceptance is not null => "used as it is, with a written acceptance by the maker or a named engineer",
        Disposition.UseAsIs => "used as it is",
        Disposition.Replace => DoneAgain(car, number, hold) is null ? "to be replaced; not finished" : "replaced by new parts",
        _ => DoneAgain(car, number, hold) is null ? "to be redone; not finished" : "redone",
    };

    /// <summary>The entry by which it was done again after the decision; null while it was not.</summary>
    private static long? DoneAgain(SummarySubject car, long number, WorkHold hold) => hold.Fact switch
    {
        { Lot: { } lot } => car.State.FittedFrom(lot).Any() || car.State.Positions.Values.Any(book => book.Holds.Exists(one => one.Number == hold.Number))
            ? null
            : car.State.Positions.Values.Where(book => book.LastDecision?.Number == number).Select(book => book.FittedNewBy).Append(number).Max(),
        { Job: { } job, Step: { } step } => car.State.Jobs[job].SignOffs.TryGetValue(step, out var sign) && sign.Number > number ? sign.Number : null,
        { Result: { } result } when car.State.Correctables[result].Entry is ResultRecorded fact =>
            car.State.Results.GetValueOrDefault(fact.Name) is { VoidBy: 0 } newer && newer.Number > number ? newer.Number : null,
        _ => null,
    };
}
