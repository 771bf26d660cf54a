using System.Collections.Immutable;

namespace ShopJobs.Domain.Logbook;

/// <summary>How a system was found, as it was last recorded in this visit.</summary>
public sealed record AsFoundBook(long Number, DateTime At, PersonId Person, AsFoundRecorded Fact);

// How each system of the car was found when it came in.
public sealed partial record CarState
{
    /// <summary>What was recorded in the newest visit, by system.</summary>
    public ImmutableDictionary<string, AsFoundBook> AsFound { get; init; } = ImmutableDictionary<string, AsFoundBook>.Empty;

    /// <summary>Systems that were opened in the newest visit before anything was recorded, with the number of that opening.</summary>
    public ImmutableDictionary<string, long> Unseen { get; init; } = ImmutableDictionary<string, long>.Empty;

    /// <summary>True while the car is here for a visit that asks how each system was found.</summary>
    public bool AsksAsFound => Visit is { IsOpen: true, Arrived.AsksAsFound: true };

    /// <summary>True where it is asked how this system was found, and nothing is recorded: neither what was seen nor that it is unknown.</summary>
    public bool LacksAsFound(string system) => AsksAsFound && !AsFound.ContainsKey(system);

    private CarState WithAsFound(Recorded recorded, AsFoundRecorded fact) => this with
    {
        AsFound = AsFound.SetItem(fact.System, new AsFoundBook(recorded.Number, recorded.At, recorded.Person, fact)),
    };

    private CarState WithUnseen(long opening, IReadOnlyList<string>? systems) => systems is null
        ? this
        : this with { Unseen = Unseen.SetItems(systems.Where(system => !Unseen.ContainsKey(system)).Select(system => KeyValuePair.Create(system, opening))) };
}
