using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a decision on a position is about.</summary>
public static class Deciding
{
    /// <summary>Numbers of the entries that hold it undecided, and of pulls that another job's step does not take; lowest first.</summary>
    public static IReadOnlyList<long> About(CarState state, Circumstances now, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        var book = state.Of(position);
        var foreign = OtherSpecifications.OfRunningJobs(state, now, book).Select(pull => pull.Number);
        return [.. book.Holds.Where(hold => hold.Decision is null).Select(hold => hold.Number).Union(foreign).Order()];
    }
}
