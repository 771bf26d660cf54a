using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How openings change the state, and what undoes an opening that was never done.
public sealed partial record CarState
{
    private CarState WithOpened(Recorded recorded, Opened fact)
    {
        var next = fact.Job is { } job ? Begin(job) : this;
        var fallen = Fallen.ToBuilder();
        var opened = fact.Positions.Except(fact.Late ?? []).Concat(fact.AlsoOpened).ToList();
        var before = opened.Select(Of).ToList();
        next = next.Put(opened, book =>
        {
            foreach (var number in RecordsOf(book).Where(number => number > 0))
            {
                fallen[number] = recorded.Number;
            }

            return OpenOne(recorded, book, fact.Job);
        });
        next = next with { Fallen = fallen.ToImmutable() };
        next = next.Undo(recorded.Number, fact.Undid).Remember(recorded);
        next = next with { Openings = next.Openings.Add(recorded.Number, OpeningBook.Of(this, next, recorded.Number, before, fact)) };
        next = fact.Late is { Count: > 0 } late
            ? next.WithHolds(late, new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.CellMoved))
            : next;
        return opened.Count > 0 ? next.EndReleases(recorded.Number, opening: true) : next;
    }

    private static IEnumerable<long> RecordsOf(PositionBook book)
    {
        foreach (var pull in book.Pulls)
        {
            yield return pull.Number;
            foreach (var look in pull.Looks)
            {
                yield return look.Number;
            }
        }

        yield return book.HandTightBy;
        yield return book.SettledBy;
    }

    // Opening what is open and bare starts no new cycle.
    private static PositionBook OpenOne(Recorded recorded, PositionBook book, JobId? job) => book.IsBare
        ? book with { NamedBy = recorded.Number, InForce = job ?? book.InForce, InForceBy = job is null ? book.InForceBy : recorded.Number, Holds = book.Holds.RemoveAll(hold => hold.Decision is not null) }
        : book with
        {
            Cycle = book.Cycle + 1,
            Fitting = Fitting.Open,
            TouchedBefore = Math.Max(book.OpenedBy, book.On),
            OpenedBy = recorded.Number,
            NamedBy = recorded.Number,
            Since = recorded.At,
            SinceEntry = recorded.Entry,
            HandTightBy = 0,
            DeclaredBy = 0,
            On = 0,
            SettledBy = 0,
            Settled = null,
            NewHardwareSince = book.ReplaceFor ?? book.NewHardwareSince,
            InForce = job ?? book.InForce,
            InForceBy = job is null ? book.InForceBy : recorded.Number,
            Pulls = [],
            Holds = book.Holds.RemoveAll(hold => hold.Decision is not null),
            DoubtsDecided = [],
            Workers = [],
        };

    private CarState Undo(long by, IReadOnlyList<Undone> undone)
    {
        var next = this;
        foreach (var (kind, name) in undone)
        {
            var key = new Undone(kind, name).ToString();
            next = next with { Undone = next.Undone.SetItem(key, by) };
            if (next.Results.TryGetValue(key, out var result) && result.VoidBy == 0)
            {
                next = (next with { Results = next.Results.SetItem(key, result with { VoidBy = by }) }).Fell(by, result.Number);
            }
        }

        return next;
    }

    // As if it had never been written, but that a release which it ended is suspended: the lead looks before it is valid again.
    private CarState NeverOpened(long by, long number)
    {
        var opening = Openings[number];
        var next = this with
        {
            Positions = Positions.SetItems(opening.Before.Select(book => KeyValuePair.Create(book.Position, book))),
            Fallen = opening.Fell.Where(fell => Fallen.GetValueOrDefault(fell.Key) == number)
                .Aggregate(Fallen, (fallen, fell) => fell.Value == 0 ? fallen.Remove(fell.Key) : fallen.SetItem(fell.Key, fell.Value)),
            Undone = opening.Undid.Where(undone => Undone.GetValueOrDefault(undone.Key) == number)
                .Aggregate(Undone, (undone, was) => was.Value == 0 ? undone.Remove(was.Key) : undone.SetItem(was.Key, was.Value)),
            Openings = Openings.ToImmutableDictionary(other => other.Key, other => other.Value.Without(number, opening)),
        };
        foreach (var (name, result) in Results.Where(result => result.Value.VoidBy == number))
        {
            // Another opening since may have undone it too.
            var undoneBy = next.Undone.GetValueOrDefault(name) is var other && other > result.Number ? other : 0;
            next = next with { Results = next.Results.SetItem(name, result with { VoidBy = undoneBy }) };
            next = undoneBy > 0 ? next.Fell(undoneBy, result.Number)
                : next.Fallen.GetValueOrDefault(result.Number) == number ? next with { Fallen = next.Fallen.Remove(result.Number) }
                : next;
        }

        foreach (var release in Releases.Values.Where(release => release.Openings.Contains(number)).ToList())
        {
            var left = release.Openings.Remove(number);
            next = next.Replace(
                release.Number,
                ended => ended.IsOver
                    ? ended with { Openings = left }
                    : ended with { Openings = left, VoidBy = left.FirstOrDefault(), SuspendedBy = left.IsEmpty ? by : ended.SuspendedBy },
                by);
        }

        return next with { Summaries = next.Superseded(by) };
    }
}
