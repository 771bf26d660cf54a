using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>What a job card says: one job of one car as it stood at the print.</summary>
/// <param name="Number">The number that stands on it.</param>
/// <param name="At">The print, UTC.</param>
/// <param name="Names">Everybody's name by id.</param>
public sealed record PrintedCard(
    Car Car, CarReading Reading, JobBook Job, CardNumber Number, DateTime At, IReadOnlyDictionary<PersonId, string> Names)
{
    /// <summary>The procedure at its places.</summary>
    public PlacedProcedure Placed => Reading.Placed(Job);

    /// <summary>The number as it is written.</summary>
    public string Text => Number.On(Car.Id, Job.Id);

    /// <summary>Steps in working order.</summary>
    public IReadOnlyCollection<StepInstance> Steps => Placed.Steps;

    /// <summary>Whether a step's sign-off stands.</summary>
    public StepStanding StandingOf(StepInstance step) => Reading.State.StandingOf(Job, Placed, step);

    /// <summary>Who signed a step; null while nobody has, or where it no longer stands.</summary>
    public SignOff? SignOffOf(StepInstance step) => StandingOf(step) == StepStanding.Signed ? Job.SignOffs.GetValueOrDefault(step.Id) : null;

    /// <summary>How the car must be for the work of a step: each condition once.</summary>
    public static IReadOnlyList<CarCondition> ConditionsOf(StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return [.. step.Work.SelectMany(work => work.Stages.SelectMany(number => work.Instance.Group.Stages[number - 1].Conditions)).Distinct()];
    }

    /// <summary>Positions that a step opens outside its own groups.</summary>
    public static IReadOnlyList<JointPosition> OpenedBy(CarReading reading, JobBook job, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(step);
        var register = reading.Placed(job).Register;
        return
        [
            .. from key in step.Step.Opens
               let kind = register.Kinds.GetValueOrDefault(key)
               where kind is not null
               from place in kind.Places.Where(place => step.Place is null ? job.Fact.Places.Contains(place) : place == step.Place)
               from position in kind.PositionsOf(place)
               select position,
        ];
    }
}
