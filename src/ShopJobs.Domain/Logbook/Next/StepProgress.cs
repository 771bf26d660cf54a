using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>How far the fasteners of a step have come: those that have every stage of the step, or are run down where it asks no more.</summary>
/// <param name="Done">Fasteners that are done.</param>
/// <param name="Of">Fasteners in all; 0 where the step tightens none.</param>
public readonly record struct StepProgress(int Done, int Of)
{
    /// <summary>True while some are done and some are not.</summary>
    public bool IsBegun => Done > 0 && Done < Of;

    /// <summary>Counts them; temporary hardware, which comes off again within the step, is not counted.</summary>
    public static StepProgress On(CarState state, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(step);
        var done = step.Work.Where(work => !work.Instance.Group.Temporary)
            .SelectMany(work => work.Instance.Positions.Select(position => IsDone(state, state.Of(position), work))).ToList();
        return new StepProgress(done.Count(one => one), done.Count);
    }

    private static bool IsDone(CarState state, PositionBook book, GroupWork work) => work.Stages.Count == 0
        ? book.Fitting == Fitting.HandTight
        : work.Stages.All(stage => state.IsDone(book, stage));
}
