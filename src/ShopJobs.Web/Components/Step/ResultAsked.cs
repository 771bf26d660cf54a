using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Step;

/// <summary>A result somebody wants to record and sign.</summary>
/// <param name="Instrument">What it was measured with; null where that was not said.</param>
/// <param name="Conditions">How the car stands, in words.</param>
public sealed record ResultAsked(string Name, IReadOnlyList<MeasuredValue> Values, string? Instrument, IReadOnlyList<string> Conditions);
