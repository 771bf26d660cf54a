using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>How a record compares with a newer revision of its procedure.</summary>
public enum RevisionMatch
{
    /// <summary>It passes what the newer revision asks, or that is what was asked before: what was decided about it stands.</summary>
    Passes,

    /// <summary>It is outside what the newer revision asks: the value, the angle, the condition, the hardware, the order, or a look that is asked now.</summary>
    Outside,

    /// <summary>The newer revision asks nothing there any more.</summary>
    Gone,
}

/// <summary>One newest pull of a fastener beside what a newer revision asks of it.</summary>
/// <param name="Asked">What the newer revision asks there, as it is read out; null where it asks nothing.</param>
public sealed record RevisedPull(Pull Pull, RevisionMatch Match, string? Asked);

/// <summary>What a newer revision of its procedure means for a job.</summary>
/// <param name="Pulls">The newest pulls made for the job, by position and stage.</param>
/// <param name="Steps">Signed steps that ask something else now, or are gone.</param>
/// <param name="Gone">Groups with records of this job that the newer revision lacks: then it can't be taken over.</param>
public sealed record RevisionEffect(IReadOnlyList<RevisedPull> Pulls, IReadOnlyList<StepInstance> Steps, IReadOnlyList<JointGroup> Gone)
{
    /// <summary>True where nothing that was done is touched.</summary>
    public bool IsNone => Steps.Count == 0 && Gone.Count == 0 && Pulls.All(pull => pull.Match == RevisionMatch.Passes);

    /// <summary>Compares what was done for a job with a newer revision.</summary>
    /// <param name="after">The newer revision at the job's places.</param>
    public static RevisionEffect Of(CarState state, Circumstances now, JobBook job, PlacedProcedure after)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(after);
        var before = now.Placed(job);
        var made = state.Positions.Values.OrderBy(book => book.Position.ToString(), StringComparer.Ordinal)
            .SelectMany(book => book.Pulls.Where(pull => pull.Fact.Job == job.Id)).ToList();
        var newest = state.Positions.Values.OrderBy(book => book.Position.ToString(), StringComparer.Ordinal)
            .SelectMany(book => book.Pulls.Select(pull => pull.Fact.Stage).Distinct().Order().SelectMany(book.Newest))
            .Where(pull => pull.Fact.Job == job.Id && state.Passes(pull))
            .Select(pull => Judge(pull, before, after));
        var signed = before.Steps.Where(step => job.SignOffs.ContainsKey(step.Id) && state.StandingOf(job, before, step) != StepStanding.NotSigned);
        return new RevisionEffect(
            [.. newest],
            [.. signed.Where(step => after.Step(step.Id) is not { } next || !StepLikeness.AsksTheSame(before.Procedure, step.Step, after.Procedure, next.Step))],
            [.. before.Procedure.Groups.Where(group => made.Exists(pull => pull.Fact.Group == group.Id) && !HasGroup(after, group))]);
    }

    private static bool HasGroup(PlacedProcedure after, JointGroup group) =>
        after.Procedure.Groups.Any(other => other.Id == group.Id && other.Key == group.Key && other.Stages.Count == group.Stages.Count);

    private static RevisedPull Judge(Pull pull, PlacedProcedure before, PlacedProcedure after)
    {
        var was = before.Procedure.Group(pull.Fact.Group);
        if (!HasGroup(after, was) || after.Group(was.Id, pull.Fact.Position.Place) is not { } instance)
        {
            return new RevisedPull(pull, RevisionMatch.Gone, null);
        }

        var (ours, theirs) = (instance.Group.Stages[pull.Fact.Stage - 1], was.Stages[pull.Fact.Stage - 1]);
        var passes = StepLikeness.AsksTheSame(was, instance.Group, pull.Fact.Stage)
            || ((!ours.Witness || theirs.Witness) && OtherSpecifications.Passes(pull, was, pull.Fact.Stage, instance.Group));
        return new RevisedPull(pull, passes ? RevisionMatch.Passes : RevisionMatch.Outside, $"{ours.Amount()}, {ours.PermittedAmount()}");
    }
}
