using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>One position that waits for a decision, with what has to be known of it.</summary>
/// <param name="Why">What holds it.</param>
/// <param name="Recorded">What was recorded by its newest pull; null where there is none.</param>
/// <param name="Truly">What a tool in doubt truly delivered, by its readings; null where no tool is in doubt.</param>
public sealed record DecisionRow(JointPosition Position, string Why, string? Recorded, string? Truly)
{
    /// <summary>All in one line, as it is signed.</summary>
    public string Line(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return string.Join("; ", new[] { $"{reading.Now.Name(Position)}: {Why}", Recorded, Truly }.OfType<string>());
    }

    /// <summary>Every position of a car that waits for a decision.</summary>
    /// <param name="entries">The entries of the car, as far as they name tools.</param>
    public static IReadOnlyList<DecisionRow> Of(CarReading reading, IReadOnlyList<Recorded> entries)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var asked = reading.State.Positions.Values.Where(book => Deciding.IsAsked(reading.State, reading.Now, book.Position))
            .OrderBy(book => book.Position.Key, StringComparer.Ordinal).ThenBy(book => book.Position.Place, StringComparer.Ordinal).ThenBy(book => book.Position.Number).ToList();
        var traced = asked.SelectMany(book => reading.State.DoubtsOn(book, reading.Now.Tool)).Select(doubt => doubt.Tool).Distinct()
            .SelectMany(tool => reading.Now.Tool(tool).Trace(tool, reading.State, entries)).Where(found => found.InDoubt)
            .GroupBy(found => found.Position).ToDictionary(same => same.Key, same => same.ToList());
        return [.. asked.Select(book => new DecisionRow(book.Position, WhyOf(reading, book), RecordOf(book), Truth(traced.GetValueOrDefault(book.Position))))];
    }

    private static string WhyOf(CarReading reading, PositionBook book) => string.Join(
        ", ",
        book.Holds.Where(hold => hold.Decision is null).Select(hold => HoldWords.Of(hold.Reason))
            .Concat(reading.State.DoubtsOn(book, reading.Now.Tool).Select(doubt => $"{JointLineWords.ToolName(reading, doubt.Tool)} is in doubt"))
            .Concat(OtherSpecifications.OfRunningJobs(reading.State, reading.Now, book).Take(1).Select(_ => "made for another job"))
            .Distinct());

    private static string? RecordOf(PositionBook book) => book.Last is not { } pull ? null : string.Create(
        CultureInfo.InvariantCulture,
        $"{JointLineWords.Of(pull.Fact.Kind)} {pull.Amount()}, stage {pull.Fact.Stage} of {pull.Fact.Spec.Stages}, permitted {pull.Fact.Spec.Turn?.Permitted() ?? string.Create(CultureInfo.InvariantCulture, $"{pull.Fact.Spec.Minimum:0.##} to {pull.Fact.Spec.Maximum:0.##} N·m")}");

    // The newest record in doubt of each tool tells; where the readings do not reach its value, nobody knows.
    private static string? Truth(List<TracedPosition>? traced) => traced is null ? null : string.Join(
        ", ",
        traced.Select(found => found.Records.First(record => record.InDoubt).Truly is TorqueReview.Known known
            ? $"truly about {TypedNumber.Plain(Math.Round(known.Delivered.Value, 1))} {ShopJobs.Domain.Fasteners.TorqueUnits.Symbol(known.Delivered.Unit)}: {(known.IsUnder ? "under" : known.IsOver ? "over" : "inside")} its range"
            : "truly unknown: no readings of the tool reach it"));
}
