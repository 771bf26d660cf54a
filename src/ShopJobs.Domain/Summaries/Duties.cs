using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>What the customer has to do next.</summary>
internal static class Duties
{
    public static IReadOnlyList<string> Of(SummarySubject car)
    {
        var owed = Owed(car).ToList();
        return
        [
            .. NotToBeDriven(car),
            .. owed.Select(same => IsOverdue(car, same.Books[0])
                ? $"A re-torque is overdue: {What(car, same.Books)}. It was due {Latest(car, same.Books[0])}. Call us before you drive on, {car.Facts.Shop.Contact}."
                : $"Come back {When(car, same.Rule, same.Books[0])}. We re-tighten {What(car, same.Books)}: a joint settles in the first kilometres."),
            .. owed.Count > 0 ? [Track(car)] : Array.Empty<string>(),
        ];
    }

    /// <summary>What the car has to come back for and is not overdue.</summary>
    public static IReadOnlyList<ComeBack> ComeBacks(SummarySubject car) =>
    [
        .. from same in Owed(car)
           where !IsOverdue(car, same.Books[0])
           select new ComeBack(What(car, same.Books), When(car, same.Rule, same.Books[0]), car.State.LatestDay(car.Now, same.Books[0])),
    ];

    // What was let out at different times is due at different times.
    private static IEnumerable<(ReTorque Rule, List<PositionBook> Books)> Owed(SummarySubject car) =>
        car.Joints.SelectMany(joint => joint).Where(car.State.OwesReTorque)
            .GroupBy(book => (Rule: book.Last!.Fact.Spec.ReTorque!, book.Position.Key, car.State.FirstDrive(book)?.Number))
            .Select(same => (same.Key.Rule, same.ToList()));

    private static bool IsOverdue(SummarySubject car, PositionBook book) =>
        car.State.IsOverdue(car.Now, book, car.Facts.OdometerKm ?? car.State.Odometer);

    /// <summary>"all 20 wheel nuts"; "5 wheel nuts, front left".</summary>
    private static string What(SummarySubject car, IReadOnlyList<PositionBook> books)
    {
        var counted = PlainWords.Counted(car, books.Count, books);
        return car.Joints.SelectMany(joint => joint).Count(book => book.Position.Key == books[0].Position.Key) == books.Count
            ? books.Count == 1 ? counted : $"all {counted}"
            : $"{counted}, {CustomerNames.Listed([.. books.Select(book => CustomerNames.Place(book.Position.Place)).Distinct()])}";
    }

    private static string When(SummarySubject car, ReTorque rule, PositionBook book)
    {
        var day = (rule.WithinDays, car.State.LatestDay(car.Now, book)) switch
        {
            (_, { } latest) => $"by {SummarySubject.Words(latest)}",
            ({ } days, null) => $"within {SummarySubject.Count(days, "day")} after the first drive",
            _ => null,
        };
        var distance = Distance(car, rule, book);
        return day is null ? distance : $"{distance}, or {day}, whichever comes first";
    }

    private static string Distance(SummarySubject car, ReTorque rule, PositionBook book) => (car.State.FirstDrive(book)?.Fact.OdometerKm, rule.BeforeKm) switch
    {
        ({ } km, { } most) => $"between {car.Km(km + rule.AfterKm!.Value, km + most)} on the odometer",
        ({ } km, null) => $"at {car.Km(km + rule.AfterKm!.Value)} on the odometer",
        (null, { } most) => $"after {car.Now.Distance.Say(rule.AfterKm!.Value, most)}",
        _ => $"after {car.Km(rule.AfterKm!.Value)}",
    };

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

    private static string Latest(SummarySubject car, PositionBook book) => string.Join(" or ", new[]
    {
        car.State.LatestKm(book) is { } km ? $"by {car.Km(km)}" : null,
        car.State.LatestDay(car.Now, book) is { } day ? $"by {SummarySubject.Words(day)}" : null,
    }.OfType<string>());

    private static string Track(SummarySubject car) =>
        ReleaseLines.IsGiven(car, ReleaseKind.Track) && car.Standing(ReleaseKind.Track).Release is { Fact.Acceptance: not null }
            ? "You accepted in writing to drive on track before this re-torque. We advise against it."
            : "Do not drive on track before this re-torque.";
}
