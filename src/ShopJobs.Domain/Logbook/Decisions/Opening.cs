using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What opening positions means: each target once, transitively.</summary>
public static class Opening
{
    /// <summary>The entry for positions opened by hand.</summary>
    /// <remarks>
    /// A group that is redone as a joint is opened as a joint. What rides on an opened position is open with it, not the
    /// reverse. Joints that are undone are open; results and settings that are undone are void, and what a setting undoes too.
    /// </remarks>
    public static Opened Of(CarState state, Circumstances now, OpenPositions command)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(command);
        var byHand = command.Positions.SelectMany(position => WithItsJoint(state, now, position)).Distinct().ToList();
        var reach = new Reach(state, now);
        reach.From(byHand);
        var also = reach.Opens(byHand);
        return new Opened(byHand, also, reach.Undid, command.Job, command.Reason) { Unseen = NotSeen(state, now, [.. byHand, .. also]) };
    }

    // Systems of which it was not recorded how they were found: after this nobody can.
    private static List<string>? NotSeen(CarState state, Circumstances now, IReadOnlyList<JointPosition> positions)
    {
        if (!state.AsksAsFound)
        {
            return null;
        }

        var lost = positions.Select(position => now.KindOf(state, position.Key)?.System).OfType<string>().Distinct()
            .Where(system => state.LacksAsFound(system) && !state.Unseen.ContainsKey(system)).ToList();
        return lost.Count > 0 ? lost : null;
    }

    /// <summary>What recording a setting again undoes, and the joints that are open with it.</summary>
    public static (IReadOnlyList<Undone> Undid, IReadOnlyList<JointPosition> Opens) ByResult(CarState state, Circumstances now, string name)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(name);
        var reach = new Reach(state, now);
        if (name.StartsWith("setting:", StringComparison.Ordinal))
        {
            reach.FromSetting(name["setting:".Length..]);
        }

        return (reach.Undid, reach.Opens([]));
    }

    /// <summary>True when opening a joint of this kind at this place undoes the result or setting, directly or through others.</summary>
    /// <param name="name">The name under which it is recorded, with its place where it has one.</param>
    public static bool Undoes(JointRegister register, JointKind kind, string place, string name)
    {
        ArgumentNullException.ThrowIfNull(register);
        ArgumentNullException.ThrowIfNull(kind);
        var (key, at) = ResultKind.Split(name);
        if (at is not null && at != place)
        {
            return false;
        }

        var reached = new HashSet<Undone>();
        var open = new Queue<Undone>(kind.Undoes);
        while (open.TryDequeue(out var undone))
        {
            if (!reached.Add(undone))
            {
                continue;
            }

            foreach (var further in undone.Kind switch
            {
                UndoneKind.Setting => register.Settings.GetValueOrDefault(undone.Name) ?? [],
                UndoneKind.Joint => register.Kinds.GetValueOrDefault(undone.Name)?.Undoes ?? [],
                _ => [],
            })
            {
                open.Enqueue(further);
            }
        }

        return reached.Any(undone => undone.ToString() == key);
    }

    /// <summary>The group whose specification is in force on a position, or that a running job has for it.</summary>
    public static GroupInstance? GroupOn(CarState state, Circumstances now, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        var inForce = state.Of(position).InForce is { } job && state.Jobs.TryGetValue(job, out var book) ? [book] : Array.Empty<JobBook>();
        return inForce.Concat(state.RunningJobs.Reverse())
            .Select(candidate => now.Placed(candidate).Groups.FirstOrDefault(group => group.Joint == position.Joint))
            .FirstOrDefault(group => group is not null);
    }

    private static IEnumerable<JointPosition> WithItsJoint(CarState state, Circumstances now, JointPosition position)
    {
        var group = GroupOn(state, now, position);
        return group is { Group: { Redo: RedoScope.Joint, Temporary: false } } ? group.Positions : [position];
    }

    /// <summary>Everything an opening reaches. A position that is open already is reached too: what depends on it is undone again.</summary>
    private sealed class Reach(CarState state, Circumstances now)
    {
        private readonly List<JointPosition> reached = [];
        private readonly Queue<JointPosition> open = new();

        public List<Undone> Undid { get; } = [];

        public void From(IEnumerable<JointPosition> positions)
        {
            Add(positions);
            while (open.TryDequeue(out var position))
            {
                Follow(position);
            }
        }

        public void FromSetting(string name)
        {
            Undo(new Undone(UndoneKind.Setting, name), null);
            Undid.Remove(new Undone(UndoneKind.Setting, name));
            From([]);
        }

        /// <summary>Positions to be recorded as open, without those named and those that are bare already.</summary>
        public IReadOnlyList<JointPosition> Opens(IReadOnlyList<JointPosition> named) =>
            [.. reached.Where(position => !named.Contains(position) && state.Of(position) is not { Fitting: Fitting.Open, On: 0 })];

        private void Add(IEnumerable<JointPosition> positions)
        {
            foreach (var position in positions.Where(position => !reached.Contains(position)))
            {
                reached.Add(position);
                open.Enqueue(position);
            }
        }

        private void Follow(JointPosition position)
        {
            if (!now.Register.Kinds.TryGetValue(position.Key, out var kind))
            {
                return;
            }

            Add(now.Register.Kinds.Values.Where(rider => rider.RidesOn == kind.Key && rider.Places.Contains(position.Place))
                .SelectMany(rider => WithItsJoint(state, now, new JointPosition(rider.Key, position.Place, position.Number))));
            foreach (var consequence in kind.Temporary ? [] : kind.Undoes)
            {
                Undo(consequence, position.Place);
            }
        }

        private void Undo(Undone consequence, string? place)
        {
            if (consequence.Kind == UndoneKind.Joint)
            {
                if (now.Register.Kinds.TryGetValue(consequence.Name, out var other))
                {
                    Add(other.AllPositions().Where(at => place is null || !other.Places.Contains(place) || at.Place == place));
                }

                return;
            }

            foreach (var named in NamesOf(consequence, place).Where(named => !Undid.Contains(named)))
            {
                Undid.Add(named);
                UndoFurther(named);
            }
        }

        // A result that each place has for itself: that of the place, or every one that was ever recorded or undone.
        private IEnumerable<Undone> NamesOf(Undone consequence, string? place)
        {
            var kind = now.Register.ResultOf(consequence.Name);
            return consequence.Kind != UndoneKind.Result || !kind.OfPlace ? [consequence]
                : place is not null ? [consequence with { Name = kind.At(place) }]
                : state.Results.Keys.Union(state.Undone.Keys).Where(name => ResultKind.Split(name) is (var key, not null) && key == kind.Key)
                    .Select(name => consequence with { Name = name });
        }

        private void UndoFurther(Undone consequence)
        {
            foreach (var further in consequence.Kind == UndoneKind.Setting ? now.Register.Settings.GetValueOrDefault(consequence.Name) ?? [] : [])
            {
                Undo(further, null);
            }
        }
    }
}
