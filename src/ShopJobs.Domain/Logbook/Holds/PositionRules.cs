namespace ShopJobs.Domain.Logbook;

/// <summary>The rules by which a position counts, each one element of a list.</summary>
public static class PositionRules
{
    public static readonly IReadOnlyList<PositionRule> All =
    [
        new(HoldReason.Held, Holds),
        new(HoldReason.ToolInDoubt, Doubts),
        new(HoldReason.NotAtStage, NotAtStage),
        new(HoldReason.NotWitnessed, NotWitnessed),
        new(HoldReason.OtherSpecification, OtherSpecification),
        new(HoldReason.RidesOnLoose, RidesOn),
        new(HoldReason.UnfinishedBehind, LooseBehind),
    ];

    private static IEnumerable<HoldPoint> Holds(PositionQuestion q) =>
        q.Book.Holds.Select(hold => On(q, HoldReason.Held) with { Because = new HoldPoint(hold.Reason), Decision = hold.Decision });

    private static IEnumerable<HoldPoint> Doubts(PositionQuestion q) =>
        q.State.DoubtsOn(q.Book, q.Now.Tool).Select(doubt => On(q, HoldReason.ToolInDoubt) with { Tool = q.Now.Tool(doubt.Tool).Tool });

    private static IEnumerable<HoldPoint> RidesOn(PositionQuestion q) =>
        Riding.Against(q.State, q.Now, q.Book.Position, temporary: false) is { } loose
            ? [On(q, HoldReason.RidesOnLoose) with { Because = loose }]
            : [];

    private static IEnumerable<HoldPoint> LooseBehind(PositionQuestion q) =>
        Reach.Loose(q.State, q.Now, q.Book.Position) is { } loose
            ? [On(q, HoldReason.UnfinishedBehind) with { Because = loose }]
            : [];

    private static IEnumerable<HoldPoint> NotAtStage(PositionQuestion q)
    {
        var done = q.Stage is { } stage ? q.State.IsDone(q.Book, stage) : q.State.IsAtTorque(q.Book);
        if (done)
        {
            return [];
        }

        var (stagesDone, of) = q.State.StagesOf(q.Book);
        var undecided = q.Book.Holds.Any(hold => hold.Decision is null);
        return [On(q, HoldReason.NotAtStage) with { Reached = new StageReached(q.Book.Fitting, stagesDone, of, IsNextTurned(q, stagesDone), undecided) { Awaited = q.Book.Newest(stagesDone + 1).Any(pull => pull.WaitsForAnswer), Declared = DeclaredBy(q) } }];
    }

    private static PersonId? DeclaredBy(PositionQuestion q) =>
        q.Book.DeclaredBy > 0 && q.State.Correctables.TryGetValue(q.Book.DeclaredBy, out var declared) ? declared.Person : null;

    private static bool IsNextTurned(PositionQuestion q, int stagesDone) =>
        q.Book.Fitting == Fitting.HandTight && q.Instance?.Group.Stages.ElementAtOrDefault(stagesDone)?.Turn is not null;

    private static IEnumerable<HoldPoint> NotWitnessed(PositionQuestion q)
    {
        var number = q.Stage ?? q.Book.Last?.Fact.Spec.Stages ?? 0;
        var asksHere = q.Instance is not null && q.Stage is not null && q.Instance.Group.Stages[number - 1].Witness;
        return q.Book.IsWitnessed(number, asksHere) ? [] : [On(q, HoldReason.NotWitnessed)];
    }

    private static IEnumerable<HoldPoint> OtherSpecification(PositionQuestion q) =>
        q.Job is null || q.Instance is null || q.Stage is not { } number
            ? []
            : from found in OtherSpecifications.On(q.State, q.Now, q.Book, number, q.Job, q.Instance)
              let here = q.Instance.Group
              select On(q, HoldReason.OtherSpecification) with
              {
                  Otherwise = new TorquedOtherwise(
                      found.Theirs.Procedure.Code, found.Pull.Amount(), found.Group.Condition, here.Stages[number - 1].PermittedAmount(), here.Condition),
              };

    private static HoldPoint On(PositionQuestion q, HoldReason reason) => new(reason) { Position = q.Book.Position };
}
