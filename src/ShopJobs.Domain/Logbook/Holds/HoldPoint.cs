using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// One reason why something waits or is refused, as data: the reason, where it is, and what its words need to name.
/// <see cref="HoldWords"/> says it to people.
/// </summary>
public sealed record HoldPoint(HoldReason Reason)
{
    /// <summary>The job it belongs to, if any.</summary>
    public JobId? Job { get; init; }

    /// <summary>The step instance that waits, if any.</summary>
    public string? Step { get; init; }

    /// <summary>The fastener, if it is about one.</summary>
    public JointPosition? Position { get; init; }

    /// <summary>The joint: the fastener's, or one that it is about as a whole.</summary>
    public Joint? Joint
    {
        get => field ?? Position?.Joint ?? (Misfit is { Place: { } place } misfit ? new Joint(misfit.Key, place) : null);
        init;
    }

    /// <summary>What is behind it: why a fastener that is waited for does not count, what was held for.</summary>
    public HoldPoint? Because { get; init; }

    /// <summary>What it is about, by its own name: a tick's text, a result, a group.</summary>
    public string? Name { get; init; }

    /// <summary>What may be chosen instead.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>The step whose sign-off is not valid.</summary>
    public UnsignedStep? Unsigned { get; init; }

    /// <summary>How far the fastener has come.</summary>
    public StageReached? Reached { get; init; }

    /// <summary>What was decided about it.</summary>
    public Disposition? Decision { get; init; }

    /// <summary>What another job did to the fastener, beside what is asked here.</summary>
    public TorquedOtherwise? Otherwise { get; init; }

    /// <summary>The value asked for.</summary>
    public Measure? Measure { get; init; }

    /// <summary>The value given for it.</summary>
    public MeasuredValue? Value { get; init; }

    /// <summary>How long it has to wait, in hours.</summary>
    public decimal? Hours { get; init; }

    /// <summary>When the wait is over (UTC); null while it has not begun.</summary>
    public DateTime? Until { get; init; }

    /// <summary>Nobody knows when the wait is over before the lead has signed the time.</summary>
    public bool ClockInDoubt { get; init; }

    /// <summary>The day it is about.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>The tool; null where it is not known.</summary>
    public TorqueTool? Tool { get; init; }

    /// <summary>The right that is missing.</summary>
    public Right? Right { get; init; }

    /// <summary>What happened to it since it was shown.</summary>
    public Change? About { get; init; }

    /// <summary>Where a procedure's visits are not the car's positions.</summary>
    public Misfit? Misfit { get; init; }

    /// <summary>A distance, in kilometres.</summary>
    public decimal? Km { get; init; }

    /// <summary>It only says where a fastener stands that is held and not decided.</summary>
    public bool IsUndecided => this is { Reason: HoldReason.NotAtStage, Reached.Undecided: true };

    /// <summary>The entry it is about.</summary>
    public long? Entry { get; init; }

    /// <summary>Who did it.</summary>
    public PersonId? By { get; init; }

    /// <summary>When that was recorded (UTC).</summary>
    public DateTime? At { get; init; }
}

/// <summary>What happened to a fastener after somebody was shown it.</summary>
public enum Change
{
    Opened,
    Pulled,
    Held,
    Looked,
    Corrected,
}

/// <summary>A step whose sign-off is missing or no longer valid.</summary>
public sealed record UnsignedStep(StepInstance Step, StepStanding Standing)
{
    /// <summary>Its work is done, and only the signature is missing.</summary>
    public bool Finished { get; init; }
}

/// <summary>How far a fastener has come on its way to torque.</summary>
/// <param name="Done">Stages that count.</param>
/// <param name="Of">Stages there are.</param>
/// <param name="NextTurned">The next stage is turned by an angle.</param>
/// <param name="Undecided">It is held and nobody has decided.</param>
public sealed record StageReached(Fitting Fitting, int Done, int Of, bool NextTurned, bool Undecided)
{
    /// <summary>The next stage was pulled by a trainee, and nobody who stood by has countersigned it.</summary>
    public bool Awaited { get; init; }

    /// <summary>Who declared from paper that it was pulled, where that is so and nothing was done about it; null otherwise.</summary>
    public PersonId? Declared { get; init; }
}

/// <summary>A torque of another job's specification beside what is asked here.</summary>
/// <param name="Procedure">The other job's procedure by its code.</param>
/// <param name="Amount">What was reached there.</param>
/// <param name="Condition">Condition of the threads there.</param>
/// <param name="Asked">What is permitted here.</param>
/// <param name="AskedCondition">Condition of the threads asked here.</param>
public sealed record TorquedOtherwise(
    string Procedure, string Amount, ThreadCondition Condition, string Asked, ThreadCondition AskedCondition);
