using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>One hold as the model finds it.</summary>
internal sealed record ModelHold(long Number, bool IsDecided, IReadOnlyList<PersonId> Doers);

// Where a position stands.
internal sealed partial class Ledger
{
    private enum On
    {
        AsFound,
        Nothing,
        New,
        Run,
    }

    private readonly Remembered<JointPosition, On> on = new();
    private readonly Remembered<JointPosition, IReadOnlyList<ToolDoubt>> doubts = new();

    private readonly HashSet<JointPosition> named = [.. WithoutWhatNeverWas(written).SelectMany(line => line.Names)];

    public bool Counts(JointPosition position) => named.Contains(position) && ProblemsOf(position, null, null, null).Count == 0;

    /// <summary>Why a position does not count: rule 1, 7 and 9.</summary>
    public IReadOnlyList<HoldReason> ProblemsOf(JointPosition position, int? stage, JobReading? job, GroupAt? group)
    {
        var problems = new List<HoldReason>();
        if (HoldsOn(position).Count > 0)
        {
            problems.Add(HoldReason.Held);
        }

        if (DoubtsOn(position).Count > 0)
        {
            problems.Add(HoldReason.ToolInDoubt);
        }

        if (!(stage is { } asked ? IsDone(position, asked) : IsAtTorque(position)))
        {
            problems.Add(HoldReason.NotAtStage);
        }

        var number = stage ?? (LastPull(position) is { } last ? GroupOf(last).Rules.Stages.Count : 0);
        if (!IsWitnessed(position, number, stage is not null && group!.Stage(number).Witness))
        {
            problems.Add(HoldReason.NotWitnessed);
        }

        if (!IsCarried(position, temporary: false))
        {
            problems.Add(HoldReason.RidesOnLoose);
        }

        if (IsLooseBehind(position))
        {
            problems.Add(HoldReason.UnfinishedBehind);
        }

        if (job is not null && ForeignOn(position, number, job, group!).Any())
        {
            problems.Add(HoldReason.OtherSpecification);
        }

        return problems;
    }

    public PositionState Shows(JointPosition position)
    {
        if (!named.Contains(position))
        {
            return PositionState.AsFound;
        }

        if (HoldsOn(position).Count > 0)
        {
            return PositionState.Held;
        }

        if (DoubtsOn(position).Count > 0)
        {
            return PositionState.Doubted;
        }

        switch (WhatIsOn(position))
        {
            case On.AsFound: return PositionState.AsFound;
            case On.Nothing: return PositionState.Open;
            case On.New: return PositionState.NotFitted;
        }

        if (!IsAtTorque(position))
        {
            return IsDone(position, 1) ? PositionState.Staged : PositionState.HandTight;
        }

        var last = LastPull(position)!;
        return SettledBy(position) is { } settled && settled.Number > last.Number ? PositionState.Settled
            : OwesReTorque(position) && DrivenSince(last.Number) ? PositionState.Due
            : SeenBy(last) is not null ? PositionState.Checked
            : PositionState.AtTorque;
    }

    private bool IsAsFound(JointPosition position) => WhatIsOn(position) == On.AsFound && LastPull(position) is null;

    private On WhatIsOn(JointPosition position) => on.Of(position, ScanWhatIsOn);

    private On ScanWhatIsOn(JointPosition position)
    {
        var on = On.AsFound;
        var hand = 0L;
        foreach (var line in lines)
        {
            (on, hand) = line.Entry switch
            {
                _ when line.Opens.Contains(position) => (On.Nothing, 0),
                FittedNew fact when fact.Positions.Contains(position) && line.Problems.Count == 0 => (On.New, 0),
                HandTightened fact when fact.Positions.Contains(position) && line.Problems.Count == 0 => (On.Run, line.Number),
                Corrected { Restated: null } fact when hand != 0 && fact.Target == hand => (On.Nothing, 0),
                _ when hand != 0 && line.TakesBack.Contains(hand) => (On.Nothing, 0),
                TorqueRecorded fact when fact.Position == position && line.Problems.Count == 0 => (On.Run, hand),
                Countersigned fact when fact.Records.Any(number => IsPullOfCycle(number, position, line.Number)) => (On.Run, hand),
                Decided { Disposition: Disposition.UseAsIs } fact when fact.Position == position && TakesAPull(line) => (On.Run, hand),
                CorrectionConfirmed fact when ((Corrected)At(fact.Correction).Entry).Target is var target && IsPullOfCycle(target, position, line.Number)
                    && Upto(line.Number).Passes(At(target)) => (On.Run, hand),
                _ => (on, hand),
            };
        }

        return on;
    }

    // A decision "use as is" about a pull of the present cycle that nobody had voided.
    private bool TakesAPull(Line decision) => decision.About.Any(number => At(number).Entry is TorqueRecorded fact
        && fact.Position == ((Decided)decision.Entry).Position
        && !Upto(decision.Number).IsVoid(number)
        && Upto(decision.Number).LastOpened(fact.Position) < number);

    private bool IsOn(JointPosition position) => Since(position).Any(line => IsReport(line, position));

    /// <summary>A report of something on it, counting or not; one that came late says nothing of it as it is.</summary>
    private static bool IsReport(Line line, JointPosition position) => line.Entry switch
    {
        FittedNew fact => fact.Positions.Contains(position) && line.Problems.Count == 0,
        HandTightened fact => fact.Positions.Contains(position) && !line.Problems.Contains(HoldReason.CellMoved),
        TorqueRecorded fact => fact.Position == position,
        _ => false,
    };

    private Line? SettledBy(JointPosition position) => Since(position).LastOrDefault(line =>
        line.Entry is Settled fact && fact.Positions.Contains(position) && line.Problems.Count == 0) is { } settled && !IsVoid(settled.Number)
            ? settled
            : null;

    private bool OwesReTorque(JointPosition position) => IsAtTorque(position)
        && LastPull(position) is { } last
        && !(SettledBy(position) is { } settled && settled.Number > last.Number)
        && GroupOf(last).Rules.ReTorque is { Forbidden: false, AfterKm: not null };

    /// <summary>Rule 9: doubts of tools on pulls and re-torques of this cycle that the lead has not decided.</summary>
    private IReadOnlyList<ToolDoubt> DoubtsOn(JointPosition position) => doubts.Of(position, ScanDoubts);

    private IReadOnlyList<ToolDoubt> ScanDoubts(JointPosition position)
    {
        var decided = Since(position).Where(line => line.Entry is Decided fact && fact.Position == position).SelectMany(line => line.Doubts).ToList();
        return
        [
            .. from done in ToolWorkOn(position)
               from doubt in Tool(done.Tool).DoubtsOn(done.Line.Day, done.Line.At)
               let named = new ToolDoubt(done.Tool, doubt)
               where !decided.Contains(named)
               select named,
        ];
    }

    /// <summary>Every use of a tool that a position stands on; of a stud those of the nuts that drove it too.</summary>
    private IEnumerable<(Line Line, ToolId Tool)> ToolWorkOn(JointPosition position)
    {
        var pulls = PullsOn(position).SelectMany(line => line.DrivenBy.Select(At).Append(line)).Select(line => (line, Fact(line).Tool));
        return SettledBy(position) is { } settled ? pulls.Append((settled, ((Settled)settled.Entry).Tool)) : pulls;
    }

    /// <summary>Passing pulls of another job that this job's step does not take.</summary>
    private IEnumerable<Line> ForeignOn(JointPosition position, int stage, JobReading job, GroupAt here) =>
        from pull in Newest(position, stage)
        where Fact(pull).Job != job.Id && !IsAccepted(pull) && Passes(pull)
        let theirs = GroupOf(pull).Rules
        let ours = here.Rules
        where !IsWithin(pull, ours.Stages[stage - 1])
            || theirs.Condition != ours.Condition
            || theirs.Hardware != ours.Hardware
            || theirs.Stages.Count != ours.Stages.Count
            || ours.Stages[stage - 1].Conditions.Except(theirs.Stages[stage - 1].Conditions).Any()
            || ours.Stages[stage - 1].Visits.Count(v => v == position.Number) != theirs.Stages[stage - 1].Visits.Count(v => v == position.Number)
        select pull;

    private bool IsWithin(Line pull, Stage asked)
    {
        var fact = Fact(pull);
        if (asked.Turn is { } turn)
        {
            return fact.AngleDegrees >= turn.Minimum && fact.AngleDegrees <= turn.Maximum;
        }

        var torque = CorrectionsOf(pull.Number).Select(line => ((Corrected)line.Entry).Restated).LastOrDefault(value => value is not null) ?? fact.Value;
        return torque is { } onTool && AtFastener(onTool.NewtonMetres, pull.RunDown, GroupOf(pull).Rules, Tool(fact.Tool, pull.At)) is var value
            && value >= asked.Permitted.Minimum.NewtonMetres && value <= asked.Permitted.Maximum.NewtonMetres;
    }
}
