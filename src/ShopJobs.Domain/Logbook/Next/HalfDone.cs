using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// A joint that is begun and not at torque. After a break, or where somebody else goes on, its last item is looked at again: work that was
/// interrupted is where a fastener is left out (FAA, Operator's Manual: Human Factors in Aviation Maintenance, shift and task turnover).
/// </summary>
/// <param name="Last">The newest thing that was done on it.</param>
/// <param name="Left">Who said that it is left half done, since then; null where nobody did.</param>
public sealed record HalfDone(GroupInstance Instance, Correctable Last, long Number, JointStop? Left)
{
    /// <summary>A break after which the last item is looked at again (common practice, no source).</summary>
    public static readonly TimeSpan Break = TimeSpan.FromMinutes(30);

    /// <summary>The joint's work as far as it has come; null where it is not begun, or done.</summary>
    public static HalfDone? Of(CarState state, GroupInstance instance)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(instance);
        var books = instance.Positions.Select(state.Of).ToList();
        if (instance.Group.Temporary || !books.Exists(book => book.Fitting == Fitting.HandTight) || books.TrueForAll(book => state.IsDone(book, instance.Group.Stages.Count)))
        {
            return null;
        }

        var last = books.SelectMany(book => book.Pulls.Select(pull => pull.Number).Append(book.NamedBy))
            .Where(number => state.Correctables.TryGetValue(number, out var done) && done.Entry is HandTightened or TorqueRecorded).DefaultIfEmpty().Max();
        return !state.Correctables.TryGetValue(last, out var newest) ? null
            : new HalfDone(instance, newest, last, state.Stops.GetValueOrDefault(instance.Joint) is { } stop && stop.Last == last ? stop : null);
    }

    /// <summary>True where this person looks at the last item first: somebody else did it, or it was done before a break, or was left.</summary>
    public bool IsAsked(PersonId person, DateTime at) => Left is { TakenOver: true } taken
        ? taken.Person != person || at - taken.At > Break
        : Last.Person != person || at - Last.At > Break || Left is not null;
}

/// <summary>What was said of a joint that was left half done.</summary>
/// <param name="Last">The newest entry of its work then.</param>
/// <param name="TakenOver">True where somebody goes on; false where somebody left it.</param>
public sealed record JointStop(long Number, DateTime At, PersonId Person, long Last, bool TakenOver, ContentDigest? Words);
