using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// What has to be known before a step is begun, beside what it waits for. Work that was done all the same counts as it does:
/// nothing of this is asked of a pull or of a signature.
/// </summary>
public static class StartRules
{
    public static readonly IReadOnlyList<StepRule> All = [new(HoldReason.AsFoundMissing, AsFoundMissing)];

    // Each system that the step would open, and of which nobody has written down how it was found.
    private static IEnumerable<HoldPoint> AsFoundMissing(StepQuestion q) => !q.State.AsksAsFound
        ? []
        : from system in StillClosed(q).Select(position => q.Now.KindOf(q.State, position.Key)?.System).OfType<string>().Distinct()
          where q.State.LacksAsFound(system)
          select new HoldPoint(HoldReason.AsFoundMissing) { Job = q.Job.Id, Step = q.Step.Id, Name = system };

    // What was not opened since the car came in. What is open is closed whatever is written down.
    private static IEnumerable<JointPosition> StillClosed(StepQuestion q) =>
        from position in Touched(q)
        let book = q.State.Of(position)
        where book.OpenedBy < q.State.Visit!.Number && book.Fitting is not (Fitting.Open or Fitting.NewHardware)
        select position;

    private static IEnumerable<JointPosition> Touched(StepQuestion q) =>
    [
        .. q.Step.Work.Where(work => !work.Instance.Group.Temporary).SelectMany(work => work.Instance.Positions),
        .. from key in q.Step.Step.Opens
           let kind = q.Placed.Register.Kinds[key]
           from place in kind.Places.Where(place => q.Step.Place is null ? q.Job.Fact.Places.Contains(place) : place == q.Step.Place)
           from position in kind.PositionsOf(place)
           select position,
    ];
}
