using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>Everything that is not finished on the whole car, whatever work the page covers. It stands on top of the page.</summary>
internal static class OpenItems
{
    public static IReadOnlyList<OpenItem> Of(SummarySubject car) =>
        [.. Suspended(car), .. Joints(car), .. Temporary(car), .. Results(car), .. Stopped(car), .. Steps(car)];

    private static IEnumerable<OpenItem> Suspended(SummarySubject car) =>
        from kind in ReleaseKinds.All
        where car.Standing(kind).Kind == ReleaseStandingKind.Suspended
        select new OpenItem(null, $"The release to {ReleaseLines.Word(kind)} is suspended: we have to look at the car again before it is good");

    private static IEnumerable<OpenItem> Joints(SummarySubject car) =>
        from joint in car.Joints
        let all = joint.Count()
        from same in joint.Select(book => (book, Lack: LackOf(car, book))).Where(found => found.Lack is not null)
            .GroupBy(found => found.Lack!.Value)
        let numbers = string.Join(", ", same.Select(found => found.book.Position.Number).Order())
        select new OpenItem(
            same.Key.State,
            $"{car.Name(joint.Key)}: {same.Count()} of {all} {same.Key.Words} (no. {numbers})");

    private static (PositionState State, string Words)? LackOf(SummarySubject car, PositionBook book)
    {
        var shown = car.State.StateOf(book.Position, car.Now.Tool);
        return shown switch
        {
            PositionState.Held => (shown, book.Holds.Exists(hold => hold.Decision is null) ? "held: not to be used before it is decided"
                : book.Holds.Exists(hold => hold.Decision is Disposition.Replace) ? "held: to be replaced"
                : "held: to be redone"),
            PositionState.Doubted => (shown, "in doubt: the tool it was tightened with is in question"),
            PositionState.Open => (shown, "open"),
            PositionState.NotFitted => (shown, "fitted new and not tightened"),
            PositionState.HandTight => (shown, "hand-tight only"),
            PositionState.Staged => (shown, "tightened part of the way only"),
            PositionState.AsFound => null,
            _ => book.IsWitnessed(book.Last!.Fact.Spec.Stages) ? null : (shown, "at torque, not yet checked by a second person"),
        };
    }

    private static IEnumerable<OpenItem> Temporary(SummarySubject car) =>
        from kind in car.Now.Register.Kinds.Values
        where kind.Temporary
        from position in kind.AllPositions()
        where car.State.IsOn(position) || !car.State.Of(position).Holds.IsEmpty
        group position by position.Joint into joint
        select new OpenItem(null, $"{car.Name(joint.Key)}: a tool for the work, still on the car");

    private static IEnumerable<OpenItem> Results(SummarySubject car) =>
    [
        .. car.State.Undone.Keys.Order(StringComparer.Ordinal).Select(name => new OpenItem(null, $"{car.ResultName(name)}: {Lack(car, name)}")),
        .. car.State.Results.Values.Where(result => result.VoidBy == 0 && result.DoubtsOn(car.Now.Tool).Any()).OrderBy(result => result.Number)
            .Select(result => new OpenItem(null, $"{car.ResultName(result.Fact.Name)}: in doubt, because the instrument it was measured with is; to be measured again")),
    ];

    private static string Lack(SummarySubject car, string name) =>
        car.State.Results.GetValueOrDefault(name)?.Fact.Problems is { Count: > 0 } ? "measured, and not as it should be; to be put right"
        : car.Now.Register.ResultOf(name).AfterDrive ? "still missing, because only a drive gives it"
        : "no longer valid, because work it depends on was done after it; to be done again";

    private static IEnumerable<OpenItem> Stopped(SummarySubject car) =>
        from hold in car.State.UndecidedWork()
        let what = hold.Fact switch
        {
            { Job: { } job, Step: { } step } when car.Now.Placed(car.State.Jobs[job]).Step(step) is { } instance => instance.Title(),
            { Result: { } result } when car.State.Correctables[result].Entry is ResultRecorded fact => car.ResultName(fact.Name),
            _ => null,
        }
        where what is not null
        select new OpenItem(null, $"{what}: held, not good before it is decided");

    private static IEnumerable<OpenItem> Steps(SummarySubject car)
    {
        foreach (var job in car.State.RunningJobs)
        {
            var placed = car.Now.Placed(job);
            if (job.OnHold is { } hold)
            {
                yield return new OpenItem(null, $"{placed.Procedure.Title}: on hold since {car.DayWords(hold.At)}");
            }
            else if (!job.Begun)
            {
                yield return new OpenItem(null, $"{placed.Procedure.Title}: not started");
            }

            foreach (var same in placed.Steps.GroupBy(step => car.State.StandingOf(job, placed, step)))
            {
                if (same.Key != StepStanding.Signed && (job.Begun || same.Key != StepStanding.NotSigned))
                {
                    yield return new OpenItem(null, StepsWords(placed, same.Key, [.. same]));
                }
            }
        }
    }

    /// <summary>Steps that tighten are counted only: their titles may name a torque, and their joints are listed above.</summary>
    private static string StepsWords(PlacedProcedure placed, StepStanding standing, IReadOnlyList<StepInstance> steps)
    {
        var others = SummarySubject.StepWords(steps.Where(step => step.Work.Count == 0).Select(step => (step, false)));
        return $"{placed.Procedure.Title}: {steps.Count} of {placed.Steps.Count} steps {standing.Words()}"
            + (others.Count > 0 ? $", among them: {string.Join("; ", others)}" : "");
    }
}
