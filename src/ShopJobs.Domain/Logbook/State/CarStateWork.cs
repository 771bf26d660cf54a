using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How the work on joints changes the state.
public sealed partial record CarState
{
    private CarState WithOpened(Recorded recorded, Opened fact)
    {
        var next = fact.Job is { } job ? Begin(job) : this;
        var fallen = Fallen.ToBuilder();
        next = next.Put(fact.Positions.Concat(fact.AlsoOpened), book =>
        {
            foreach (var number in RecordsOf(book).Where(number => number > 0))
            {
                fallen[number] = recorded.Number;
            }

            return OpenOne(recorded, book, fact.Job);
        });
        next = next with { Fallen = fallen.ToImmutable() };
        next = next.Undo(recorded.Number, fact.Undid);
        return next.EndReleases(recorded.Number);
    }

    private static IEnumerable<long> RecordsOf(PositionBook book)
    {
        foreach (var pull in book.Pulls)
        {
            yield return pull.Number;
            yield return pull.WitnessedBy ?? 0;
        }

        yield return book.HandTightBy;
        yield return book.SettledBy;
    }

    private static PositionBook OpenOne(Recorded recorded, PositionBook book, JobId? job) => book with
    {
        Cycle = book.Cycle + 1,
        Fitting = Fitting.Open,
        OpenedBy = recorded.Number,
        Since = recorded.At,
        HandTightBy = 0,
        On = 0,
        SettledBy = 0,
        Settled = null,
        NewHardwareSince = book.ReplaceFor ?? book.NewHardwareSince,
        InForce = job ?? book.InForce,
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

    private CarState WithResult(Recorded recorded, ResultRecorded fact)
    {
        var next = Remember(recorded);
        next = next with
        {
            Results = next.Results.SetItem(fact.Name, new ResultBook(recorded.Number, recorded.At, recorded.Person, fact)),
            Undone = next.Undone.Remove(fact.Name),
        };
        return fact.Undid.Count == 0 ? next : next.Undo(recorded.Number, fact.Undid).EndReleases(recorded.Number);
    }

    private CarState WithFitted(Recorded recorded, FittedNew fact) => Begin(fact.Job).Put(fact.Positions, book => book with
    {
        Fitting = Fitting.NewHardware,
        HandTightBy = 0,
        On = recorded.Number,
        FittedNewBy = recorded.Number,
        InForce = fact.Job,
        Workers = book.Workers.Add(recorded.Person),
    });

    private CarState WithHandTight(Recorded recorded, HandTightened fact)
    {
        var next = Begin(fact.Job).Remember(recorded).Put(fact.Positions, book =>
        {
            var workers = book.Workers.Add(recorded.Person).Union(fact.Helpers);
            return fact.Problems.Count > 0
                ? book with { Workers = workers, On = recorded.Number }
                : book with
                {
                    Fitting = Fitting.HandTight,
                    HandTightBy = recorded.Number,
                    On = recorded.Number,
                    Since = recorded.At,
                    InForce = fact.Job,
                    Workers = workers,
                };
        });

        // Run down on a position that nobody opened: it is neither as found nor at torque, whatever the book said before.
        return fact.Problems.Contains(HoldReason.NotOpened)
            ? next.WithHolds(fact.Positions, new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.NotOpened))
            : next;
    }

    private CarState WithTorque(Recorded recorded, TorqueRecorded fact)
    {
        var next = Begin(fact.Job).Remember(recorded);
        var book = next.Of(fact.Position);
        var pull = new Pull(recorded.Number, recorded.At, recorded.Person, fact);
        var workers = book.Workers.Add(recorded.Person).Union(fact.Helpers);
        next = next.Put(book with
        {
            Fitting = fact.Problems.Count == 0 ? Fitting.HandTight : book.Fitting,
            On = recorded.Number,
            InForce = book.InForce ?? fact.Job,
            Pulls = book.Pulls.Add(pull),
            Holds = pull.HoldReason is { } reason
                ? book.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, reason) { Workers = workers })
                : book.Holds,
            Workers = workers,
        });
        return pull.HoldReason is null ? next : next.EndReleases(recorded.Number);
    }

    private CarState WithSettled(Recorded recorded, Settled fact)
    {
        var next = Remember(recorded).Put(fact.Positions, book => fact.Problems.Count == 0
            ? book with { SettledBy = recorded.Number, Settled = new SettledRecord(recorded.At, fact), Workers = book.Workers.Add(recorded.Person) }
            : book with { Holds = book.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, fact.Problems[0]) { Workers = book.Workers }) });
        return fact.Problems.Count == 0 ? next with { Summaries = next.Superseded(recorded.Number) } : next.EndReleases(recorded.Number);
    }

    private CarState WithHolds(IReadOnlyList<JointPosition> positions, Hold hold) => Put(positions, book => book with
    {
        Holds = book.Holds.Add(hold with { Workers = book.Workers }),
        Workers = book.Workers.Add(hold.By),
    }).EndReleases(hold.Number);
}
