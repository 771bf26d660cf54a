using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How signatures, witnesses, decisions, corrections and releases change the state.
public sealed partial record CarState
{
    private CarState Signed(Recorded recorded, StepConfirmed fact)
    {
        var next = Begin(fact.Job).Remember(recorded);
        var job = next.Jobs[fact.Job];
        var sign = new SignOff(recorded.Number, recorded.At, recorded.Person, fact);
        return next with { Jobs = next.Jobs.SetItem(fact.Job, job with { SignOffs = job.SignOffs.SetItem(fact.Step, sign) }) };
    }

    private CarState WithWitness(Recorded recorded, Witnessed fact)
    {
        var next = Remember(recorded);
        foreach (var book in next.PositionsOf(fact.Records).ToList())
        {
            var seen = book with
            {
                Pulls = [.. book.Pulls.Select(pull => fact.Records.Contains(pull.Number)
                    ? pull with { WitnessedBy = fact.Accepted ? recorded.Number : null }
                    : pull)],
            };
            next = next.Put(fact.Accepted
                ? seen
                : seen with
                {
                    Holds = seen.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.WitnessRejected) { Workers = book.Workers }),
                });
        }

        return fact.Accepted ? next : next.EndReleases(recorded.Number);
    }

    private CarState WithDecision(Recorded recorded, Decided fact)
    {
        var book = Of(fact.Position);
        var holds = book.Holds;
        var asIs = fact.Disposition == Disposition.UseAsIs;
        foreach (var hold in book.Holds.Where(hold => fact.About.Contains(hold.Number)))
        {
            var carriedOut = asIs || book.OpenedBy > hold.Number;
            holds = carriedOut ? holds.Remove(hold) : holds.Replace(hold, hold with { Decision = fact.Disposition });
        }

        if (fact.Doubts.Count > 0 && !asIs)
        {
            holds = holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.ToolInDoubt, fact.Disposition));
        }

        if (!asIs && fact.About.Any(number => !book.Holds.Exists(hold => hold.Number == number)))
        {
            holds = holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.OtherSpecification, fact.Disposition));
        }

        return Put(book with
        {
            Holds = holds,
            DoubtsDecided = book.DoubtsDecided.AddRange(fact.Doubts),
            NewHardwareSince = fact.Disposition == Disposition.Replace
                ? fact.About.DefaultIfEmpty(recorded.Number).Max()
                : book.NewHardwareSince,
            Fitting = asIs && book.Pulls.Exists(pull => fact.About.Contains(pull.Number)) ? Fitting.HandTight : book.Fitting,
            Pulls = asIs
                ? [.. book.Pulls.Select(pull => fact.About.Contains(pull.Number) ? pull with { AcceptedBy = recorded.Number } : pull)]
                : book.Pulls,
        }) with
        { Summaries = Superseded(recorded.Number) };
    }

    private CarState WithCorrection(Recorded recorded, Corrected fact)
    {
        var target = Correctables[fact.Target].Entry;
        var next = this with
        {
            Corrections = Corrections.Add(recorded.Number, new CorrectionBook(recorded.Number, recorded.Person, fact, false)),
        };
        if (fact.Restated is null)
        {
            next = (next with { TakenBack = TakenBack.Add(fact.Target) }).Fell(recorded.Number, fact.Target);
        }

        next = target switch
        {
            TorqueRecorded => next.Recorrect(recorded.Number, fact.Target, pull => pull with
            {
                Voided = fact.Restated is null || pull.Voided,
                Unconfirmed = fact.Restated is { } value ? pull.Unconfirmed.Add(value) : pull.Unconfirmed,
                CorrectionConfirmed = false,
                WitnessedBy = null,
                AcceptedBy = null,
            }),
            Witnessed witnessed => next.Unwitness(fact.Target, witnessed),
            Settled settled => next.Unsettle(fact.Target, settled),
            HandTightened hand => next.Untighten(fact.Target, hand),
            ResultRecorded result when Results[result.Name].Number == fact.Target => next.Undo(recorded.Number, [Parse(result.Name)]),
            _ => next,
        };
        return next.EndReleases(recorded.Number);
    }

    private CarState WithConfirmation(Recorded recorded, CorrectionConfirmed fact)
    {
        var correction = Corrections[fact.Correction];
        var next = this with { Corrections = Corrections.SetItem(fact.Correction, correction with { Confirmed = true }) };
        return Correctables[correction.Fact.Target].Entry is TorqueRecorded
            ? next.Recorrect(recorded.Number, correction.Fact.Target, pull => pull with
            {
                CorrectionConfirmed = true,
                Confirmed = pull.Restated,
                Unconfirmed = [],
            })
            : next;
    }

    private CarState WithRelease(Recorded recorded, Released fact)
    {
        var jobs = Jobs.SetItems(fact.Closes.Select(id => KeyValuePair.Create(id, Jobs[id] with { ClosedBy = recorded.Number })));
        return this with
        {
            Jobs = jobs,
            Releases = Releases.SetItem(fact.Kind, new ReleaseBook(recorded.Number, recorded.At, recorded.Person, fact)),
            Summaries = Superseded(recorded.Number),
        };
    }

    private IEnumerable<PositionBook> PositionsOf(IReadOnlyList<long> pulls) =>
        Positions.Values.Where(book => book.Pulls.Any(pull => pulls.Contains(pull.Number)));

    // Judges a pull anew after a correction or its confirmation, and lets fall what rested on it where it no longer passes.
    private CarState Recorrect(long by, long number, Func<Pull, Pull> change)
    {
        var fact = (TorqueRecorded)Correctables[number].Entry;
        var book = Of(fact.Position);
        var index = book.Pulls.FindIndex(pull => pull.Number == number);
        if (index < 0)
        {
            return this;
        }

        var before = book.Pulls[index];
        var after = change(before);
        var passes = this.Passes(after);
        var next = passes
            ? this with { Fallen = Fallen.Remove(number), TakenBack = TakenBack.Remove(number) }
            : (this with { TakenBack = TakenBack.Add(number) }).Fell(by, number);
        if (before.WitnessedBy is { } seen && after.WitnessedBy is null)
        {
            next = next.Fell(by, seen);
        }

        // A short pull that turns out not to have been short, or not to have been at all, asks for nothing any more.
        var settled = passes || after.IsGone;
        // What was decided "use as is" was the record as it stood: with another value it is held again.
        var heldAgain = before.AcceptedBy is not null && after.AcceptedBy is null && fact.Problems.Count > 0;
        return next.Put(book with
        {
            Pulls = book.Pulls.SetItem(index, after),
            Holds = heldAgain
                ? book.Holds.Add(new Hold(number, before.At, before.Person, fact.Problems[0]) { Workers = book.Workers })
                : book.Holds,
            BackOffFor = settled && book.BackOffFor == number ? 0 : book.BackOffFor,
            NewHardwareSince = settled && book.NewHardwareSince == number && book.BackOffFor == number ? 0 : book.NewHardwareSince,
        });
    }

    private CarState Unwitness(long number, Witnessed fact)
    {
        var next = this;
        foreach (var book in PositionsOf(fact.Records).ToList())
        {
            next = next.Put(book with
            {
                Pulls = [.. book.Pulls.Select(pull => pull.WitnessedBy == number ? pull with { WitnessedBy = null } : pull)],
            });
        }

        return next;
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
