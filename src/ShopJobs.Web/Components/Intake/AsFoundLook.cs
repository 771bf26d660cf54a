using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Intake;

/// <summary>What is known of how a system was found.</summary>
public enum AsFoundStanding
{
    /// <summary>Opened before anybody had written anything down: the customer is told that it is unknown.</summary>
    Lost,

    /// <summary>Nothing is written down yet.</summary>
    Missing,

    /// <summary>Nobody knows it, and the customer was told.</summary>
    Unknown,

    Recorded,
}

/// <summary>One system on the as-found page.</summary>
/// <param name="Sheet">What is asked of it.</param>
/// <param name="Book">What was written down in this visit; null where nothing was.</param>
/// <param name="OpenedBy">Number of the opening before which nothing was written; null where none.</param>
public sealed record AsFoundLook(string System, ResultKind Sheet, AsFoundBook? Book, long? OpenedBy)
{
    public AsFoundStanding Standing => Book is { } book ? book.Fact.IsUnknown ? AsFoundStanding.Unknown : AsFoundStanding.Recorded
        : OpenedBy is not null ? AsFoundStanding.Lost
        : AsFoundStanding.Missing;

    /// <summary>In a few words.</summary>
    public string Words => Standing switch
    {
        AsFoundStanding.Lost => "opened before anything was written down",
        AsFoundStanding.Missing => "not written down yet",
        AsFoundStanding.Unknown => "unknown, customer told",
        _ => "written down",
    };

    /// <summary>What was seen, a line each, in the words of the sheet.</summary>
    public IReadOnlyList<string> Lines => Book is not { } book ? [] :
    [
        .. book.Fact.Values.Select(value => $"{Sheet.Measures.FirstOrDefault(measure => measure.Id == value.Name)?.Text ?? value.Name}: {TypedNumber.Plain(value.Value)} {value.Unit}"),
        .. (book.Fact.Notes ?? []).Select(written => $"{Sheet.Notes.FirstOrDefault(note => note.Id == written.Name)?.Text ?? written.Name}: {written.Text}"),
    ];

    /// <summary>Every system of the car, in the order of the register.</summary>
    public static IReadOnlyList<AsFoundLook> Of(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return
        [
            .. reading.Now.Register.Systems.Select(system => new AsFoundLook(
                system, reading.Now.Register.AsFoundOf(system), reading.State.AsFound.GetValueOrDefault(system),
                reading.State.Unseen.TryGetValue(system, out var opening) ? opening : null)),
        ];
    }

    /// <summary>How many of the car's systems are written down: "5 of 11"; null where the visit does not ask.</summary>
    public static string? CountOf(CarReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (!reading.State.AsksAsFound)
        {
            return null;
        }

        var looks = Of(reading);
        return FormattableString.Invariant($"{looks.Count(look => look.Book is not null)} of {looks.Count}");
    }
}
