namespace ShopJobs.Domain.Procedures;

/// <summary>What a car may be released to. The digest that is kept of a request holds the number: a new kind takes the next one.</summary>
public enum ReleaseKind
{
    /// <summary>Moved by hand, in the shop only.</summary>
    Move = 0,

    /// <summary>Driven on the road by a named person for a stated distance, to get what only a drive can give. It ends at return or with the day.</summary>
    RoadTest = 3,

    /// <summary>Driven on the road.</summary>
    Road = 1,

    /// <summary>Driven on track.</summary>
    Track = 2,
}

/// <summary>The releases in the order in which a car gets them.</summary>
public static class ReleaseKinds
{
    /// <summary>From the least that is allowed to the most.</summary>
    public static readonly IReadOnlyList<ReleaseKind> All = [ReleaseKind.Move, ReleaseKind.RoadTest, ReleaseKind.Road, ReleaseKind.Track];
}

/// <summary>The least a joint must be for a release.</summary>
public enum LeastState
{
    /// <summary>Every position counts, or is as found and untouched.</summary>
    Counts,

    /// <summary>Hand-tight is enough. Only for <see cref="ReleaseKind.Move"/>, never wheel, hub, steering or brake joints.</summary>
    HandTight,

    /// <summary>Every position was made and counts here: as found is not enough.</summary>
    MadeHere,
}

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

/// <summary>The shop's one list of joint kinds, with the car conditions and settings that go with them.</summary>
/// <param name="Title">Name of the register.</param>
/// <param name="DemoData">True when the figures are invented.</param>
/// <param name="Kinds">Joint kinds by key.</param>
/// <param name="Conditions">Aspects of the car's condition with the values each may take.</param>
/// <param name="Settings">Settings by name, with what changing one undoes.</param>
public sealed record JointRegister(
    string Title,
    bool DemoData,
    IReadOnlyDictionary<string, JointKind> Kinds,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Conditions,
    IReadOnlyDictionary<string, IReadOnlyList<Undone>> Settings)
{
    /// <summary>Names of the results that may be undone, recorded or waited for, such as <c>alignment</c>.</summary>
    public IReadOnlyList<string> Results { get; init; } = [];

    /// <summary>Results and settings of which more than the name is known, by key.</summary>
    public IReadOnlyDictionary<string, ResultKind> ResultKinds { get; init; } = new Dictionary<string, ResultKind>();

    /// <summary>The kind of a record's name; of one that only its name is known, a bare kind.</summary>
    public ResultKind ResultOf(string name) => ResultKinds.GetValueOrDefault(ResultKind.Split(name).Key) ?? ResultKind.Bare(name);

    /// <summary>What people call a record of this name: "run-out of the disc, front-left".</summary>
    public string NameOfResult(string name) =>
        ResultKind.Split(name).Place is { } place ? $"{ResultOf(name).Name}, {place}" : ResultOf(name).Name;

    /// <summary>Places that have a result of their own: those of the joints that undo it, else every place of the register.</summary>
    public IReadOnlyList<string> PlacesOf(ResultKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var undoing = Kinds.Values.Where(joint => joint.Undoes.Contains(new Undone(UndoneKind.Result, kind.Key))).ToList();
        return [.. (undoing.Count > 0 ? undoing : [.. Kinds.Values]).SelectMany(joint => joint.Places).Distinct()];
    }

    /// <summary>Every kind of result and setting that may be recorded, results first.</summary>
    public IReadOnlyList<ResultKind> AllResults =>
        [.. Results.Concat(Settings.Keys.Select(setting => $"setting:{setting}")).Select(ResultOf)];

    /// <summary>How declarations of an aspect hold; one that is not named is of the whole car and ends at a release only.</summary>
    public IReadOnlyDictionary<string, ConditionAspect> Aspects { get; init; } = new Dictionary<string, ConditionAspect>();

    /// <summary>How declarations of this aspect hold.</summary>
    public ConditionAspect AspectOf(string aspect) => Aspects.GetValueOrDefault(aspect) ?? ConditionAspect.OfCar;

    /// <summary>Kinds of car whose joints differ from the register's own, by key.</summary>
    public IReadOnlyDictionary<string, CarKind> Cars { get; init; } = new Dictionary<string, CarKind>();

    /// <summary>The register as it is written, where this one is what it says of one car; null where this is the written one.</summary>
    public JointRegister? Written { get; private init; }

    /// <summary>What the kinds of car are called that may be followed, the register's own list first.</summary>
    public IReadOnlyList<(string Key, string Name)> Followed =>
        [(JointList.Base, Title), .. (Written ?? this).Cars.Values.Select(car => (car.Key, car.Name)), (JointList.None, "no list yet")];

    /// <summary>What people call a kind of joint, also where this car has none; the key itself where nobody knows it.</summary>
    public string NameOf(string key)
    {
        var whole = Written ?? this;
        return (Kinds.GetValueOrDefault(key) ?? whole.Kinds.GetValueOrDefault(key)
            ?? whole.Cars.Values.Select(car => car.Kinds.GetValueOrDefault(key)).FirstOrDefault(kind => kind is not null))?.Name ?? key;
    }

    /// <summary>True where a car may follow this.</summary>
    public bool Knows(string follows) => follows is JointList.Base or JointList.None || (Written ?? this).Cars.ContainsKey(follows);

    /// <summary>The register as it is for one car. A car that follows nothing, or a kind that the register no longer has, has no joint in it.</summary>
    public JointRegister For(JointList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var whole = Written ?? this;
        if (list.Equals(JointList.OfTheRegister))
        {
            return whole;
        }

        var kinds = list.Follows == JointList.Base ? whole.Kinds
            : whole.Cars.TryGetValue(list.Follows, out var car) ? car.Kinds
            : new Dictionary<string, JointKind>();
        return whole with { Written = whole, Kinds = list.Counts.Count == 0 ? kinds : Counted(kinds, list.Counts) };
    }

    /// <summary>The kinds that share a count with this one: what it rides on and what rides on that, itself too.</summary>
    public IReadOnlyList<JointKind> Riding(string key)
    {
        var carrier = key;
        while (Kinds.GetValueOrDefault(carrier)?.RidesOn is { } under)
        {
            carrier = under;
        }

        return [.. Kinds.Values.Where(kind => kind.Key == carrier || IsOn(kind, carrier))];
    }

    private bool IsOn(JointKind kind, string carrier)
    {
        var under = kind.RidesOn;
        while (under is not null && under != carrier)
        {
            under = Kinds.GetValueOrDefault(under)?.RidesOn;
        }

        return under is not null;
    }

    private static Dictionary<string, JointKind> Counted(IReadOnlyDictionary<string, JointKind> kinds, IReadOnlyList<JointCount> counts)
    {
        var own = counts.ToLookup(count => count.Key);
        return kinds.Values.ToDictionary(kind => kind.Key, kind => !own.Contains(kind.Key) ? kind : kind with
        {
            Places = [.. kind.Places.Union(own[kind.Key].Select(count => count.Place))],
            Counts = own[kind.Key].ToDictionary(count => count.Place, count => count.Positions),
        });
    }

    /// <summary>True where a kind has this place and number.</summary>
    public bool Has(JointPosition position) =>
        Kinds.TryGetValue(position.Key, out var kind) && position.Number >= 1 && position.Number <= kind.PositionsAt(position.Place);

    /// <summary>The position that this one rides on: the same number at the same place; null where its kind rides on none.</summary>
    public JointPosition? RiddenBy(JointPosition rider) =>
        Kinds.GetValueOrDefault(rider.Key)?.RidesOn is { } key && Kinds.TryGetValue(key, out var kind)
            && rider.Number <= kind.PositionsAt(rider.Place)
            ? new JointPosition(key, rider.Place, rider.Number)
            : null;

    /// <summary>The positions that have to be off before this one is reached: all of one joint at its place; none where its kind is behind none.</summary>
    public IEnumerable<JointPosition> Before(JointPosition position) =>
        Kinds.GetValueOrDefault(position.Key)?.Behind is { } key && Kinds.TryGetValue(key, out var kind) ? kind.PositionsOf(position.Place) : [];

    /// <summary>The positions at its place that are reached only while this one's joint is off.</summary>
    public IEnumerable<JointPosition> Behind(JointPosition position) =>
        Kinds.Values.Where(kind => kind.Behind == position.Key).SelectMany(kind => kind.PositionsOf(position.Place));
}
