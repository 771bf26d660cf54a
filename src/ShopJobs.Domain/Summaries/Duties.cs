using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>What the customer has to do next.</summary>
internal static class Duties
{
    public static IReadOnlyList<string> Of(SummarySubject car)
    {
        // What was let out at different times is due at different times.
        var owed = car.Joints.SelectMany(joint => joint).Where(car.State.OwesReTorque)
            .GroupBy(book => (book.Last!.Fact.Spec.ReTorque!, book.Position.Key, car.State.FirstDrive(book)?.Number)).ToList();
        return
        [
            .. NotToBeDriven(car),
            .. owed.Select(same => ReTorqueWords(car, same.Key.Item1, [.. same])),
            .. owed.Count > 0 ? [Track(car)] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<string> NotToBeDriven(SummarySubject car)
    {
        ReleaseKind[] driven = [ReleaseKind.Road, ReleaseKind.Track];
        if (driven.Any(kind => ReleaseLines.IsGiven(car, kind)))
        {
            return [];
        }

        return driven.Any(kind => car.Standing(kind).Kind == ReleaseStandingKind.Suspended)
            ? [$"Do not drive the car: its release is suspended. Speak to us first, {car.Facts.Shop.Contact}."]
            : ["Do not drive the car: it is not released to the road. Wait until we call you."];
    }

    private static string ReTorqueWords(SummarySubject car, ReTorque rule, IReadOnlyList<PositionBook> books)
    {
        var places = string.Join(", ", books.Select(book => book.Position.Place).Distinct());
        var what = $"{car.KindName(books[0].Position.Key)}, {places} ({SummarySubject.Count(books.Count, "fastener")})";
        return car.State.IsOverdue(car.Now, books[0], car.Facts.OdometerKm ?? car.State.Odometer)
            ? $"A re-torque is overdue: {what}. It was due {Latest(car, books[0])}. Call us before you drive on, {car.Facts.Shop.Contact}."
            : $"Bring the car back for a re-torque: {what}, {Distance(car, rule, books[0])}{Limit(car, rule, books[0])}.";
    }

    private static string Latest(SummarySubject car, PositionBook book) => string.Join(" or ", new[]
    {
        car.State.LatestKm(book) is { } km ? $"by {car.Km(km)}" : null,
        car.State.LatestDay(car.Now, book) is { } day ? $"by {SummarySubject.Words(day)}" : null,
    }.OfType<string>());

    private static string Distance(SummarySubject car, ReTorque rule, PositionBook book)
    {
        var words = rule.BeforeKm is { } before
            ? $"after {car.Now.Distance.Say(rule.AfterKm!.Value, before)}"
            : $"after {car.Km(rule.AfterKm!.Value)}";
        return car.State.FirstDrive(book)?.Fact.OdometerKm is { } km
            ? $"{words}, at {car.Km(km + rule.AfterKm!.Value)}"
                + (rule.BeforeKm is { } most ? $" to {car.Km(km + most)}" : "") + " on the odometer"
            : words;
    }

    private static string Limit(SummarySubject car, ReTorque rule, PositionBook book) => (rule.WithinDays, car.State.LatestDay(car.Now, book)) switch
    {
        (_, { } day) => $", at the latest by {SummarySubject.Words(day)}",
        ({ } days, null) => $", at the latest {SummarySubject.Count(days, "day")} after the first drive",
        _ => "",
    };

    private static string Track(SummarySubject car) =>
        ReleaseLines.IsGiven(car, ReleaseKind.Track) && car.Standing(ReleaseKind.Track).Release is { Fact.Acceptance: not null }
            ? "You accepted in writing to drive on track before this re-torque. We advise against it."
            : "Do not drive on track before this re-torque.";
}
