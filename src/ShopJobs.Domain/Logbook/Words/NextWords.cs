using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The one thing to do next, as people say it to each other.</summary>
public static class NextWords
{
    /// <summary>For example "Torque wheel nut front-left 3 to 110 N·m, stage 2 of 2".</summary>
    public static string Of(NextAction action, Circumstances now) => action switch
    {
        NextAction.Fit fit => $"Fit new {fit.Instance.Group.Hardware.Name}: {Name(now, fit.Instance, fit.Positions)}",
        NextAction.Prepare prepare => $"Clean the thread, or put on what this torque is for: {Name(now, prepare.Instance, prepare.Positions)}",
        NextAction.ByHand hand => $"Run down by hand: {Name(now, hand.Instance, hand.Positions)}",
        NextAction.PullNow { Cell: var cell } =>
            $"{PullOf(cell, now)}{StageOf(cell.Instance.Group, cell.Stage)}",
        NextAction.TakeOff { Instance.Group.Temporary: true } off => $"Remove {Name(now, off.Instance, off.Positions)}",
        NextAction.TakeOff off => $"Back off {Name(now, off.Instance, off.Positions)}: {Of(off.Why)}",
        NextAction.Wait { Why: var why } => $"Not yet: {now.Say(why).Words}",
        NextAction.Stopped stopped => $"{now.Name(stopped.Position)} is held: the lead decides",
        NextAction.Countersign { Pulls: var pulls } countersign => string.Create(
            CultureInfo.InvariantCulture,
            $"Somebody with the right who stood by countersigns {pulls.Count} {(pulls.Count == 1 ? "pull" : "pulls")} on {NameOf(countersign.Instance)}"),
        NextAction.CountersignStep => "Signed by a trainee: somebody who may record and stood by countersigns it",
        NextAction.Look look => $"A witness checks {NameOf(look.Instance)}{StageOf(look.Instance.Group, look.Stage)}",
        _ => "Look the step over and sign it",
    };

    /// <summary>Why something comes off, and how: the end of "Back off wheel nut front-left 3: …".</summary>
    public static string Of(TakeOffReason why) => why switch
    {
        TakeOffReason.AsFound => "as found: open it first, so that its pattern starts from nothing",
        TakeOffReason.Rework => "rework: back off, inspect, tighten again",
        TakeOffReason.Replace => "replace: back off, fit new hardware, tighten again",
        TakeOffReason.MayHaveBeenPulled => "a record is void and it may have been pulled: back off, or a second person confirms that it never was",
        TakeOffReason.DeclaredFromPaper => "declared from paper, does not count: back off, then pull it again, or press HOLD and have it decided",
        TakeOffReason.ShortPull => "the last pull was short: back off, inspect and start again",
        TakeOffReason.NothingToRestOn => "what its pulls rely on is no longer valid: back off, inspect and start again",
        TakeOffReason.JamNuts => "take the jam nuts off: hold the inner, undo the outer",
        _ => throw new ArgumentOutOfRangeException(nameof(why), why, "This reason has no words."),
    };

    /// <summary>A group at its place, inside a sentence: "wheel nuts front-left"; an abbreviation keeps its capitals.</summary>
    public static string NameOf(GroupInstance instance)
    {
        ArgumentNullException.ThrowIfNull(instance);
        var name = instance.Group.Name;
        var isWord = name.Length > 1 && char.IsUpper(name[0]) && char.IsLower(name[1]);
        return $"{(isWord ? char.ToLowerInvariant(name[0]) + name[1..] : name)} {instance.Place}";
    }

    /// <summary>", stage 2 of 3", or nothing where there is one stage.</summary>
    public static string StageOf(JointGroup group, Stage stage)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(stage);
        return group.Stages.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", stage {stage.Number} of {group.Stages.Count}");
    }

    private static string PullOf(Cell cell, Circumstances now) => cell.Stage.Turn is { } turn
        ? $"Turn {now.Name(cell.Position)} by {Turn.Amount(turn.Degrees)}"
        : $"Torque {now.Name(cell.Position)} to {cell.Stage.Value}{More(cell.Instance.Group)}";

    private static string More(JointGroup group) => (group.RunDown == RunDown.Add ? " and its run-down torque" : "")
        + (group.Adapter is { } adapter ? $" with the {adapter.Name}" : "");

    private static string Name(Circumstances now, GroupInstance instance, IReadOnlyList<JointPosition> positions) =>
        positions.Count == 1 ? now.Name(positions[0])
        : positions.Count == instance.Count ? string.Create(CultureInfo.InvariantCulture, $"all {positions.Count} of {instance.Group.Name} {instance.Place}")
        : $"{instance.Group.Name} {instance.Place} {string.Join(", ", positions.Select(position => position.Number))}";
}
