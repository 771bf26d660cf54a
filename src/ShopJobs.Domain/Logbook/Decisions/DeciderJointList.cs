using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Which joints the car has. More are taken at once; fewer need the lead and a second person who looked.
public static partial class Decider
{
    private static Verdict Add(CarState state, AddPositions add, Circumstances now)
    {
        var refused = AgainstCounts(now.Register, null, add.Counts).ToList();
        if (refused.Count == 0 && add.Counts.Any(count => count.Positions <= (now.Register.Kinds[count.Key].PositionsAt(count.Place))))
        {
            refused.Add(new HoldPoint(HoldReason.NoMoreThanNow));
        }

        return refused.Count > 0 ? new Verdict.Refused(refused) : Accept(new JointListChanged(null, add.Counts, null, add.Reason));
    }

    private static Verdict Change(CarState state, ChangeJointList change, Circumstances now, HoldRules rules)
    {
        var refused = Permissions(rules, new PermissionQuestion(state, now, change, Right.Lead));
        var after = now.Register.For(state.Joints.With(change.Follows, []));
        refused.AddRange(AgainstCounts(after, change.Follows, change.Counts));
        if (refused.Count > 0)
        {
            return new Verdict.Refused(refused);
        }

        // What a car follows is said first of all: nothing was done on it that could be lost.
        var isNew = change.Counts.Count == 0 && state.Jobs.IsEmpty && state.Positions.IsEmpty && state.ReleaseHistory.IsEmpty;
        var lost = isNew ? [] : Lost(state, now, change.Follows, change.Counts);
        refused.AddRange(lost.Count > 0 ? AgainstFewer(state) : []);
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : lost.Count > 0
                ? Accept(new FewerJointsAsked(change.Follows, change.Counts, change.Reason, change.Shown))
                : Accept(new JointListChanged(change.Follows, change.Counts, null, change.Reason) { Shown = change.Shown });
    }

    private static Verdict LookAt(CarState state, LookAtJoints look, Circumstances now, HoldRules rules)
    {
        if (!state.FewerAsked.TryGetValue(look.Asked, out var asked))
        {
            return Refuse(HoldReason.NothingAskedOfJoints);
        }

        var refused = Permissions(rules, new PermissionQuestion(state, now, look, Right.Witness) { Doers = [asked.Person] });
        refused.AddRange(look.Confirmed ? AgainstFewer(state) : []);
        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : look.Confirmed
                ? Accept(new JointListChanged(asked.Fact.Follows, asked.Fact.Counts, look.Asked, look.Finding) { Shown = look.Shown })
                : Accept(new JointListKept(look.Asked, look.Finding, look.Shown));
    }

    // While a job runs its list takes additions and nothing less.
    private static IEnumerable<HoldPoint> AgainstFewer(CarState state) =>
        state.RunningJobs.FirstOrDefault() is { } job ? [new HoldPoint(HoldReason.FewerInAJob) { Job = job.Id, Name = job.Fact.Procedure }] : [];

    private static IEnumerable<HoldPoint> AgainstCounts(JointRegister after, string? follows, IReadOnlyList<JointCount> counts)
    {
        if (follows is not null && !after.Knows(follows))
        {
            yield return new HoldPoint(HoldReason.UnknownCarKind) { Name = follows, Choices = [.. after.Followed.Select(kind => kind.Name)] };
        }
        else if (follows is null && counts.Count == 0)
        {
            yield return new HoldPoint(HoldReason.NoPosition);
        }

        foreach (var count in counts.Where(count => !after.Kinds.ContainsKey(count.Key) || !after.Kinds[count.Key].Places.Contains(count.Place)).Take(1))
        {
            yield return new HoldPoint(HoldReason.UnknownPosition) { Position = new JointPosition(count.Key, count.Place, 1) };
        }

        if (counts.Any(count => count.Positions is < 0 or > JointCount.Most))
        {
            yield return new HoldPoint(HoldReason.CountOutside);
        }
    }

    /// <summary>Positions of the car's list that a change would take away.</summary>
    internal static IReadOnlyList<JointPosition> Lost(CarState state, Circumstances now, string? follows, IReadOnlyList<JointCount> counts)
    {
        var (before, after) = (now.Register.For(state.Joints), now.Register.For(state.Joints.With(follows, counts)));
        return [.. before.Kinds.Values.SelectMany(kind => kind.AllPositions()).Where(position => !after.Has(position))];
    }
}
