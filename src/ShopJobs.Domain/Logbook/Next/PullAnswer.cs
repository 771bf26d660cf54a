using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a pull tells whoever made it, apart enough to be heard without looking.</summary>
public enum PullSign
{
    /// <summary>It counts, and the next fastener of the same round is next.</summary>
    InRange,

    /// <summary>It counts, and its round is done: something else is next.</summary>
    GoOn,

    /// <summary>It does not count yet, and nobody need decide: the screen says what to do.</summary>
    Look,

    /// <summary>It holds its fastener.</summary>
    Held,
}

/// <summary>The answer to a pull that is recorded: how it came out, and what is next.</summary>
/// <param name="Next">What is to be done after it.</param>
public sealed record PullAnswer(Pull Pull, NextAction Next)
{
    /// <summary>The answer to the newest pull that this person made on a step; null where there is none that stands.</summary>
    public static PullAnswer? Newest(CarState state, StepInstance step, PersonId person, NextAction next)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(step);
        var pull = (
            from work in step.Work
            from position in work.Instance.Positions
            let last = state.Of(position).Last
            where last is { Voided: false } && last.Person == person && last.Fact.Group == work.Instance.Group.Id && work.Stages.Contains(last.Fact.Stage)
            select last).MaxBy(last => last.Number);
        return pull is null ? null : new PullAnswer(pull, next);
    }

    /// <summary>How it is told.</summary>
    public PullSign Sign => Pull.Outcome switch
    {
        PullOutcome.Held => PullSign.Held,
        PullOutcome.Counts => Following is null ? PullSign.GoOn : PullSign.InRange,
        _ => PullSign.Look,
    };

    /// <summary>The fastener that is next in the same round; null where something else is next.</summary>
    public JointPosition? Following => Next is NextAction.PullNow { Cell: var cell }
        && cell.Instance.Group.Id == Pull.Fact.Group && cell.Position.Joint == Pull.Fact.Position.Joint && cell.Stage.Number == Pull.Fact.Stage
        ? cell.Position
        : null;
}
