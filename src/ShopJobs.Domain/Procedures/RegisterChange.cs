namespace ShopJobs.Domain.Procedures;

/// <summary>How a new register differs from the one before in one kind of joint.</summary>
/// <param name="Before">The kind as it was; null where it is added.</param>
/// <param name="After">The kind as it is; null where it is removed.</param>
public sealed record KindChange(JointKind? Before, JointKind? After)
{
    public JointKind Kind => After ?? Before!;

    /// <summary>Positions that the new register no longer has.</summary>
    public IReadOnlyList<JointPosition> Lost { get; } = [.. Positions(Before).Except(Positions(After))];

    /// <summary>Positions that the new register adds.</summary>
    public IReadOnlyList<JointPosition> Added { get; } = [.. Positions(After).Except(Positions(Before))];

    /// <summary>True where something other than places and counts differs: name, what it rides on, is behind or undoes, what a release asks.</summary>
    public bool IsDescribedAnew { get; } = Before is not null && After is not null && !IsAlike(Before, After);

    private static IEnumerable<JointPosition> Positions(JointKind? kind) => kind?.AllPositions() ?? [];

    private static bool IsAlike(JointKind one, JointKind other) =>
        (one.Name, one.System, one.FilledBy, one.RidesOn, one.Behind, one.Numbered, one.LeastWhy, one.Temporary)
            == (other.Name, other.System, other.FilledBy, other.RidesOn, other.Behind, other.Numbered, other.LeastWhy, other.Temporary)
        && one.Undoes.ToHashSet().SetEquals(other.Undoes)
        && ReleaseKinds.All.All(release => one.LeastFor(release) == other.LeastFor(release));
}

/// <summary>Compares two joint registers.</summary>
public static class RegisterChanges
{
    /// <summary>True where conditions, settings, results or as-found sheets differ.</summary>
    public static bool OtherThanKinds(JointRegister before, JointRegister after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return !before.Results.ToHashSet().SetEquals(after.Results)
            || !before.AllResults.Select(kind => kind.Key).Union(after.AllResults.Select(kind => kind.Key)).All(key => Alike(before.ResultOf(key), after.ResultOf(key)))
            || !before.AsFound.Keys.Union(after.AsFound.Keys).All(system => Alike(before.AsFoundOf(system), after.AsFoundOf(system)))
            || !Alike(before.Conditions, after.Conditions) || !Alike(before.Settings, after.Settings)
            || before.Conditions.Keys.Any(aspect => !Alike(before.AspectOf(aspect), after.AspectOf(aspect)));
    }

    /// <summary>True where a car of any kind would have fewer lasting joints than before, or follow nothing any more.</summary>
    public static bool TakesAway(JointRegister before, JointRegister after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return before.Cars.Keys.Prepend(JointList.Base).Select(follows => new JointList(follows, []))
            .Any(list => Between(before.For(list), after.For(list)).Any(change => !change.Kind.Temporary && change.Lost.Count > 0));
    }

    private static bool Alike<T>(IReadOnlyDictionary<string, IReadOnlyList<T>> one, IReadOnlyDictionary<string, IReadOnlyList<T>> other) =>
        one.Count == other.Count && one.All(pair => other.TryGetValue(pair.Key, out var values) && pair.Value.SequenceEqual(values));

    private static bool Alike(ConditionAspect one, ConditionAspect other) =>
        (one.OfPlace, one.LastsHours) == (other.OfPlace, other.LastsHours) && one.EndsAt.SequenceEqual(other.EndsAt);

    private static bool Alike(ResultKind one, ResultKind other) =>
        (one.Name, one.NeedsInstrument, one.AfterDrive, one.HoldsMove, one.OfPlace) == (other.Name, other.NeedsInstrument, other.AfterDrive, other.HoldsMove, other.OfPlace)
        && one.Measures.SequenceEqual(other.Measures)
        && one.Notes.Select(note => note with { OneOf = [] }).SequenceEqual(other.Notes.Select(note => note with { OneOf = [] }))
        && one.Notes.SelectMany(note => note.OneOf).SequenceEqual(other.Notes.SelectMany(note => note.OneOf));

    /// <summary>Every kind in which they differ, by key.</summary>
    public static IReadOnlyList<KindChange> Between(JointRegister before, JointRegister after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return
        [
            .. before.Kinds.Keys.Union(after.Kinds.Keys).Order(StringComparer.Ordinal)
                .Select(key => new KindChange(before.Kinds.GetValueOrDefault(key), after.Kinds.GetValueOrDefault(key)))
                .Where(change => change.Lost.Count > 0 || change.Added.Count > 0 || change.IsDescribedAnew),
        ];
    }
}
