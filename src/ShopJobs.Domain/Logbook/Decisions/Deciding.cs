using ShopJobs.Domain.Fasteners;
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

    /// <summary>True while anything on the position waits for a decision.</summary>
    public static bool IsAsked(CarState state, Circumstances now, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        return About(state, now, position).Count > 0 || state.DoubtsOn(state.Of(position), now.Tool).Any();
    }

    /// <summary>
    /// Numbers of what a hold on a step, result or lot is about: the hold, the sign-off or result, and the pulls of what the lot was fitted
    /// to; lowest first.
    /// </summary>
    public static IReadOnlyList<long> About(CarState state, WorkHold hold)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(hold);
        IEnumerable<long> about = hold.Fact switch
        {
            { Job: { } job, Step: { } step } => [SignOffOf(state, job, step)?.Number ?? 0],
            { Result: { } result } => [result],
            { Lot: { } lot } => state.FittedFrom(lot).SelectMany(book => new[] { book.FittedNewBy, book.Last?.Number ?? 0 }),
            _ => [],
        };
        return [.. about.Append(hold.Number).Where(number => number > 0).Distinct().Order()];
    }

    /// <summary>Whoever pressed HOLD, signed the step, recorded the result or worked on what the lot was fitted to: none of them decides it.</summary>
    public static IEnumerable<PersonId> DoersOf(CarState state, WorkHold hold)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(hold);
        IEnumerable<PersonId?> doers = hold.Fact switch
        {
            { Job: { } job, Step: { } step } => [SignOffOf(state, job, step)?.Person],
            { Result: { } result } => [state.Correctables[result].Person],
            { Lot: { } lot } => state.FittedFrom(lot).SelectMany(book => book.Workers
                .Union(book.Holds.Where(one => one.Number == hold.Number).SelectMany(one => one.Workers))).Select(person => (PersonId?)person),
            _ => [],
        };
        return doers.OfType<PersonId>().Append(hold.By);
    }

    /// <summary>The gravest class of what the lot was fitted to or was in hand for; class A where nobody knows.</summary>
    internal static RiskClass RiskOf(CarState state, Circumstances now, WorkHeld fact, string lot) =>
        state.FittedFrom(lot).Select(book => Opening.GroupOn(state, now, book.Position)?.Group)
            .Append(fact is { Job: { } job, Group: { } group } && state.Jobs.TryGetValue(job, out var book) ? GroupOf(now, book, group) : null)
            .OfType<JointGroup>().Select(group => group.Risk).DefaultIfEmpty(RiskClass.A).Min();

    internal static HoldPoint DecidedBefore(DecisionMade made) => new(HoldReason.DecidedBefore)
    {
        By = made.By,
        At = made.At,
        Decision = made.Disposition,
        Entry = made.Number,
    };

    private static JointGroup? GroupOf(Circumstances now, JobBook job, string group) =>
        now.Placed(job).Groups.Select(instance => instance.Group).FirstOrDefault(one => one.Id == group);

    private static SignOff? SignOffOf(CarState state, JobId job, string step) =>
        state.Jobs.TryGetValue(job, out var book) ? book.SignOffs.GetValueOrDefault(step) : null;
}
