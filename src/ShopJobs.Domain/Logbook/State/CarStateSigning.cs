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

        var next = Put(book with
        {
            Holds = holds,
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
}
