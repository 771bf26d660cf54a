using System.Collections.Immutable;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How signatures, witnesses, decisions and releases change the state.
public sealed partial record CarState
{
    private CarState Signed(Recorded recorded, StepConfirmed fact)
    {
        var next = Begin(fact.Job).Remember(recorded);
        var job = next.Jobs[fact.Job];
        var sign = new SignOff(recorded.Number, recorded.At, recorded.Person, fact);
        return next with { Jobs = next.Jobs.SetItem(fact.Job, job with { SignOffs = job.SignOffs.SetItem(fact.Step, sign) }) };
    }

    private CarState WithFinished(Recorded recorded, StepFinished fact)
    {
        var next = Begin(fact.Job).Remember(recorded);
        var finished = new FinishedStep(recorded.Number, recorded.At, recorded.Person, fact);
        return next.WithJob(fact.Job, job => job with { Finished = job.Finished.SetItem(fact.Step, finished) });
    }

    private CarState WithWitness(Recorded recorded, Witnessed fact)
    {
        var next = Remember(recorded) with { LookedAt = LookedAt.Add(fact.Joint) };
        foreach (var book in next.PositionsOf(fact.Records).ToList())
        {
            var seen = book with
            {
                Pulls = [.. book.Pulls.Select(pull => fact.Accepted && fact.Records.Contains(pull.Number)
                    ? pull with { Looks = pull.Looks.Add(new Look(recorded.Number, recorded.Person)) }
                    : pull)],
            };
            next = next.Put(fact.Accepted
                ? seen
                : seen with
                {
                    Holds = seen.Holds.Add(new Hold(recorded.Number, recorded.At, recorded.Person, HoldReason.WitnessRejected) { Workers = book.Workers }),
                });
        }

        return fact.Accepted ? next : next.SuspendReleases(recorded.Number);
    }

    // Who stood by answers for the pulls, and is a worker on them like whoever made them. For a step it is a second signature.
    private CarState WithCountersignature(Recorded recorded, Countersigned fact)
    {
        var next = Remember(recorded).WithAnswer(fact, sign => sign with { Answer = new SignOffAnswer(recorded.Number, recorded.At, recorded.Person) });
        foreach (var book in next.PositionsOf(fact.Records).ToList())
        {
            next = next.Put(book with
            {
                Pulls = [.. book.Pulls.Select(pull => fact.Records.Contains(pull.Number) ? pull with { CountersignedBy = recorded.Number } : pull)],
                Fitting = Fitting.HandTight,
                Workers = book.Workers.Add(recorded.Person),
            }).WitnessesWhoWorked(recorded.Number, [book.Position], [recorded.Person]);
        }

        var standing = next.PositionsOf(fact.Records).SelectMany(book => book.Pulls).Where(pull => fact.Records.Contains(pull.Number) && next.Passes(pull));
        return next with { TakenBack = next.TakenBack.Except(standing.Select(pull => pull.Number)) };
    }

    private CarState WithAnswer(Countersigned fact, Func<SignOff, SignOff> change) => this with
    {
        Jobs = Jobs.SetItems(
            from job in Jobs.Values
            let answered = job.SignOffs.Where(sign => fact.Records.Contains(sign.Value.Number)).ToList()
            where answered.Count > 0
            select KeyValuePair.Create(job.Id, job with
            {
                SignOffs = job.SignOffs.SetItems(answered.Select(sign => KeyValuePair.Create(sign.Key, change(sign.Value)))),
            })),
    };

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

        var next = Put(book with
        {
            NamedBy = recorded.Number,
            Holds = holds,
            LastDecision = new DecisionMade(recorded.Number, recorded.At, recorded.Person, fact.Disposition),
            DoubtsDecided = book.DoubtsDecided.AddRange(fact.Doubts),
            NewHardwareSince = fact.Disposition == Disposition.Replace
                ? Math.Max(book.NewHardwareSince, fact.About.DefaultIfEmpty(recorded.Number).Max())
                : book.NewHardwareSince,
            Fitting = asIs && book.Pulls.Exists(pull => fact.About.Contains(pull.Number) && !pull.Voided) ? Fitting.HandTight : book.Fitting,
            Pulls = asIs
                ? [.. book.Pulls.Select(pull => fact.About.Contains(pull.Number) ? pull with { AcceptedBy = recorded.Number } : pull)]
                : book.Pulls,
        });
        var standing = next.Of(fact.Position).Pulls.Where(pull => pull.AcceptedBy == recorded.Number && next.Passes(pull));
        return next with
        {
            TakenBack = next.TakenBack.Except(standing.Select(pull => pull.Number)),
            Summaries = Superseded(recorded.Number),
        };
    }

    private CarState WithRelease(Recorded recorded, Released fact)
    {
        var jobs = Jobs.SetItems(fact.Closes.Select(id => KeyValuePair.Create(id, Jobs[id] with { ClosedBy = recorded.Number, End = JobEnd.ByRelease, OnHold = null })));
        var given = new ReleaseBook(recorded.Number, recorded.At, recorded.Person, fact);
        return Read(fact.OdometerKm) with
        {
            Jobs = jobs,
            Releases = Releases.SetItem(fact.Kind, given),
            ReleaseHistory = ReleaseHistory.Add(given),
            Summaries = Superseded(recorded.Number),
        };
    }

    private CarState WithUpheld(Recorded recorded, ReleaseUpheld fact) =>
        Replace(fact.Release, release => release with { SuspendedBy = 0, StandsSince = recorded.At, StandsBy = recorded.Entry }, recorded.Number);

    private CarState WithWithdrawal(Recorded recorded, ReleaseWithdrawn fact) =>
        Replace(fact.Release, release => release with { VoidBy = release.VoidBy == 0 ? recorded.Number : release.VoidBy, IsOver = true, Withdrawn = fact }, recorded.Number);

    private CarState WithReturn(Recorded recorded, RoadTestEnded fact) => Read(fact.Odometer.Km).Replace(
        fact.Release, release => release with { VoidBy = release.VoidBy == 0 ? recorded.Number : release.VoidBy, IsOver = true, Returned = fact }, recorded.Number);

    private CarState Replace(long number, Func<ReleaseBook, ReleaseBook> change, long by)
    {
        var index = ReleaseHistory.FindIndex(release => release.Number == number);
        var changed = change(ReleaseHistory[index]);
        return this with
        {
            ReleaseHistory = ReleaseHistory.SetItem(index, changed),
            Releases = Releases[changed.Fact.Kind].Number == number ? Releases.SetItem(changed.Fact.Kind, changed) : Releases,
            Summaries = Superseded(by),
        };
    }

    private IEnumerable<PositionBook> PositionsOf(IReadOnlyList<long> pulls) =>
        Positions.Values.Where(book => book.Pulls.Any(pull => pulls.Contains(pull.Number)));
}
