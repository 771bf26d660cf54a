using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Look;

/// <summary>An odometer as somebody types it, in the unit of its car and beside the last reading.</summary>
public sealed class OdometerEntry
{
    /// <summary>As typed.</summary>
    public string Text { get; set; } = "";

    /// <summary>Why it is lower than it was, as typed.</summary>
    public string Why { get; set; } = "";

    /// <summary>What the car's odometer counts in.</summary>
    public DistanceUnit Unit { get; private set; }

    /// <summary>The last reading, in kilometres; null when there is none.</summary>
    public decimal? LastKm { get; private set; }

    /// <summary>The reading; null while it is not one clear number.</summary>
    public OdometerReading? Read => OdometerReading.TryParse(Text, Unit, out var reading, out _) ? reading : null;

    /// <summary>The reading in kilometres; null while it is not one clear number.</summary>
    public decimal? Km => Read?.Km;

    /// <summary>Lower than the last reading: a word is needed.</summary>
    public bool IsLower => Km < LastKm;

    /// <summary>What was typed as the reason for a lower reading; empty where it is not lower.</summary>
    public string WhyLower => IsLower ? Typed.Clean(Why) : "";

    /// <summary>What was typed as it was understood: "Read as 50,200 km."; null where nothing was.</summary>
    public string? Understood => Read is { } read ? $"Read as {read.Words}." : null;

    /// <summary>What is wrong with it, in plain words; null where nothing is.</summary>
    /// <param name="needed">False where it may stay empty.</param>
    public string? Problem(bool needed) =>
        !needed && string.IsNullOrWhiteSpace(Text) ? null
        : !OdometerReading.TryParse(Text, Unit, out _, out var problem) ? problem
        : IsLower && WhyLower.Length == 0 ? $"It was at {Last} before: read it again, or write why it is lower now."
        : null;

    /// <summary>The last reading in the unit of the car.</summary>
    public string? Last => LastKm is { } km ? Unit.Say(km) : null;

    /// <summary>Takes unit and last reading from the car as it stands.</summary>
    public void Know(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        (Unit, LastKm) = (reading.Now.Distance, reading.State.Odometer);
    }
}
