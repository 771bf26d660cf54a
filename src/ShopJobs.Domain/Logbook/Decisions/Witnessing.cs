using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a witness looks at.</summary>
public static class Witnessing
{
    /// <summary>The newest records of the stage that pass and that nobody has looked at yet.</summary>
    public static IReadOnlyList<Pull> Awaiting(CarState state, IEnumerable<PositionBook> books, int stage)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. books.SelectMany(book => book.Newest(stage)).Where(pull => state.Passes(pull) && pull.WitnessedBy is null)];
    }

    /// <summary>Those that a witness's command is about; empty where its job has no such group.</summary>
    public static IReadOnlyList<Pull> Awaiting(CarState state, Circumstances now, Witness witness)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(witness);
        return state.Jobs.TryGetValue(witness.Job, out var job) && now.Placed(job).Group(witness.Group, witness.Place) is { } instance
            ? Awaiting(state, instance.Positions.Select(state.Of), witness.Stage)
            : [];
    }
}
