namespace ShopJobs.Domain.Procedures;

/// <summary>What a joint position is filled with.</summary>
public enum Filling
{
    Bolt,
    Stud,
    Nut,
}

/// <summary>What is undone when a joint is opened or a setting changed.</summary>
public enum UndoneKind
{
    /// <summary>A result such as <c>alignment</c>, <c>corner-weights</c>, <c>bleed</c>.</summary>
    Result,

    /// <summary>A setting such as <c>front-bar</c>, which undoes further things itself.</summary>
    Setting,

    /// <summary>Another joint kind, at the same place where it has that place, else everywhere.</summary>
    Joint,
}

/// <summary>One consequence of opening a joint. Written <c>alignment</c>, <c>setting:front-bar</c>, <c>joint:wheel.nut</c>.</summary>
public readonly record struct Undone(UndoneKind Kind, string Name)
{
    public override string ToString() => Kind switch
    {
        UndoneKind.Setting => $"setting:{Name}",
        UndoneKind.Joint => $"joint:{Name}",
        _ => Name,
    };
}

/// <summary>One kind of joint in the shop's register.</summary>
/// <param name="Key">Stable key, such as <c>wheel.nut</c>.</param>
/// <param name="Name">What people call it, such as "wheel nut".</param>
/// <param name="System">Part of the car: wheels, hubs, brakes, struts, bars ...</param>
/// <param name="Places">Places that have this joint.</param>
/// <param name="Positions">Fasteners at each place.</param>
/// <param name="FilledBy">Bolt, stud or nut.</param>
/// <param name="RidesOn">Key of the joint this one sits on: opening that one opens this, not the reverse.</param>
/// <param name="Undoes">What opening it undoes.</param>
/// <param name="Least">The least state for each release; absent means <see cref="LeastState.Counts"/>.</param>
/// <param name="LeastWhy">The reason for a lower state to move.</param>
/// <param name="Temporary">True for jam nuts and pullers: never on a released car.</param>
public sealed record JointKind(
    string Key,
    string Name,
    string System,
    IReadOnlyList<string> Places,
    int Positions,
    Filling FilledBy,
    string? RidesOn,
    IReadOnlyList<Undone> Undoes,
    IReadOnlyDictionary<ReleaseKind, LeastState> Least,
    string? LeastWhy,
    bool Temporary)
{
    /// <summary>The least state asked for this release; a road test asks what the road asks.</summary>
    public LeastState LeastFor(ReleaseKind release) =>
        Least.GetValueOrDefault(release == ReleaseKind.RoadTest ? ReleaseKind.Road : release, LeastState.Counts);

    /// <summary>Key of the joint that has to be off before this one is reached: a wheel's nuts before the brake. Null where none is.</summary>
    public string? Behind { get; init; }

    /// <summary>How its positions are numbered, such as "1 at the top, then clockwise, seen from the gearbox"; null where nothing is stated.</summary>
    public string? Numbered { get; init; }

    /// <summary>How its positions lie; null where nothing is stated.</summary>
    public JointDrawing? Drawing { get; init; }

    /// <summary>Places that have another count than <see cref="Positions"/> on this car.</summary>
    public IReadOnlyDictionary<string, int> Counts { get; init; } = new Dictionary<string, int>();

    /// <summary>Fasteners at this place; 0 where the car has none there.</summary>
    public int PositionsAt(string place) => Counts.TryGetValue(place, out var own) ? own : Places.Contains(place) ? Positions : 0;

    /// <summary>Every position of this kind, place by place.</summary>
    public IEnumerable<JointPosition> AllPositions() => Places.SelectMany(PositionsOf);

    /// <summary>The positions of this kind at one place.</summary>
    public IEnumerable<JointPosition> PositionsOf(string place) =>
        Enumerable.Range(1, PositionsAt(place)).Select(number => new JointPosition(Key, place, number));
}
