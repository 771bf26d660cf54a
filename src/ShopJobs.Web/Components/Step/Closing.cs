using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>Which step finishes what a joint sits on.</summary>
public static class Closing
{
    /// <summary>The step to go to; null where no running job closes it.</summary>
    public static (JobId Job, StepInstance Step)? StepFor(CarReading reading, HoldPoint why)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(why);
        if (why is { Job: { } id, Step: { } named } && reading.State.Jobs.TryGetValue(id, out var job) && reading.Placed(job).Step(named) is { } step)
        {
            return (id, step);
        }

        return (why.Because?.Position ?? why.Position) is not { } position ? null
            : reading.State.RunningJobs
                .SelectMany(running => reading.Placed(running).Steps.Select(instance => (Job: running, Step: instance)))
                .Where(found => found.Step.Work.Any(work => work.Instance.Joint == position.Joint)
                    && reading.State.StandingOf(found.Job, reading.Placed(found.Job), found.Step) != StepStanding.Signed)
                .Select(found => ((JobId, StepInstance)?)(found.Job.Id, found.Step)).FirstOrDefault();
    }
}
