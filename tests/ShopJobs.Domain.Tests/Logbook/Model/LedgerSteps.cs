using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>One reason the model finds, with the position where it is about one.</summary>
internal readonly record struct Reason(HoldReason Why, JointPosition? Where = null);

// Why a step waits.
internal sealed partial class Ledger
{
    private Line? ResultOf(string name) => lines.LastOrDefault(line => line.Entry is ResultRecorded fact && fact.Name == name);

    public IEnumerable<string> UndoneNames => lines.SelectMany(line => line.Undoes).Distinct().Where(IsUndone);

    private bool IsUndone(string name) =>
        lines.Last(line => line.Undoes.Contains(name)).Number >= (ResultOf(name)?.Number ?? 0);

    /// <summary>It was measured with an instrument that somebody doubts now.</summary>
    private bool IsInDoubt(string name) =>
        ResultOf(name) is { Entry: ResultRecorded { Tool: { } tool } } line && Tool(tool).DoubtsOn(line.Day, line.At).Any();

    /// <summary>Why a step may not be signed.</summary>
    /// <param name="goesOn">Who may go on over what he finished; null for a signature.</param>
    /// <param name="with">Steps that are signed with it.</param>
    private IEnumerable<Reason> WaitsOf(
        JobReading job, StepAt step, IReadOnlyList<string> ticks, IReadOnlyList<MeasuredValue> values, IReadOnlySet<Right> rights, DateTime at,
        PersonId? goesOn = null, IReadOnlyList<StepAt>? with = null)
    {
        if (StandingOf(job, step) is var standing
            && (standing == StepStanding.Signed || (standing == StepStanding.AwaitsCountersign && !rights.Contains(Right.Record))))
        {
            yield return new(HoldReason.AlreadySigned);
        }

        foreach (var reason in GatesOf(job, step, at, goesOn, with))
        {
            yield return reason;
        }

        var results = step.Rules.WaitsFor.OfType<WaitsFor.ForResult>().Select(wait => wait.Name).Concat(step.Rules.Records);
        if (results.Any(name => ResultOf(name) is null || UndoneNames.Contains(name) || IsInDoubt(name)))
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

        if (step.Rules.Ticks.Any(tick => !ticks.Contains(tick.Id)))
        {
            yield return new(HoldReason.TickMissing);
        }

        if (step.Rules.Measures.Any(measure => !values.Any(value => value.Name == measure.Id && value.Unit == measure.Unit)))
        {
            yield return new(HoldReason.MeasureMissing);
        }

        if (step.Rules.Measures.Any(measure => values.Any(value => value.Name == measure.Id && (value.Value < measure.Minimum || value.Value > measure.Maximum))))
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
    private IEnumerable<Reason> GatesOf(JobReading job, StepAt step, DateTime at, PersonId? goesOn = null, IReadOnlyList<StepAt>? with = null)
    {
        if (job.AllBefore(step).Any(before => StandingOf(job, before) != StepStanding.Signed
            && with?.Contains(before) != true && !(goesOn is { } person && MayGoOn(job, before, step, person))))
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
