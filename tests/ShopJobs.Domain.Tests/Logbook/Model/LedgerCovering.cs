using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 10: what a signature covers.
internal sealed partial class Ledger
{
    /// <summary>What was shown with a command is no longer exactly so. A command that names nothing is drawn where it is given.</summary>
    private bool MustLookAgain(SignedCommand command)
    {
        if (command.Covers == Covering.Nothing)
        {
            return false;
        }

        IReadOnlyList<ToolDoubt> shownDoubts = command is DecideHold decide ? DoubtsOn(decide.Position) : [];
        return !command.Covers.Doubts.ToHashSet().SetEquals(shownDoubts) || !command.Covers.Entries.ToHashSet().SetEquals(ShownWith(command));
    }

    private IEnumerable<long> ShownWith(SignedCommand command) => command switch
    {
        ConfirmStep { NotApplicable: false } confirm when jobs.TryGetValue(confirm.Job, out var job) && job.Step(confirm.Step) is { } step =>
            WithCorrections(RestsOfStep(job, step).Concat(
                from id in confirm.With ?? []
                let other = job.Step(id)
                where other is not null
                from number in RestsOfStep(job, other).Append(WordOn(job, other)?.Number ?? 0)
                where number > 0
                select number)),
        Witness witness when IsStarted(witness.Job) && jobs[witness.Job].Group(witness.Group, witness.Place) is not null => WithCorrections(SeenNow(witness)),
        DecideHold decide => WithCorrections(AboutNow(decide.Position)),
        Restate restate => WithCorrections([restate.Target]),
        ConfirmCorrection confirm when confirm.Correction >= 1 && confirm.Correction <= lines.Count && At(confirm.Correction).Entry is Corrected fact =>
            CorrectionsOf(fact.Target).Select(line => line.Number),
        RecordSettled settled => settled.Positions.Select(position => LastPull(position)?.Number ?? 0).Where(number => number > 0),
        LookOver => ToLookOver.Select(move => move.Number),
        ExtendReTorque extend => extend.Positions.Select(position => LastPull(position)?.Number ?? 0).Where(number => number > 0),
        Release or UpholdRelease or WithdrawRelease or JobCommand => lines.Count > 0 ? [lines.Count] : [],
        Countersign countersign => WithCorrections(countersign.Records.Concat(Signed(countersign.Records).SelectMany(at => SignOff(at.Job, at.Step)!.Rests))),
        _ => [],
    };

    private IEnumerable<long> WithCorrections(IEnumerable<long> numbers) =>
        numbers.SelectMany(number => CorrectionsOf(number).Select(line => line.Number).Append(number));

    private IEnumerable<Reason> OfCountersigning(PersonId person, IReadOnlySet<Right> rights, IReadOnlySet<PersonId> ties, Countersign countersign, DateTime at)
    {
        var steps = Signed(countersign.Records).Where(at => StandingOf(at.Job, at.Step) == StepStanding.AwaitsCountersign && !IsClosed(at.Job.Id)).ToList();
        var answered = steps.Select(at => SignOff(at.Job, at.Step)!.Number).Concat(countersign.Records.Where(Awaits)).ToHashSet();
        var doers = answered.Select(number => At(number).Person).ToHashSet();
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Record)),
            (HoldReason.OwnWork, doers.Contains(person)),
            (HoldReason.Tied, doers.Overlaps(ties)),
            (HoldReason.NothingToCountersign, countersign.Records.Count == 0 || !countersign.Records.All(answered.Contains))).Select(why => new Reason(why))
            .Concat(steps.SelectMany(step => SignOff(step.Job, step.Step)!.Entry is StepConfirmed given ? WaitsOf(step.Job, step.Step, given.Ticks, given.Values, rights, at) : []));
    }

    /// <summary>The steps whose newest sign-off is among these lines.</summary>
    private IEnumerable<(JobReading Job, StepAt Step)> Signed(IReadOnlyList<long> records) =>
        from fact in records.Where(number => number >= 1 && number <= lines.Count).Select(number => At(number).Entry).OfType<StepConfirmed>().DistinctBy(fact => (fact.Job, fact.Step))
        let job = jobs[fact.Job]
        let step = job.Step(fact.Step)
        where step is not null && records.Contains(SignOff(job, step)!.Number)
        select (job, step);

    private bool Awaits(long number) => number >= 1 && number <= lines.Count && At(number).Entry is TorqueRecorded fact
        && FirstOpenedAfter(fact.Position, number) == 0 && !IsVoid(number) && NeedsCountersign(At(number)) && CountersignOf(number) is null;
}
