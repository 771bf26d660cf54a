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
    ];

    private static IEnumerable<(string, string)> Holds(PositionQuestion q) =>
        q.Book.Holds.Select(hold => hold.Decision switch
        {
            null => ($"held: {Words.Of(hold.Reason)}", Words.NextFor(hold.Reason)),
            Disposition.Replace => ("held: to be replaced", "back it off, fit new hardware, redo it"),
            _ => ("held: to be reworked", "back it off, inspect, redo it"),
        });

    private static IEnumerable<(string, string)> Doubts(PositionQuestion q) =>
        from found in Judging.DoubtsOn(q.Book, q.Now.Tool)
        select ($"tightened with {q.Now.Tool(found.Doubt.Tool).Tool?.Name ?? "a tool"}, which is in doubt", "the lead decides: use as is, rework or replace");

    private static IEnumerable<(string, string)> NotAtStage(PositionQuestion q)
    {
        var done = q.Stage is { } stage ? q.State.IsDone(q.Book, stage) : q.State.IsAtTorque(q.Book);
        if (done)
        {
            return [];
        }

        var (stagesDone, of) = q.State.StagesOf(q.Book);
        return [(q.Book.Fitting switch
        {
            Fitting.AsFound => "as found, not torqued here",
            Fitting.Open => "open",
            Fitting.NewHardware => "fitted new, not run down",
            _ when stagesDone > 0 => $"staged {stagesDone}/{of}",
            _ => "hand-tight",
        }, q.Book.Holds.Any(hold => hold.Decision is null) ? "leave it until it is decided" : IsNextTurned(q, stagesDone) ? "turn it on" : "torque it")];
    }

    private static bool IsNextTurned(PositionQuestion q, int stagesDone) =>
        q.Book.Fitting == Fitting.HandTight && q.Instance?.Group.Stages.ElementAtOrDefault(stagesDone)?.Turn is not null;

    private static IEnumerable<(string, string)> NotWitnessed(PositionQuestion q)
    {
        var number = q.Stage ?? q.Book.Last?.Fact.Spec.Stages ?? 0;
        var asksHere = q.Instance is not null && q.Stage is not null && q.Instance.Group.Stages[number - 1].Witness;
        return q.Book.IsWitnessed(number, asksHere) ? [] : [("not witnessed", "a second person looks and signs")];
    }

    private static IEnumerable<(string, string)> OtherSpecification(PositionQuestion q) =>
        q.Job is null || q.Instance is null || q.Stage is not { } number
            ? []
            : from found in OtherSpecifications.On(q.State, q.Now, q.Book, number, q.Job, q.Instance)
              let here = q.Instance.Group
              select (
                  $"torqued as {found.Theirs.Procedure.Code} asks ({found.Pull.Amount()}, {found.Group.Condition}), here {here.Stages[number - 1].PermittedAmount()} {here.Condition} is asked",
                  "redo the joint, or the lead decides");
}
