using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One stage of one group instance that a second person must look at.</summary>
/// <param name="Step">The step instance the stage is done in.</param>
/// <param name="Pulls">The records to be looked at, by position.</param>
/// <param name="Workers">Everybody who recorded, held or helped: none of them may witness.</param>
public sealed record AwaitedWitness(
    StepInstance Step, GroupInstance Instance, Stage Stage, IReadOnlyList<Pull> Pulls, IReadOnlySet<PersonId> Workers);

/// <summary>Finds what waits for a witness.</summary>
public static class AwaitedWitnesses
{
    /// <summary>Stages of this job that are done on every position and not witnessed on all of them.</summary>
    public static IEnumerable<AwaitedWitness> AwaitingWitness(this CarState state, PlacedProcedure placed)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(placed);
        return placed.Steps.SelectMany(step => state.AwaitingWitness(step));
    }

    /// <summary>Stages of this step instance that are done on every position and not witnessed on all of them.</summary>
    public static IEnumerable<AwaitedWitness> AwaitingWitness(this CarState state, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(step);
        return from work in step.Work
               from number in work.Stages
               let stage = work.Instance.Group.Stages[number - 1]
               where stage.Witness
               let books = work.Instance.Positions.Select(state.Of).ToList()
               where books.TrueForAll(book => book.Holds.IsEmpty && state.IsDone(book, number))
               let pulls = Witnessing.Awaiting(state, books, number)
               where pulls.Count > 0
               select new AwaitedWitness(step, work.Instance, stage, pulls, books.SelectMany(book => book.Workers).ToHashSet());
    }
}
