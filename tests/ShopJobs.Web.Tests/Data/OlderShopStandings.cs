using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.Data;

/// <summary>What a program says of the cars of a shop, a line each: positions, steps and releases.</summary>
internal static class OlderShopStandings
{
    /// <summary>The lines of one car, in an order that does not depend on the program.</summary>
    public static IEnumerable<string> LinesOf(string name, CarReading car)
    {
        var lines = Positions(car).Concat(Steps(car)).Concat(Releases(car)).Concat(Summaries(car));
        return lines.Select(line => $"{name} | {line}").Order(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Positions(CarReading car) =>
        from kind in car.Now.Register.Kinds.Values
        from position in kind.AllPositions()
        let book = car.State.Of(position)
        let pulls = string.Concat(book.Pulls.Select(pull => Text($", #{pull.Number} {Counts(car, pull)}")))
        select Text($"position {position.Key} {position.Place} {position.Number}: {car.StateOf(position)}{pulls}");

    private static string Counts(CarReading car, Pull pull) => (pull.Voided, car.State.Passes(pull)) switch
    {
        (true, _) => "void",
        (_, true) => "passes",
        _ => "does not pass: " + string.Join('+', pull.Problems.Order()),
    };

    private static IEnumerable<string> Steps(CarReading car) =>
        from job in car.State.Jobs.Values
        let placed = car.Placed(job)
        from step in placed.Steps
        select Text($"step {job.Fact.Procedure} {step.Id}: {car.State.StandingOf(job, placed, step)}");

    private static IEnumerable<string> Releases(CarReading car)
    {
        foreach (var kind in (ReleaseKind[])[ReleaseKind.Move, ReleaseKind.Road, ReleaseKind.Track])
        {
            var given = car.State.Releases.TryGetValue(kind, out var release)
                ? Text($"given by #{release.Number}, {(release.VoidBy > 0 ? Text($"ended by #{release.VoidBy}") : release.SuspendedBy > 0 ? Text($"suspended by #{release.SuspendedBy}") : "stands")}")
                : "never given";
            var reasons = car.HoldsOn(kind).GroupBy(hold => hold.Reason).OrderBy(group => group.Key.ToString(), StringComparer.Ordinal)
                .Select(group => Text($"{group.Key} {group.Count()}"));
            yield return Text($"release {kind}: {given}; waits for: {string.Join(", ", reasons)}");
        }
    }

    private static IEnumerable<string> Summaries(CarReading car) => car.State.Summaries.Select(summary => Text(
        $"summary {summary.Fact.Version} #{summary.Number}: {(summary.SupersededBy == 0 ? "says what is so" : Text($"superseded by #{summary.SupersededBy}"))}"));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
