using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>What the customer has to do next.</summary>
internal static class Duties
{
    public static IReadOnlyList<string> Of(SummarySubject car)
    {
        var owed = car.Joints.SelectMany(joint => joint).Where(car.State.OwesReTorque)
            .GroupBy(book => (book.Last!.Fact.Spec.ReTorque!, book.Position.Key)).ToList();
        return
        [
            .. NotToBeDriven(car),
            .. owed.Select(same => ReTorqueWords(car, same.Key.Item1, [.. same])),
            .. owed.Count > 0 ? [Track(car)] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<string> NotToBeDriven(SummarySubject car) =>
        ReleaseLines.IsGiven(car, ReleaseKind.Road) || ReleaseLines.IsGiven(car, ReleaseKind.Track)
            ? []
            : ["Do not drive the car: it is not released to the road. Wait until we call you."];

    private static string ReTorqueWords(SummarySubject car, ReTorque rule, IReadOnlyList<PositionBook> books)
    {
        var places = string.Join(", ", books.Select(book => book.Position.Place).Distinct());
        var drive = Driven(car, books.Min(book => book.Last!.Number));
        return $"Bring the car back for a re-torque: {car.KindName(books[0].Position.Key)}, {places} "
            + $"({SummarySubject.Count(books.Count, "fastener")}), {Distance(rule, drive?.Fact.OdometerKm)}{Limit(car, rule, drive)}.";
    }

    /// <summary>The first standing release after which the car may have been driven since these were tightened.</summary>
    private static ReleaseBook? Driven(SummarySubject car, long tightened) => car.State.Releases
        .Where(release => release.Key != ReleaseKind.Move && release.Value.VoidBy == 0 && release.Value.Number > tightened)
        .Select(release => release.Value).MinBy(release => release.Number);

    private static string Distance(ReTorque rule, decimal? odometer)
    {
        var words = rule.BeforeKm is { } before
            ? string.Create(CultureInfo.InvariantCulture, $"after {rule.AfterKm} to {before} km")
            : string.Create(CultureInfo.InvariantCulture, $"after {rule.AfterKm} km");
        return odometer is { } km
            ? $"{words}, at {SummarySubject.Km(km + rule.AfterKm!.Value)}"
                + (rule.BeforeKm is { } most ? $" to {SummarySubject.Km(km + most)}" : "") + " on the odometer"
            : words;
    }

    private static string Limit(SummarySubject car, ReTorque rule, ReleaseBook? drive) => (rule.WithinDays, drive) switch
    {
        ({ } days, { } release) => $", at the latest by {SummarySubject.Words(car.Facts.Day(release.At).AddDays(days))}",
        ({ } days, null) => $", at the latest {SummarySubject.Count(days, "day")} after the first drive",
        _ => "",
    };

    private static string Track(SummarySubject car) =>
        car.State.Releases.TryGetValue(ReleaseKind.Track, out var track) && track is { VoidBy: 0, Fact.Acceptance: not null }
            ? "You accepted in writing to drive on track before this re-torque. We advise against it."
            : "Do not drive on track before this re-torque.";
}
