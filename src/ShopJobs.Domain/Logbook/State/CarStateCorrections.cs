using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How corrections and their confirmations change the state.
public sealed partial record CarState
{
    private CarState WithCorrection(Recorded recorded, Corrected fact)
    {
        var target = Correctables[fact.Target].Entry;
        var next = this with
        {
            Corrections = Corrections.Add(recorded.Number, new CorrectionBook(recorded.Number, recorded.Person, fact, 0)),
        };
        if (target is PhotoTaken)
        {
            return next.WithoutPhoto(fact.Target);
        }

        if (fact.Restated is null && target is not Opened)
        {
            next = next.TakeBack(recorded.Number, fact.Target);
        }

        next = target switch
        {
            TorqueRecorded => next.Recorrect(recorded, fact.Target, pull => pull with
            {
                Voided = fact.Restated is null || pull.Voided,
                WasPulled = fact.Restated is null ? fact.WasPulled : pull.WasPulled,
                Unconfirmed = fact.Restated is { } value ? pull.Unconfirmed.Add(value) : pull.Unconfirmed,
                CorrectionConfirmed = false,
                Looks = [],
                LooksBefore = pull.LooksBefore.AddRange(pull.Looks),
                AcceptedBy = null,
            }).HoldTurned(recorded, fact),
            Witnessed witnessed => next.Unwitness(fact.Target, witnessed),
            Countersigned answer => next.Uncountersign(recorded.Number, fact.Target, answer),
            Settled settled => next.Unsettle(fact.Target, settled),
            HandTightened hand => next.Untighten(fact.Target, hand),
            CarConditionDeclared => next.Unsay(recorded.Number, fact.Target),
            FittedNew fitted => next.Unfit(recorded.Number, fact.Target, fitted),
            ResultRecorded result when Results[result.Name].Number == fact.Target => next.Undo(recorded.Number, [Parse(result.Name)]),
            _ => next,
        };
        return next.RunAgain(recorded.Number).SuspendReleases(recorded.Number);
    }

    // A job of which a sign-off fell by a correction, a look that fell, or a rejection runs again.
    private CarState RunAgain(long by)
    {
        var again = Jobs.Values.Where(job => job is { IsRunning: false, End: JobEnd.ByRelease or JobEnd.ByTheLead } && job.SignOffs.Values.Any(sign =>
            sign.Fact.RestsOn.Append(sign.Number).Any(number => Fallen.GetValueOrDefault(number) == by))).ToList();
        return again.Count == 0 ? this : this with
        {
            Jobs = Jobs.SetItems(again.Select(job => KeyValuePair.Create(job.Id, job with { ClosedBy = 0, End = JobEnd.None, Word = null }))),
        };
    }

    private CarState WithConfirmation(Recorded recorded, CorrectionConfirmed fact)
    {
        var correction = Corrections[fact.Correction];
        var next = this with { Corrections = Corrections.SetItem(fact.Correction, correction with { ConfirmedBy = recorded.Number }) };
        return Correctables[correction.Fact.Target].Entry is TorqueRecorded target
            ? (correction.Fact.WasPulled == true ? next : next.LetTurned(fact.Correction, target.Position)).Recorrect(recorded, correction.Fact.Target, pull => pull with
            {
                CorrectionConfirmed = true,
                Confirmed = pull.Restated,
                Unconfirmed = [],

                // Whoever had looked before, and confirms the figure now, has seen it.
                Looks = pull.Looks.AddRange(pull.LooksBefore.Where(look => !pull.Voided && look.Person == recorded.Person)),
                LooksBefore = pull.LooksBefore.RemoveAll(look => !pull.Voided && look.Person == recorded.Person),
            }).LiftHolds(correction, target)
            : Correctables[correction.Fact.Target].Entry switch
            {
                Opened => next.NeverOpened(recorded.Number, correction.Fact.Target),
                DeclaredFromPaper => next.NeverDone(correction.Fact.Target),
                _ => next,
            };
    }

    // A slip of typing that is confirmed and in order lifts the hold that only the wrong figure raised, and so does the
    // confirmed void of a pull that was reported twice. Both are for the doer to say; nothing else lifts it.
    private CarState LiftHolds(CorrectionBook correction, TorqueRecorded fact)
    {
        var number = correction.Fact.Target;
        if (Of(fact.Position).Pulls.Find(pull => pull.Number == number) is not { } pull || pull.Person != correction.Person)
        {
            return this;
        }

        // Used as is, the figure is no more in order than it was.
        var lifts = pull.Voided
            ? pull is { IsGone: true, WasPulled: false } && fact.Problems.Contains(HoldReason.SecondPull)
            : (pull with { AcceptedBy = null }).HoldReason is null;
        var next = this;
        foreach (var position in lifts ? new[] { fact.Position, fact.RidesOn ?? fact.Position }.Distinct() : [])
        {
            var book = next.Of(position);
            next = next.Put(book with { Holds = book.Holds.RemoveAll(hold => hold.Number == number && hold.Decision is null) });
        }

        return next;
    }

    // Voiding the record of an angle turns nothing back: whether the bolt was turned is for a second person to say.
    private CarState HoldTurned(Recorded recorded, Corrected fact)
    {
        var position = ((TorqueRecorded)Correctables[fact.Target].Entry).Position;
        var book = Of(position);
        return fact.Restated is null && book.Pulls.Exists(pull => pull.Number == fact.Target && pull.IsTurn)
            ? Put(book with
            {
                Holds = book.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.TurnVoided) { Workers = book.Workers }),
            })
            : this;
    }

    // A confirmed void: a second person has said that it was never turned.
    private CarState LetTurned(long correction, JointPosition position)
    {
        var book = Of(position);
        return Put(book with { Holds = book.Holds.RemoveAll(hold => hold.Number == correction && hold.Decision is null) });
    }

    // Judges a pull again after a correction or its confirmation. What rested on it falls where it no longer passes.
    private CarState Recorrect(Recorded recorded, long number, Func<Pull, Pull> change)
    {
        var fact = (TorqueRecorded)Correctables[number].Entry;
        var book = Of(fact.Position);
        var index = book.Pulls.FindIndex(pull => pull.Number == number);
        if (index < 0)
        {
            // Opened since. Other positions may still rest on it: no correction may make them better.
            return recorded.Entry is Corrected ? TakeBack(recorded.Number, number) : this;
        }

        var before = book.Pulls[index];
        var after = change(before);
        var passes = this.Passes(after);
        var next = passes
            ? this with { Fallen = Fallen.Remove(number), TakenBack = TakenBack.Remove(number) }
            : TakeBack(recorded.Number, number);
        next = next.Fell(recorded.Number, before.Looks.Except(after.Looks).Select(look => look.Number));

        // A record restated to what would have held it holds it now, and so does one that was used as is as it stood before.
        var holds = recorded.Entry is Corrected && after.HoldReason is not null && !book.Holds.Exists(hold => hold.Number == number);
        var workers = recorded.Entry is Corrected ? book.Workers.Add(recorded.Person) : book.Workers;
        next = next.Put(book with
        {
            Pulls = book.Pulls.SetItem(index, after),

            // What is tight by a figure that a second person confirmed is on, whatever was wrong with the figure before.
            Fitting = passes && recorded.Entry is CorrectionConfirmed ? Fitting.HandTight : book.Fitting,
            Workers = workers,
            Holds = holds
                ? book.Holds.Add(new Hold(number, recorded.At, before.Person, after.HoldReason!.Value) { Workers = workers })
                : book.Holds,
        });
        next = after.Looks.Except(before.Looks).Aggregate(next, (state, look) => state.SeenAgain(look.Number));
        if (recorded.Entry is not Corrected)
        {
            return next;
        }

        // What it rides on is held by the first figure that reached it: where that was decided, another correction raises nothing again.
        next = next.WitnessesWhoWorked(recorded.Number, [fact.Position], [recorded.Person]);
        return before.ReachesWhatItRidesOn ? next : next.HoldRidden(after, recorded);
    }

    // A look at several pulls is valid again only when each of them has it again.
    private CarState SeenAgain(long look) => ((Witnessed)Correctables[look].Entry).Records
        .All(number => Positions.Values.Any(book => book.Pulls.Exists(pull => pull.Number == number && pull.Looks.Exists(one => one.Number == look))))
            ? this with { Fallen = Fallen.Remove(look) }
            : this;

    private CarState TakeBack(long by, long number) => (this with { TakenBack = TakenBack.Add(number) }).Fell(by, number);

    private CarState Unwitness(long number, Witnessed fact)
    {
        var next = this;
        foreach (var book in PositionsOf(fact.Records).ToList())
        {
            next = next.Put(book with
            {
                Pulls = [.. book.Pulls.Select(pull => pull with
                {
                    Looks = pull.Looks.RemoveAll(look => look.Number == number),
                    LooksBefore = pull.LooksBefore.RemoveAll(look => look.Number == number),
                })],
            });
        }

        return next;
    }

    // Nobody answers for the pulls and steps any more: what rested on them falls.
    private CarState Uncountersign(long by, long number, Countersigned fact)
    {
        var next = WithAnswer(fact, sign => sign.Answer?.Number == number ? sign with { Answer = null } : sign);
        foreach (var book in PositionsOf(fact.Records).ToList())
        {
            next = next.Put(book with { Pulls = [.. book.Pulls.Select(pull => pull.CountersignedBy == number ? pull with { CountersignedBy = null } : pull)] });
        }

        return fact.Records.Aggregate(next, (state, record) => state.TakeBack(by, record));
    }

    private CarState Unsettle(long number, Settled fact)
    {
        var next = this;
        foreach (var book in fact.Positions.Select(Of).Where(book => book.SettledBy == number))
        {
            next = next.Put(book with { SettledBy = 0, Settled = null });
        }

        return next;
    }

    private CarState Untighten(long number, HandTightened fact)
    {
        var next = this;
        foreach (var book in fact.Positions.Select(Of).Where(book => book.HandTightBy == number))
        {
            next = next.Put(book with { Fitting = Fitting.Open, HandTightBy = 0 });
        }

        return next;
    }

    private static Undone Parse(string name) => name.StartsWith("setting:", StringComparison.Ordinal)
        ? new Undone(UndoneKind.Setting, name["setting:".Length..])
        : new Undone(UndoneKind.Result, name);
}
