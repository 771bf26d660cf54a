using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>A pull made for another job that does not pass what this job asks.</summary>
public sealed record OtherSpecification(Pull Pull, PlacedProcedure Theirs, JointGroup Group);

/// <summary>
/// Two procedures that name one key mean the same joint: a record made for one satisfies a step of the other only if it passes
/// that step's range, condition, stages, hardware and car condition too, or was decided <em>use as is</em>.
/// </summary>
public static class OtherSpecifications
{
    /// <summary>The newest pulls of a stage on a position that another job made and that do not pass here.</summary>
    public static IEnumerable<OtherSpecification> On(
        CarState state, Circumstances now, PositionBook book, int number, JobBook job, GroupInstance instance)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(instance);
        return from pull in book.Newest(number)
               where pull.Fact.Job != job.Id && pull.AcceptedBy is null && state.Passes(pull)
               let theirs = now.Placed(state.Jobs[pull.Fact.Job])
               let made = theirs.Procedure.Group(pull.Fact.Group)
               where !Passes(pull, made, number, instance.Group)
               select new OtherSpecification(pull, theirs, made);
    }

    /// <summary>Pulls on a position that do not pass what a running job asks there: the lead decides about them.</summary>
    public static IEnumerable<Pull> OfRunningJobs(CarState state, Circumstances now, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(book);
        return (from job in state.RunningJobs
                from instance in now.Placed(job).Groups
                where instance.Joint == book.Position.Joint
                from stage in instance.Group.Stages
                from found in On(state, now, book, stage.Number, job, instance)
                select found.Pull).DistinctBy(pull => pull.Number);
    }

    internal static bool Passes(Pull pull, JointGroup theirs, int number, JointGroup ours)
    {
        var stage = ours.Stages[number - 1];
        return (stage.Turn is { } turn
                ? pull.Fact.AngleDegrees is { } degrees && turn.Contains(degrees)
                : pull.AtFastener is { } torque && stage.Permitted.Contains(torque))
            && theirs.Condition == ours.Condition
            && theirs.Hardware == ours.Hardware
            && theirs.Stages.Count == ours.Stages.Count
            && stage.Conditions.All(theirs.Stages[number - 1].Conditions.Contains)
            && stage.Visits.Count(visit => visit == pull.Fact.Position.Number) == pull.Fact.Spec.Visits;
    }
}
