using System.Globalization;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Small pieces of wording of the customer's page.</summary>
internal static partial class SheetWords
{
    private const int HashGroup = 4;

    /// <summary>"29 Nov 2026".</summary>
    public static string Day(DateOnly day) => ClockWords.Day(day);

    /// <summary>"28 Nov 2026 to 29 Nov 2026"; one day is said once, and what has not ended says so.</summary>
    public static string Days(DateOnly from, DateOnly? until) =>
        until is null ? $"{Day(from)}, not ended" : until == from ? Day(from) : $"{Day(from)} to {Day(until.Value)}";

    /// <summary>Model, plate and odometer: "Brennock 220, DEMO 220, 48,210 km".</summary>
    public static string Car(WorkSummary page) => string.Join(", ", new[] { page.Car.Model, page.Car.Mark, Odometer(page) }.Where(part => part.Length > 0));

    /// <summary>A long code in groups that can be read aloud.</summary>
    public static string Grouped(string code) => string.Join(' ', code.Chunk(HashGroup).Select(group => new string(group)));

    /// <summary>A number and its unit stay on one line.</summary>
    public static string Together(string line) => BeforeUnit().Replace(line, "\u00A0");

    [GeneratedRegex(@"(?<=\d) (?=(N·m|km|mi|mm|kg|°C)\b)")]
    private static partial Regex BeforeUnit();

    private static string Odometer(WorkSummary page) => page.Odometer
        ?? (page.OdometerKm is { } km ? string.Create(CultureInfo.InvariantCulture, $"{km:#,##0.#} km") : "");
}
