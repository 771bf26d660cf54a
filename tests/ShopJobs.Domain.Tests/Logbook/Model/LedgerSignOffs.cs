using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 11: what a sign-off rests on, and whether it stands.
internal sealed partial class Ledger
{
    private readonly Remembered<(JobId, string), StepStanding> standings = new();

    private Line? SignOff(JobReading job, StepAt step) =>
        lines.LastOrDefault(line => line.Entry is StepConfirmed fact && fact.Job == job.Id && fact.Step == step.Id);

    public StepStanding StandingOf(JobReading job, StepAt step) => standings.Of((job.Id, step.Id), _ => ScanStanding(job, step));

    private StepStanding ScanStanding(JobReading job, StepAt step)
    {
        if (SignOff(job, step) is not { } sign)
        {
            return StepStanding.NotSigned;
        }

        if (IsVoid(sign.Number) || AnswersVoided(sign.Number).Any()
            || sign.Rests.Any(number => At(number).Entry is not StepConfirmed && FellAt(number) is var fell && fell > sign.Number && IsOf(job, fell))
            || JointsOf(job, step).Any(position => IsOpenedAgain(job, position, sign.Number)))
        {
            return StepStanding.Void;
        }

        return job.Before(step).All(before => StandingOf(job, before) == StepStanding.Signed && SignOff(job, before)!.Number < sign.Number)
            ? sign.ByTrainee && CountersignOf(sign.Number) is null ? StepStanding.AwaitsCountersign : StepStanding.Signed
            : StepStanding.ToReconfirm;
    }

    /// <summary>Rule 11: lasting joints that a step works or waits for, and those that its job works later at its place.</summary>
    private static IEnumerable<JointPosition> JointsOf(JobReading job, StepAt step)
    {
        var waited = from wait in step.Rules.WaitsFor
                     let name = (wait as WaitsFor.ForGroup)?.Group ?? (wait as WaitsFor.ForCure)?.Group
                     where name is not null
                     from at in job.GroupsAt(name, step.Place)
                     select at;
        var worked = from one in job.Steps
                     where one == step || (AreTogether(one.Place, step.Place) && job.AllBefore(one).Contains(step))
                     from done in job.WorkOf(one)
                     where AreTogether(done.Group.Place, step.Place)
                     select done.Group;
        return waited.Concat(worked).Where(at => !at.Rules.Temporary).SelectMany(at => at.Positions).Distinct();
    }

    private static bool AreTogether(string? one, string? other) => one is null || other is null || one == other;

    // The cycle that was begun in this job was ended. The first opening of a joint is what the job is there for.
    private bool IsOpenedAgain(JobReading job, JointPosition position, long signed)
    {
        var opened = LastOpened(position);
        if (opened <= signed || !IsOf(job, opened))
        {
            return false;
        }

        var before = Upto(opened - 1);
        var touched = before.Since(position).Where(line => IsReport(line, position)).Select(line => line.Number)
            .Append(before.LastOpened(position)).Max();
        return touched > StartOf(job.Id);
    }

    // What happens after a job's end touches nothing of it.
    private bool IsOf(JobReading job, long number) => !IsClosed(job.Id) || number < lines.Last(line => line.Closes.Contains(job.Id)).Number;

    /// <summary>The newest line after which this one no longer stood; 0 while it does.</summary>
    private long FellAt(long number) => At(number).Entry switch
    {
        TorqueRecorded fact => PullFellAt(number, fact.Position),
        HandTightened fact => Math.Max(
            VoidedAt(number),
            fact.Positions.Where(at => HandStood(number, at)).Select(at => FirstOpenedAfter(at, number)).DefaultIfEmpty(0).Max()),
        StepConfirmed => Math.Max(VoidedAt(number), AnswersVoided(number).Select(line => line.Number).DefaultIfEmpty(0).Max()),
        Witnessed => Math.Max(VoidedAt(number), At(number).About.Select(pull => WitnessFellAt(number, pull)).DefaultIfEmpty(0).Max()),
        ResultRecorded fact => Math.Max(VoidedAt(number), ResultFellAt(number, fact.Name)),
        _ => 0,
    };

    private long VoidedAt(long number) => lines.FirstOrDefault(line =>
        (line.Entry is Corrected { Restated: null } fact && fact.Target == number) || line.TakesBack.Contains(number))?.Number ?? 0;

    private long PullFellAt(long number, JointPosition position)
    {
        var opened = FirstOpenedAfter(position, number);
        var judged = CorrectionsOf(number)
            .Concat(lines.Where(line => line.Entry is CorrectionConfirmed fact && CorrectionsOf(number).Any(c => c.Number == fact.Correction)))
            .Concat(AnswersVoided(number)).Concat(ConditionsVoided(number))
            .Where(line => opened == 0 || line.Number < opened)
            .MaxBy(line => line.Number);
        var corrected = judged is not null && !Upto(judged.Number).Passes(At(number)) ? judged.Number : 0;
        var late = opened == 0 ? 0 : CorrectionsOf(number).Concat(AnswersVoided(number)).Concat(ConditionsVoided(number)).Where(line => line.Number > opened).Select(line => line.Number).DefaultIfEmpty(0).Max();
        return Math.Max(corrected, Math.Max(opened, late));
    }

    private IEnumerable<Line> AnswersVoided(long number) => lines.Where(line =>
        line.Entry is Corrected { Restated: null } fact && At(fact.Target).Entry is Countersigned answer && answer.Records.Contains(number));

    private IEnumerable<Line> ConditionsVoided(long number) => At(number).Conditions.SelectMany(CorrectionsOf);

    // True when the position was still hand-tight by this line when it was next opened.
    private bool HandStood(long number, JointPosition position)
    {
        var opened = FirstOpenedAfter(position, number);
        return opened > 0 && Upto(opened - 1).HandTightBy(position) == number;
    }

    private long WitnessFellAt(long number, long pull) => LookOn(At(number), pull).FellAt;

    private long ResultFellAt(long number, string name)
    {
        var next = lines.Skip((int)number).FirstOrDefault(line => line.Entry is ResultRecorded fact && fact.Name == name)?.Number ?? long.MaxValue;
        return lines.Skip((int)number).FirstOrDefault(line => line.Number <= next && line.Undoes.Contains(name))?.Number ?? 0;
    }

    /// <summary>Lines a sign-off rests on: pulls of its work with what those rest on, witnesses, results.</summary>
    private IReadOnlyList<long> RestsOfStep(JobReading job, StepAt step)
    {
        // Rule 11: of every joint that its step works or waits for.
        var waited = step.Rules.WaitsFor.SelectMany(wait => wait switch
        {
            WaitsFor.ForGroup(var name, var stage) => job.GroupsAt(name, step.Place).Select(@group => (Group: @group, Stage: stage)),
            WaitsFor.ForCure(var name, _) => job.GroupsAt(name, step.Place).Select(@group => (Group: @group, Stage: @group.Rules.Stages.Count)),
            _ => [],
        });
        var pulls = from at in job.WorkOf(step).SelectMany(work => work.Stages.Select(stage => (work.Group, Stage: stage))).Concat(waited)
                    where !at.Group.Rules.Temporary
                    from position in at.Group.Positions
                    from pull in Newest(position, at.Stage)
                    select pull;
        var names = step.Rules.WaitsFor.OfType<WaitsFor.ForResult>().Select(wait => wait.Name).Concat(step.Rules.Records);
        return
        [
            .. pulls.SelectMany(pull => pull.Rests.Append(pull.Number).Append(SeenBy(pull)?.Number ?? 0))
                .Concat(names.Select(name => ResultOf(name)?.Number ?? 0))
                .Concat(job.Before(step).Select(before => SignOff(job, before)?.Number ?? 0))
                .Where(number => number > 0).Distinct(),
        ];
    }
}
