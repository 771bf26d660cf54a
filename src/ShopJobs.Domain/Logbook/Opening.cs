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
        var also = new List<JointPosition>();
        var undid = new List<Undone>();
        var open = new Queue<JointPosition>(byHand);
        while (open.TryDequeue(out var position))
        {
            foreach (var follower in Followers(state, now, position, undid))
            {
                if (!byHand.Contains(follower) && !also.Contains(follower) && !IsBare(state, follower))
                {
                    also.Add(follower);
                    open.Enqueue(follower);
                }
            }
        }

        return new Opened(byHand, also, undid, command.Job, command.Reason);
    }

    /// <summary>What recording a setting anew undoes.</summary>
    public static IReadOnlyList<Undone> ByResult(Circumstances now, string name)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(name);
        var undid = new List<Undone>();
        if (name.StartsWith("setting:", StringComparison.Ordinal))
        {
            foreach (var undone in now.Register.Settings.GetValueOrDefault(name["setting:".Length..]) ?? [])
            {
                Add(now, undone, undid);
            }
        }

        return undid;
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

    private static List<JointPosition> Followers(CarState state, Circumstances now, JointPosition position, List<Undone> undid)
    {
        if (!now.Register.Kinds.TryGetValue(position.Key, out var kind))
        {
            return [];
        }

        var riders = now.Register.Kinds.Values.Where(rider => rider.RidesOn == kind.Key && rider.Places.Contains(position.Place))
            .SelectMany(rider => WithItsJoint(state, now, new JointPosition(rider.Key, position.Place, position.Number)));
        var undone = new List<JointPosition>();
        foreach (var consequence in kind.Temporary ? [] : kind.Undoes)
        {
            if (consequence.Kind == UndoneKind.Joint && now.Register.Kinds.TryGetValue(consequence.Name, out var other))
            {
                undone.AddRange(other.AllPositions().Where(at => !other.Places.Contains(position.Place) || at.Place == position.Place));
            }
            else
            {
                Add(now, consequence, undid);
            }
        }

        return [.. riders, .. undone];
    }

    private static void Add(Circumstances now, Undone consequence, List<Undone> undid)
    {
        if (undid.Contains(consequence))
        {
            return;
        }

        undid.Add(consequence);
        if (consequence.Kind == UndoneKind.Setting)
        {
            foreach (var further in now.Register.Settings.GetValueOrDefault(consequence.Name) ?? [])
            {
                Add(now, further, undid);
            }
        }
    }

    private static bool IsBare(CarState state, JointPosition position) =>
        state.Of(position) is { Fitting: Fitting.Open, Pulls.IsEmpty: true };
}
