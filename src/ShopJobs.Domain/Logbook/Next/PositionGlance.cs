using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One position as seen in passing.</summary>
/// <param name="AwaitsWitness">A stage is done that asks for a witness, and nobody has looked.</param>
/// <param name="Since">When it came to be so; null where no entry names it.</param>
public readonly record struct PositionGlance(JointPosition Position, PositionState State, bool AwaitsWitness, DateTime? Since)
{
    /// <summary>What it is counted as: every position is counted once.</summary>
    public GlanceCount CountedAs => State switch
    {
        PositionState.Held => GlanceCount.Held,
        PositionState.Doubted => GlanceCount.Doubted,
        PositionState.Open => GlanceCount.Open,
        PositionState.NotFitted => GlanceCount.NotFitted,
        PositionState.AsFound => GlanceCount.AsFound,
        PositionState.Due => GlanceCount.Due,
        _ when AwaitsWitness => GlanceCount.ToWitness,
        PositionState.HandTight => GlanceCount.HandTight,
        PositionState.Staged => GlanceCount.Staged,
        _ => GlanceCount.AtTorque,
    };
}

/// <summary>The counts of a car's fasteners, worst first.</summary>
public enum GlanceCount
{
    Held,
    Doubted,
    Open,
    NotFitted,
    HandTight,
    Staged,

    /// <summary>A done stage waits for a second person.</summary>
    ToWitness,

    /// <summary>Its re-torque after the drive is due.</summary>
    Due,

    /// <summary>At torque, witnessed where asked; settled too.</summary>
    AtTorque,

    AsFound,
}

/// <summary>Looks over every position of a car.</summary>
public static class PositionGlances
{
    /// <summary>Every lasting position of the car, and temporary hardware that is held.</summary>
    public static IReadOnlyList<PositionGlance> Glances(this CarState state, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return
        [
            .. ReleaseRules.PositionsOf(state, now)
                .Union(state.Positions.Values.Where(book => !book.Holds.IsEmpty).Select(book => book.Position))
                .Select(position => GlanceAt(state, now, position)),
        ];
    }

    private static PositionGlance GlanceAt(CarState state, Circumstances now, JointPosition position)
    {
        if (!state.Positions.TryGetValue(position, out var book))
        {
            return new PositionGlance(position, PositionState.AsFound, false, null);
        }

        var shown = state.StateOf(position, now.Tool);
        var since = shown switch
        {
            PositionState.Held => book.Holds.Min(hold => hold.At),
            PositionState.Open or PositionState.NotFitted or PositionState.HandTight => book.Since,
            _ => book.Last?.At ?? book.Since,
        };
        return new PositionGlance(position, shown, AwaitsWitness(state, book), since);
    }

    private static bool AwaitsWitness(CarState state, PositionBook book) =>
        book.Last is { } last
        && book.Holds.IsEmpty
        && Enumerable.Range(1, last.Fact.Spec.Stages).Any(stage => !book.IsWitnessed(stage) && state.IsDone(book, stage));
}
