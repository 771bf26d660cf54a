using System.Text.Json.Serialization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Report that the car came in.</summary>
/// <param name="Odometer">As read; null where it can't be read, and then <see cref="OdometerWhy"/> says why.</param>
/// <param name="Place">Where it is put.</param>
public sealed record ComeIn(OdometerReading? Odometer, string Place, ContentDigest Why) : Report
{
    /// <summary>Why the odometer is lower than it was, or not read.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }

    /// <summary>The joints of a warranty case, each with a record of the shop; null where it is none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<Joint>? Warranty { get; init; }

    /// <summary>How full the tank is by its gauge, in eighths, 0 to 8; null where nobody looked.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? FuelEighths { get; init; }

    /// <summary>What of the customer's is in the car; null where nothing is told.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? Things { get; init; }

    /// <summary>True where each system's state as found is asked for before it is opened.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public bool? AsksAsFound { get; init; }
}

/// <summary>Report how one system of the car was found.</summary>
/// <param name="System">The system, as the joint register calls it.</param>
/// <param name="Values">What was measured, of what its sheet asks.</param>
public sealed record RecordAsFound(string System, IReadOnlyList<MeasuredValue> Values) : Report
{
    /// <summary>What was written down, of what its sheet asks.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<WrittenNote>? Notes { get; init; }

    /// <summary>What else was seen, in words.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? Words { get; init; }

    /// <summary>How the customer was told that it is unknown; then nothing else is given.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? Told { get; init; }
}

/// <summary>Ask whether the car may be moved to another place, and move it. Refused where the gate says no.</summary>
public sealed record MoveCar(string From, string To) : Report;

/// <summary>Report that the car was moved already, whatever the gate says.</summary>
public sealed record ReportMoved(string From, string To, ContentDigest Why) : Report;

/// <summary>Ask whether the car may leave, and let it go: driven under a road release that is valid, or on a trailer where it may be moved.</summary>
public sealed record LetGo(WayOut Way, ContentDigest TakenBy, OdometerReading? Odometer) : Report
{
    /// <summary>Why the odometer is lower than it was; asked only where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }
}

/// <summary>Report that the car left already, whatever the gate says.</summary>
public sealed record ReportGone(WayOut Way, ContentDigest TakenBy, OdometerReading? Odometer, ContentDigest Why) : Report
{
    /// <summary>Why the odometer is lower than it was; asked only where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }
}

/// <summary>Sign that the car was looked over since it was moved, or left, against its gate.</summary>
public sealed record LookOver(ContentDigest Finding, string Shown) : SignedCommand(Shown);

/// <summary>Give a re-torque a new interval at its last day, once, where the car was not driven far enough to settle.</summary>
public sealed record ExtendReTorque(IReadOnlyList<JointPosition> Positions, OdometerReading? Odometer, ContentDigest Reason, string Shown) : SignedCommand(Shown)
{
    /// <summary>Why the odometer is lower than it was; asked only where it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ContentDigest? OdometerWhy { get; init; }
}
