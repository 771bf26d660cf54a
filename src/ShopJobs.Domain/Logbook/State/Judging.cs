using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Judges what the records of a position amount to now. Everything here is derived; nothing is stored.</summary>
public static class Judging
{
    private static readonly HoldReason[] ValueReasons =
        [HoldReason.UnderRange, HoldReason.OverRange, HoldReason.SettingNotInstructed];

    /// <summary>What is wrong with a value: under, over, or a setting that is not the instructed one; null when nothing is.</summary>
    /// <remarks>
    /// Compared in decimal N·m, both ends inside, no rounding and no tool tolerance. A confirmed setting measures nothing, so it
    /// is never "under": it was the instructed setting or it was not.
    /// </remarks>
    /// <param name="newtonMetres">The number on the tool.</param>
    /// <param name="runDown">Run-down torque of the position, where it is added.</param>
    public static HoldReason? ValueProblem(TorqueKind kind, decimal newtonMetres, SpecificationInForce spec, EnteredTorque? runDown = null)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var atFastener = AtFastener(newtonMetres, spec, runDown);
        return atFastener > spec.Maximum ? HoldReason.OverRange
            : kind == TorqueKind.SettingConfirmed ? IsInstructed(newtonMetres, atFastener, spec, runDown) ? null : HoldReason.SettingNotInstructed
            : atFastener < spec.Minimum ? HoldReason.UnderRange
            : null;
    }

    /// <summary>
    /// What a number on the tool is at the fastener, in N·m: through the adapter, without the run-down torque. Through an adapter
    /// it is rounded to a thousandth of a newton metre, because its ratio comes out of measured lengths.
    /// </summary>
    public static decimal AtFastener(decimal newtonMetres, SpecificationInForce spec, EnteredTorque? runDown)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var through = spec.SettingRatio is { } ratio ? Math.Round(newtonMetres / ratio, 3) : newtonMetres;
        return Math.Max(0, through - (runDown?.NewtonMetres ?? 0));
    }

    /// <summary>The run-down torque that stands on a position: that of its newest pull with one, void pulls left out.</summary>
    public static EnteredTorque? RunDownOf(this PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Pulls.FindLast(pull => !pull.Voided && pull.Fact.RunDown is not null)?.Fact.RunDown;
    }

    /// <summary>True when the pull meets its own stage's evidence, corrections and decisions included.</summary>
    public static bool Passes(this CarState state, Pull pull)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pull);
        if (pull.Voided || state.RestsOnNothing(pull))
        {
            return false;
        }

        return pull.AcceptedBy is not null || pull.Problems.Count == 0
            || (pull.CountersignedBy is not null && pull.Problems is [HoldReason.NoRightToRecord]);
    }

    /// <summary>What is wrong with a pull, corrections included: a value restated by one person may only make it worse.</summary>
    internal static IReadOnlyList<HoldReason> ProblemsOf(Pull pull)
    {
        if (pull.Confirmed is null && pull.Unconfirmed.IsEmpty)
        {
            return pull.Fact.Problems;
        }

        var problems = pull.Confirmed is { } confirmed
            ? ProblemOf(pull, confirmed).Concat(pull.Fact.Problems.Except(ValueReasons))
            : pull.Fact.Problems;
        return [.. problems.Concat(pull.Unconfirmed.SelectMany(value => ProblemOf(pull, value))).Distinct()];
    }

    /// <summary>
    /// True where a pull was made on records that are no longer valid: the fastener is pulled all the same, and a pull on top would be a
    /// second one.
    /// </summary>
    public static bool HasFallen(this CarState state, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(book);
        return book.Cells.Any(pull => !pull.Voided && state.RestsOnNothing(pull));
    }

    // A record that it rested on, or what was said of the car's condition, was taken back.
    private static bool RestsOnNothing(this CarState state, Pull pull) =>
        pull.Fact.RestsOn.Any(state.TakenBack.Contains) || pull.Fact.Conditions?.Any(state.TakenBack.Contains) == true;

    /// <summary>The newest record of each visit of a stage, confirmed voids left out.</summary>
    public static IEnumerable<Pull> Newest(this PositionBook book, int stage)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Pulls.Where(pull => pull.Fact.Stage == stage && !pull.IsGone)
            .GroupBy(pull => pull.Fact.Visit)
            .Select(visit => visit.MaxBy(pull => pull.Number)!);
    }

    /// <summary>True where the fastener was turned by an angle, or may have been: an angle was recorded, or one was asked for.</summary>
    public static bool IsTurn(this TorqueRecorded fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return fact.Kind == TorqueKind.AngleTurned || fact.Spec.Turn is not null;
    }

    /// <summary>True when every visit of the stage has a newest record that passes. <em>Use as is</em> stands in for no stage.</summary>
    public static bool IsDone(this CarState state, PositionBook book, int stage)
    {
        var newest = book.Newest(stage).ToList();
        return newest.Count > 0 && newest.Count >= newest[0].Fact.Spec.Visits && newest.TrueForAll(state.Passes);
    }

    /// <summary>True when every stage is done, the final one too.</summary>
    public static bool IsAtTorque(this CarState state, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Last is { } last && Enumerable.Range(1, last.Fact.Spec.Stages).All(stage => state.IsDone(book, stage));
    }

    /// <summary>True when the stage needs no witness, or was witnessed. <em>Use as is</em> stands in for no witness.</summary>
    /// <param name="asked">True when the step that asks wants a witness, whatever the pull's own specification says.</param>
    public static bool IsWitnessed(this PositionBook book, int stage, bool asked = false) =>
        book.Newest(stage).All(pull => (!asked && !pull.Fact.Spec.AsksWitness) || pull.WitnessedBy is not null);

    /// <summary>Doubts of tools that stand on this position and are not decided.</summary>
    /// <remarks>A stud takes the doubts of the two nuts that drove it, also when those are long off the car.</remarks>
    public static IEnumerable<ToolDoubt> DoubtsOn(this CarState state, PositionBook book, Func<ToolId, ToolState> tool)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(tool);
        return state.ToolWorkOn(book).SelectMany(use => tool(use.Tool).DoubtsOn(use).Select(doubt => new ToolDoubt(use.Tool, doubt.Number)))
            .Distinct().Where(doubt => !book.DoubtsDecided.Contains(doubt));
    }

    /// <summary>Every use of a tool that a position stands on: its pulls, those of the nuts that drove it, its re-torque.</summary>
    public static IEnumerable<ToolWork> ToolWorkOn(this CarState state, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(book);
        foreach (var pull in book.Pulls.Where(pull => !pull.IsGone))
        {
            yield return ToolWork.Of(pull.Fact, pull.At);
            foreach (var number in pull.Fact.DrivenBy ?? [])
            {
                var driver = state.Correctables[number];
                yield return ToolWork.Of((TorqueRecorded)driver.Entry, driver.At);
            }
        }

        if (book.Settled is { } settled)
        {
            yield return new ToolWork(settled.Fact.Tool, settled.Fact.On, settled.At, settled.Fact.ToolEntry);
        }
    }

    /// <summary>Re-torque after the drive is asked, the car may have been driven, and it was not done.</summary>
    public static bool OwesReTorque(this CarState state, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.IsAtTorque(book) && !book.IsSettled && book.Last!.Fact.Spec.ReTorque is { IsAsked: true };
    }

    /// <summary>True while a joint that may have been driven waits for its re-torque.</summary>
    public static bool OwesAnyReTorque(this CarState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Positions.Values.Any(book => state.OwesReTorque(book) && state.DrivenSince(book.Last!.Number));
    }

    /// <summary>Stages done, counted from the first, and the number of stages.</summary>
    public static (int Done, int Of) StagesOf(this CarState state, PositionBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Last is not { } last)
        {
            return (0, 0);
        }

        var stages = last.Fact.Spec.Stages;
        return (Enumerable.Range(1, stages).TakeWhile(stage => state.IsDone(book, stage)).Count(), stages);
    }

    /// <summary>The state a position shows.</summary>
    public static PositionState StateOf(this CarState state, JointPosition position, Func<ToolId, ToolState> tool)
    {
        ArgumentNullException.ThrowIfNull(state);
        var book = state.Of(position);
        if (!book.Holds.IsEmpty)
        {
            return PositionState.Held;
        }

        if (state.DoubtsOn(book, tool).Any())
        {
            return PositionState.Doubted;
        }

        return book.Fitting switch
        {
            Fitting.AsFound => PositionState.AsFound,
            Fitting.Open => PositionState.Open,
            Fitting.NewHardware => PositionState.NotFitted,
            _ when !state.IsAtTorque(book) => state.StagesOf(book).Done > 0 ? PositionState.Staged : PositionState.HandTight,
            _ when book.IsSettled => PositionState.Settled,
            _ when state.OwesReTorque(book) && state.DrivenSince(book.Last!.Number) => PositionState.Due,
            _ when book.Last is { WitnessedBy: not null } => PositionState.Checked,
            _ => PositionState.AtTorque,
        };
    }

    /// <summary>The state of a joint: that of its worst position.</summary>
    public static PositionState StateOf(this CarState state, Joint joint, int positions, Func<ToolId, ToolState> tool) =>
        Enumerable.Range(1, positions).Min(number => state.StateOf(joint.At(number), tool));

    private static IEnumerable<HoldReason> ProblemOf(Pull pull, EnteredTorque value) =>
        ValueProblem(pull.Fact.Kind, value.NewtonMetres, pull.Fact.Spec, pull.Fact.RunDown) is { } problem ? [problem] : [];

    // The graduation is the tool's, so the setting is compared on the tool; everything else at the fastener.
    private static bool IsInstructed(decimal newtonMetres, decimal atFastener, SpecificationInForce spec, EnteredTorque? runDown) =>
        atFastener >= spec.Minimum
        && Math.Abs(newtonMetres - ((spec.Instructed + (runDown?.NewtonMetres ?? 0)) * (spec.SettingRatio ?? 1))) <= spec.HalfGraduation
        && (spec.SettingLimit is not { } limit || atFastener <= limit);
}
