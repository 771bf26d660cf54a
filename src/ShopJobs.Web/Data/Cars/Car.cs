using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Cars;

/// <summary>One car. Its logbook has the same id.</summary>
public sealed class Car : TrackedRow
{
    public const int NameLength = 40;
    public const int ModelLength = 80;
    public const int MarkLength = 40;
    public const int ColourLength = 30;
    public const int NoteLength = 1000;

    public CarId Id { get; init; }

    public CustomerId CustomerId { get; set; }

    /// <summary>What the shop calls it, e.g. "Blue".</summary>
    public required string Name { get; set; }

    /// <summary>Make and model as written, e.g. "Brennock 220".</summary>
    public required string Model { get; set; }

    /// <summary>The number on its chassis, in capitals without blanks; empty where nobody wrote it down.</summary>
    public string Chassis { get; set; } = "";

    /// <summary>Number plate, or whatever else marks it, as written.</summary>
    public string Mark { get; set; } = "";

    public string Colour { get; set; } = "";

    public string Note { get; set; } = "";

    /// <summary>Key of the place where it stands, while it is here; empty where it stands at none. Moves are entries of its logbook; this is the newest one's place.</summary>
    public string Place { get; set; } = "";

    /// <summary>What its odometer counts in.</summary>
    public DistanceUnit Distance { get; set; }

    /// <summary>While its logbook has no visit, it counts as here: it was in the book before visits were kept.</summary>
    public bool CountsAsHere { get; set; } = true;

    /// <summary>When it was put away as not coming back, UTC; null while it may come. A retired car is never in the shop.</summary>
    public DateTime? RetiredAt { get; set; }

    public Customer? Customer { get; init; }
}
