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
            WithCorrections(RestsOfStep(job, step)),
        Witness witness when IsStarted(witness.Job) && jobs[witness.Job].Group(witness.Group, witness.Place) is not null => WithCorrections(SeenNow(witness)),
        DecideHold decide => WithCorrections(AboutNow(decide.Position)),
        Restate restate => WithCorrections([restate.Target]),
        ConfirmCorrection confirm when confirm.Correction >= 1 && confirm.Correction <= lines.Count && At(confirm.Correction).Entry is Corrected fact =>
            CorrectionsOf(fact.Target).Select(line => line.Number),
        RecordSettled settled => settled.Positions.Select(position => LastPull(position)?.Number ?? 0).Where(number => number > 0),
        LookOver => ToLookOver.Select(move => move.Number),
        ExtendReTorque extend => extend.Positions.Select(position => LastPull(position)?.Number ?? 0).Where(number => number > 0),
        Release or UpholdRelease or WithdrawRelease or JobCommand => lines.Count > 0 ? [lines.Count] : [],
        Countersign countersign => WithCorrections(countersign.Records),
        _ => [],
    };

    private IEnumerable<long> WithCorrections(IEnumerable<long> numbers) =>
        numbers.SelectMany(number => CorrectionsOf(number).Select(line => line.Number).Append(number));

    private IEnumerable<Reason> OfCountersigning(IReadOnlySet<Right> rights, Countersign countersign) => Those(
        (HoldReason.NoRight, !rights.Contains(Right.Record)),
        (HoldReason.NothingToCountersign, countersign.Records.Count == 0 || !countersign.Records.All(Awaits))).Select(why => new Reason(why));

    private bool Awaits(long number) => number >= 1 && number <= lines.Count && At(number).Entry is TorqueRecorded fact
        && FirstOpenedAfter(fact.Position, number) == 0 && !IsVoid(number) && NeedsCountersign(At(number)) && CountersignOf(number) is null;
}
