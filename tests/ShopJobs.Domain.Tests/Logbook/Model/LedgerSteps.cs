using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>One reason the model finds, with the position where it is about one.</summary>
internal readonly record struct Reason(HoldReason Why, JointPosition? Where = null);

// Whether a sign-off stands, and why a step waits.
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

        if (IsVoid(sign.Number)
            || sign.Rests.Any(number => At(number).Entry is not StepConfirmed && FellAt(number) is var fell && fell > sign.Number && IsOf(job, fell))
            || JointsOf(job, step).Any(position => IsOpenedAgain(job, position, sign.Number)))
        {
            return StepStanding.Void;
        }

        return job.Before(step).All(before => StandingOf(job, before) == StepStanding.Signed && SignOff(job, before)!.Number < sign.Number)
            ? StepStanding.Signed
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
        StepConfirmed => VoidedAt(number),
        Witnessed => Math.Max(VoidedAt(number), At(number).About.Select(pull => WitnessFellAt(number, pull)).DefaultIfEmpty(0).Max()),
        ResultRecorded fact => Math.Max(VoidedAt(number), ResultFellAt(number, fact.Name)),
        _ => 0,
    };

    private long VoidedAt(long number) => CorrectionsOf(number).FirstOrDefault(line => line.Entry is Corrected { Restated: null })?.Number ?? 0;

    private long PullFellAt(long number, JointPosition position)
    {
        var opened = FirstOpenedAfter(position, number);
        var judged = CorrectionsOf(number)
            .Concat(lines.Where(line => line.Entry is CorrectionConfirmed fact && CorrectionsOf(number).Any(c => c.Number == fact.Correction)))
            .Concat(lines.Where(line => line.Entry is Corrected { Restated: null } fact && At(fact.Target).Entry is Countersigned answer && answer.Records.Contains(number)))
            .Where(line => opened == 0 || line.Number < opened)
            .MaxBy(line => line.Number);
        var corrected = judged is not null && !Upto(judged.Number).Passes(At(number)) ? judged.Number : 0;
        var late = opened == 0 ? 0 : CorrectionsOf(number).Where(line => line.Number > opened).Select(line => line.Number).DefaultIfEmpty(0).Max();
        return Math.Max(corrected, Math.Max(opened, late));
    }

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
        return lines.Skip((int)number).FirstOrDefault(line => line.Number < next && line.Undoes.Contains(name))?.Number ?? 0;
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

    private Line? ResultOf(string name) => lines.LastOrDefault(line => line.Entry is ResultRecorded fact && fact.Name == name);

    public IEnumerable<string> UndoneNames => lines.SelectMany(line => line.Undoes).Distinct().Where(IsUndone);

    private bool IsUndone(string name) =>
        lines.Last(line => line.Undoes.Contains(name)).Number > (ResultOf(name)?.Number ?? 0);

    /// <summary>Why a step may not be signed.</summary>
    private IEnumerable<Reason> WaitsOf(JobReading job, StepAt step, ConfirmStep given, DateTime at)
    {
        if (StandingOf(job, step) == StepStanding.Signed)
        {
            yield return new(HoldReason.AlreadySigned);
        }

        foreach (var reason in GatesOf(job, step, at))
        {
            yield return reason;
        }

        var results = step.Rules.WaitsFor.OfType<WaitsFor.ForResult>().Select(wait => wait.Name).Concat(step.Rules.Records);
        if (results.Any(name => ResultOf(name) is null || UndoneNames.Contains(name)))
        {
            yield return new(HoldReason.ResultMissing);
        }

        if (step.Rules.Records.Any(name => JointsOf(name).Any(position => !IsAsFound(position) && !Counts(position))))
        {
            yield return new(HoldReason.ResultJointLoose);
        }

        if (step.Rules.Opens.Any(key => IsNotYetOpened(job, step, key)))
        {
            yield return new(HoldReason.NotYetOpened);
        }

        foreach (var position in NotByHand(job, step))
        {
            yield return new(HoldReason.NotRunDown, position);
        }

        if (job.WorkOf(step).Any(work => work.Group.Rules.Temporary && work.Group.Positions.Any(IsOn)))
        {
            yield return new(HoldReason.TemporaryFitted);
        }

        if (step.Rules.Ticks.Any(tick => !given.Ticks.Contains(tick.Id)))
        {
            yield return new(HoldReason.TickMissing);
        }

        if (step.Rules.Measures.Any(measure => !given.Values.Any(value => value.Name == measure.Id && value.Unit == measure.Unit)))
        {
            yield return new(HoldReason.MeasureMissing);
        }

        if (step.Rules.Measures.Any(measure => given.Values.Any(value => value.Name == measure.Id && (value.Value < measure.Minimum || value.Value > measure.Maximum))))
        {
            yield return new(HoldReason.MeasureOutside);
        }

        foreach (var reason in JointsBefore(job, step))
        {
            yield return reason;
        }
    }

    /// <summary>Positions of groups that the step works by hand alone, and that nobody ran down or that are held.</summary>
    private IEnumerable<JointPosition> NotByHand(JobReading job, StepAt step) =>
        from work in job.WorkOf(step)
        where !work.Stages.Any() && !work.Group.Rules.Temporary
        from position in work.Group.Positions
        where WhatIsOn(position) != On.Run || HoldsOn(position).Any()
        select position;

    // Rule 1: no sign-off while a position it depends on, directly or through a step before it, does not count.
    private IEnumerable<Reason> JointsBefore(JobReading job, StepAt step) =>
        from one in job.AllBefore(step).Append(step)
        let skipped = one != step && SignOff(job, one)?.Entry is StepConfirmed { NotApplicable: true }
        from work in job.WorkOf(one)
        where !work.Group.Rules.Temporary
        from stage in work.Stages
        from position in work.Group.Positions
        where !(skipped && IsAsFound(position) && HoldsOn(position).Count == 0)
        from why in ProblemsOf(position, stage, job, work.Group)
        select new Reason(why, position);

    /// <summary>What must be before the work of a step begins: steps, groups, cures.</summary>
    private IEnumerable<Reason> GatesOf(JobReading job, StepAt step, DateTime at)
    {
        if (job.AllBefore(step).Any(before => StandingOf(job, before) != StepStanding.Signed))
        {
            yield return new(HoldReason.StepBefore);
        }

        if ((from wait in step.Rules.WaitsFor.OfType<WaitsFor.ForGroup>()
             from work in job.GroupsAt(wait.Group, step.Place)
             from position in work.Positions
             where ProblemsOf(position, wait.Stage, job, work).Count > 0
             select position).Any())
        {
            yield return new(HoldReason.GroupBefore);
        }

        if ((from wait in step.Rules.WaitsFor.OfType<WaitsFor.ForCure>()
             from work in job.GroupsAt(wait.Group, step.Place)
             where !work.Positions.All(IsAtTorque)
                 || !work.Positions.All(position => clock.HasPassed(LastPull(position)!, TimeSpan.FromHours((double)wait.Hours), at))
             select wait).Any())
        {
            yield return new(HoldReason.Cure);
        }
    }

    private IEnumerable<JointPosition> JointsOf(string result) => register.Kinds.Values
        .Where(kind => !kind.Temporary && Undoes(kind.Undoes, result, 0))
        .SelectMany(kind => kind.AllPositions());

    private bool Undoes(IEnumerable<Undone> undone, string result, int depth) => depth < 9 && undone.Any(one => one.ToString() == result
        || (one.Kind == UndoneKind.Setting && Undoes(register.Settings[one.Name], result, depth + 1))
        || (one.Kind == UndoneKind.Joint && Undoes(register.Kinds[one.Name].Undoes, result, depth + 1)));

    private bool IsNotYetOpened(JobReading job, StepAt step, string key) =>
        register.Kinds[key].AllPositions().Any(position =>
            (step.Place is null ? job.Places.Contains(position.Place) : position.Place == step.Place)
            && LastOpened(position) < StartOf(job.Id) && WhatIsOn(position) is not (On.Nothing or On.New));
}
