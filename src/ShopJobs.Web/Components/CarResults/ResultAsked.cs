using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.CarResults;

/// <summary>A result somebody wants to record and sign.</summary>
/// <param name="Name">As it is recorded: with its place where each place has its own.</param>
public sealed record ResultAsked(string Name, IReadOnlyList<MeasuredValue> Values, IReadOnlyList<WrittenNote> Notes)
{
    /// <summary>The shop's instrument; null where none is registered for it.</summary>
    public ToolId? Tool { get; init; }

    /// <summary>What it was measured with, in words; null where that was not said.</summary>
    public string? Instrument { get; init; }
}
