using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

/// <summary>What somebody did, for a person who reads a failure.</summary>
internal static class CommandWords
{
    public static string Of(Command command) => command switch
    {
        SignedCommand { Covers: { Entries: var entries } covers } signed when covers != Covering.Nothing =>
            $"{Of(signed with { Covers = Covering.Nothing })} as drawn with [{string.Join(", ", entries)}]",
        RecordTorque pull => $"pulls {pull.Position} stage {pull.Stage} visit {pull.Visit} cycle {pull.Cycle} {pull.Kind} {pull.Value}{pull.AngleDegrees} job {pull.Job.Value.ToString()[..8]}",
        HandTighten hand => $"runs down {string.Join(", ", hand.Positions)} job {hand.Job.Value.ToString()[..8]} cycles {string.Join(",", hand.Cycles ?? [])}",
        FitNew fit => $"fits new {string.Join(", ", fit.Positions)}",
        OpenPositions open => $"opens {string.Join(", ", open.Positions)} cycles {string.Join(",", open.Cycles ?? [])}",
        HoldPositions hold => $"holds {string.Join(", ", hold.Positions)}",
        FinishStep finish => $"finishes {finish.Step} job {finish.Job.Value.ToString()[..8]}",
        ConfirmStep { With: { Count: > 0 } with } confirm => $"signs {confirm.Step} with {string.Join(", ", with)} job {confirm.Job.Value.ToString()[..8]}",
        ConfirmStep confirm => $"signs {confirm.Step} n/a {confirm.NotApplicable} job {confirm.Job.Value.ToString()[..8]}",
        Witness look => $"looks at {look.Group} {look.Place} stage {look.Stage} accepted {look.Accepted}",
        DecideHold decide => $"decides {decide.Position} {decide.Disposition}",
        VoidEntry voiding => $"voids {voiding.Target} pulled {voiding.WasPulled}",
        Restate restate => $"restates {restate.Target} to {restate.Value}",
        Countersign countersign => $"countersigns {string.Join(", ", countersign.Records)}",
        ConfirmCorrection confirm => $"confirms {confirm.Correction}",
        Release release => $"releases to {release.Kind}",
        RecordResult result => $"records {result.Name} {(result.Values is [var first, ..] ? first.Value : null as decimal?)} with {result.Tool} on {string.Join(",", result.Notes ?? [])}",
        StartJob start => $"starts {start.Procedure.Code} at {string.Join(", ", start.Places)} as {start.Job.Value.ToString()[..8]}",
        RecordSettled settled => $"re-torques {string.Join(", ", settled.Positions)} {settled.Value}",
        _ => command.ToString()!,
    };
}
