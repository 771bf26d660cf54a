using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How the work on joints changes the state.
public sealed partial record CarState
{
    private CarState WithConditions(Recorded recorded, CarConditionDeclared fact)
    {
        var said = from condition in fact.Conditions
                   from place in fact.Places is { Count: > 0 } places ? places : [null!]
                   select new DeclaredCondition(condition.Aspect, condition.Value, place, recorded.Number, recorded.At, recorded.Person, fact);
        return Remember(recorded) with { Conditions = Conditions.SetItems(said.Select(one => KeyValuePair.Create((one.Place, one.Aspect), one))) };
    }

    private CarState WithResult(Recorded recorded, ResultRecorded fact)
    {
        var next = Remember(recorded);
        var book = new ResultBook(recorded.Number, recorded.At, recorded.Person, fact);
        if (fact.Problems is { Count: > 0 })
        {
            // It says that the car is not as it should be: the one before is no longer valid.
            var before = next.Results.TryGetValue(fact.Name, out var standing) && standing.VoidBy == 0 ? [standing.Number] : Array.Empty<long>();
            next = (next with
            {
                Results = next.Results.SetItem(fact.Name, book with { VoidBy = recorded.Number }),
                Undone = next.Undone.SetItem(fact.Name, recorded.Number),
            }).Fell(recorded.Number, before);
            return next.Undo(recorded.Number, fact.Undid).SuspendReleases(recorded.Number);
        }

        next = next with
        {
            Results = next.Results.SetItem(fact.Name, book),
            Undone = next.Undone.Remove(fact.Name),
        };
        return fact.Undid.Count == 0 ? next : next.Undo(recorded.Number, fact.Undid).SuspendReleases(recorded.Number);
    }

    private CarState WithFitted(Recorded recorded, FittedNew fact) => Begin(fact.Job).Remember(recorded).Put(fact.Positions, book =>
        fact.Problems is { Count: > 0 }
            ? book with { Workers = book.Workers.Add(recorded.Person) }
            : book with
            {
                Fitting = Fitting.NewHardware,
                HandTightBy = 0,
                On = recorded.Number,
                FittedNewBy = recorded.Number,
                Lot = fact.Lot,
                InForce = fact.Job,
                InForceBy = recorded.Number,
                Workers = book.Workers.Add(recorded.Person),
            }).WitnessesWhoWorked(recorded.Number, fact.Positions, [recorded.Person]) with
    {
        Fittings = fact.Problems is { Count: > 0 } ? Fittings : Fittings.Add(recorded.Number, [.. fact.Positions.Distinct().Select(Of)]),
    };

    private CarState WithHandTight(Recorded recorded, HandTightened fact)
    {
        var next = Begin(fact.Job).Remember(recorded).Put(fact.Positions, book =>
        {
            var workers = book.Workers.Add(recorded.Person).Union(fact.Helpers);
            return fact.Problems.Contains(HoldReason.CellMoved)
                ? book with { Workers = workers }
                : fact.Problems.Count > 0
                ? book with { Workers = workers, On = recorded.Number }
                : book with
                {
                    Fitting = Fitting.HandTight,
                    HandTightBy = recorded.Number,
                    On = recorded.Number,
                    Since = recorded.At,
                    SinceEntry = recorded.Entry,
                    InForce = fact.Job,
                    InForceBy = recorded.Number,
                    Workers = workers,
                };
        });

        next = next.WitnessesWhoWorked(recorded.Number, fact.Positions, [recorded.Person, .. fact.Helpers]);

        // Run down on a position that nobody opened: it is neither as found nor at torque, whatever the book said before.
        return fact.Problems.Contains(HoldReason.NotOpened)
            ? next.WithHolds(fact.Positions, new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.NotOpened))
            : next;
    }

    /// <summary>Newest word by joint on work that was left half done.</summary>
    public ImmutableDictionary<Joint, JointStop> Stops { get; init; } = ImmutableDictionary<Joint, JointStop>.Empty;

    private CarState WithStop(Recorded recorded, Joint joint, long last, ContentDigest? words, bool takenOver) =>
        this with { Stops = Stops.SetItem(joint, new JointStop(recorded.Number, recorded.At, recorded.Person, last, takenOver, words)) };

    private CarState WithTorque(Recorded recorded, TorqueRecorded fact)
    {
        var next = Begin(fact.Job).Remember(recorded);
        var book = next.Of(fact.Position);
        var pull = new Pull(recorded.Number, recorded.At, recorded.Person, fact);
        var workers = book.Workers.Add(recorded.Person).Union(fact.Helpers.Concat(next.WorkersOf(fact.DrivenBy ?? [])));
        next = next.Put(book with
        {
            Fitting = fact.Problems.Count == 0 ? Fitting.HandTight : book.Fitting,
            On = recorded.Number,
            InForce = book.InForce ?? fact.Job,
            InForceBy = book.InForce is null ? recorded.Number : book.InForceBy,
            // A decision to use a pull as it is ends with the next pull.
            Pulls = (book.Pulls.Exists(earlier => earlier.AcceptedBy is not null)
                ? [.. book.Pulls.Select(earlier => earlier with { AcceptedBy = null })]
                : book.Pulls).Add(pull),
            Holds = pull.HoldReason is { } reason
                ? book.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, reason) { Workers = workers })
                : book.Holds,
            Workers = workers,
        });
        next = next.WitnessesWhoWorked(
            recorded.Number, [fact.Position], [recorded.Person, .. fact.Helpers, .. next.WorkersOf(fact.DrivenBy ?? [])]);
        return next.HoldRidden(pull, recorded).EndReleases(recorded.Number, opening: false);
    }

    // Over the permitted maximum holds what the position rides on too: the stud was stretched as far as the nut.
    private CarState HoldRidden(Pull pull, Recorded recorded) =>
        pull.Fact.RidesOn is { } ridden && pull.HoldReason is not null && pull.ReachesWhatItRidesOn
            && !Of(ridden).Holds.Exists(hold => hold.Number == pull.Number)
            ? WithHolds([ridden], new Hold(pull.Number, recorded.At, pull.Person, HoldReason.OverRange))
            : this;

    private IEnumerable<PersonId> WorkersOf(IEnumerable<long> pulls) =>
        pulls.Select(number => Correctables.TryGetValue(number, out var pull) ? pull : null).OfType<Correctable>()
            .SelectMany(pull => ((TorqueRecorded)pull.Entry).Helpers.Append(pull.Person));

    // Nobody is witness of a joint that he works on, before or after he looked: his look falls.
    private CarState WitnessesWhoWorked(long by, IReadOnlyList<JointPosition> positions, IReadOnlyList<PersonId> workers)
    {
        var next = this;
        foreach (var joint in positions.Select(position => position.Joint).Distinct().Where(LookedAt.Contains))
        {
            foreach (var book in next.Positions.Values.Where(book => book.Position.Joint == joint && book.Pulls.Exists(Looked)).ToList())
            {
                var fell = book.Pulls.SelectMany(pull => pull.Looks).Where(IsOfAWorker).Select(look => look.Number).ToList();
                next = next.Put(book with { Pulls = [.. book.Pulls.Select(Unseen)] });
                next = fell.Count > 0 ? next.Fell(by, fell).RunAgain(by).SuspendReleases(by) : next;
            }
        }

        return next;

        bool IsOfAWorker(Look look) => workers.Contains(look.Person);

        bool Looked(Pull pull) => pull.Looks.Exists(IsOfAWorker) || pull.LooksBefore.Exists(IsOfAWorker);

        // A look that fell by a correction does not come back to somebody who has worked there since.
        Pull Unseen(Pull pull) => Looked(pull)
            ? pull with { Looks = pull.Looks.RemoveAll(IsOfAWorker), LooksBefore = pull.LooksBefore.RemoveAll(IsOfAWorker) }
            : pull;
    }

    private CarState WithSettled(Recorded recorded, Settled fact)
    {
        var next = Remember(recorded).Read(fact.OdometerKm).Put(fact.Positions, book => book with { NamedBy = recorded.Number }).Put(fact.Positions, book => fact.Problems.Count == 0
            ? book with { SettledBy = recorded.Number, Settled = new SettledRecord(recorded.At, fact) }
            : fact.Problems is [HoldReason.ReTorqueEarly] ? book
            : book with { Holds = book.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, fact.Problems[0]) { Workers = book.Workers }) });
        return fact.Problems is [] or [HoldReason.ReTorqueEarly]
            ? next with { Summaries = next.Superseded(recorded.Number) }
            : next.SuspendReleases(recorded.Number);
    }

    private CarState WithHolds(IReadOnlyList<JointPosition> positions, Hold hold) => Put(positions, book => book with
    {
        Holds = book.Holds.Add(hold with { Workers = book.Workers }),
        Workers = book.Workers.Add(hold.By),
    }).WitnessesWhoWorked(hold.Number, positions, [hold.By]).SuspendReleases(hold.Number);
}
