using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Brakes behind a wheel: such a joint is worked while the one before it is off, and that one goes on once all behind it is as found
/// or finished.
/// </summary>
public static class Reach
{
    /// <summary>What is still on before a position; null when it can be reached, or the register lets nothing stand before it.</summary>
    public static HoldPoint? Barred(CarState state, Circumstances now, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return now.Register.Before(position).Select(state.Of).FirstOrDefault(book => !book.IsBare) is { } on
            ? new HoldPoint(HoldReason.StillOn) { Position = position, Because = new HoldPoint(HoldReason.StillOn) { Position = on.Position } }
            : null;
    }

    /// <summary>Why what is behind a position is not finished; null when it is, or was not touched, or nothing is behind it.</summary>
    public static HoldPoint? Unfinished(CarState state, Circumstances now, JointPosition position) =>
        Behind(state, now, position).SelectMany(book =>
            PositionRules.All.SelectMany(rule => rule.Find(new PositionQuestion(state, now, book, null, null, null)))).FirstOrDefault();

    /// <summary>The first position behind this one that is loose: open, run down by hand, or on its way to its torque.</summary>
    public static HoldPoint? Loose(CarState state, Circumstances now, JointPosition position) =>
        Behind(state, now, position).FirstOrDefault(book => !state.IsAtTorque(book)) is { } loose
            ? PositionRules.All.SelectMany(rule => rule.Find(new PositionQuestion(state, now, loose, null, null, null))).First()
            : null;

    private static IEnumerable<PositionBook> Behind(CarState state, Circumstances now, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return now.Register.Behind(position).Select(state.Of).Where(book => book is not { IsAsFound: true, Holds.IsEmpty: true });
    }
}
