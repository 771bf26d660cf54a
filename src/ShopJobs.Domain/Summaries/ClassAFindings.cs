using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>
/// Findings on joints whose failure is a danger to life. They stay on the page, whichever jobs it leaves out, until the joint was
/// put right on the car and a version that was issued after that has told the customer so.
/// </summary>
internal static class ClassAFindings
{
    /// <summary>True for a decision that may not be left out.</summary>
    /// <param name="number">Number of its entry.</param>
    /// <param name="entries">The car's entries by number.</param>
    public static bool Stays(SummarySubject car, long number, Decided fact, IReadOnlyDictionary<long, Recorded> entries) =>
        IsClassA(car, fact, entries)
        && (fact.Disposition == Disposition.UseAsIs && Findings.StillStands(car, number, fact) || !IsRightAndTold(car, number, fact.Position));

    /// <summary>True for a fastener that moved at its re-torque and may not be left out.</summary>
    public static bool Stays(SummarySubject car, long number, JointPosition position) =>
        car.RiskOf(position) == RiskClass.A && !car.IsToldSince(number);

    private static bool IsClassA(SummarySubject car, Decided fact, IReadOnlyDictionary<long, Recorded> entries) =>
        fact.About.Any(about => entries[about].Entry is TorqueRecorded { Spec.Risk: RiskClass.A }) || car.RiskOf(fact.Position) == RiskClass.A;

    private static bool IsRightAndTold(SummarySubject car, long number, JointPosition position)
    {
        var book = car.State.Of(position);
        return book.OpenedBy > number && car.IsTight(book) && book.IsWitnessed(book.Last!.Fact.Spec.Stages)
            && car.IsToldSince(SummarySubject.FinalPulls(book).Max(pull => Math.Max(pull.Number, pull.WitnessedBy ?? 0)));
    }
}
