namespace ShopJobs.Domain.Procedures;

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

    /// <summary>What is looked at and measured on a system when a car comes in, by the system's name; a system without a sheet is told in words.</summary>
    public IReadOnlyDictionary<string, ResultKind> AsFound { get; init; } = new Dictionary<string, ResultKind>();

    /// <summary>The systems of the car that have a lasting joint, in the order of the register.</summary>
    public IReadOnlyList<string> Systems => [.. Kinds.Values.Where(kind => !kind.Temporary).Select(kind => kind.System).Distinct()];

    /// <summary>The as-found sheet of a system; without values and notes where the register names none.</summary>
    public ResultKind AsFoundOf(string system) => AsFound.GetValueOrDefault(system) ?? ResultKind.Bare(system);

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
