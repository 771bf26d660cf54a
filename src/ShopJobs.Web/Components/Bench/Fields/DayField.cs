using System.Globalization;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A day.</summary>
public sealed class DayField(string key, string label) : BenchField<DateOnly>(key, label)
{
    /// <inheritdoc/>
    public override string InputType => "date";

    private protected override bool TryRead(string text, BenchUnits units, out DateOnly value, out string? problem)
    {
        var read = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out value);
        problem = !read ? text.Length == 0 ? "Nothing entered: pick the day." : $"{TypedNumber.Shown(text)} is no day: write year-month-day."
            : value.Year is < 1990 or > 2200 ? "That year is not likely: read it again."
            : null;
        return problem is null;
    }
}
