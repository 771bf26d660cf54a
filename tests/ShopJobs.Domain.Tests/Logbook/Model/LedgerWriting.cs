using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Writes an accepted command as the model understands it.
internal sealed partial class Ledger
{
    /// <summary>The lines of an accepted command. Positions, values and people are the entry's facts; the rest is the model's own.</summary>
    public IReadOnlyList<Line> LinesOf(Command command, IReadOnlyList<Recorded> entries, DateTime at, DateOnly day, IReadOnlySet<Right> rights) =>
        entries.Select(recorded => new Line(recorded.Number, at, day, recorded.Person, recorded.Entry) { Off = clock.Off }).ToList() is var lines && command is ConfirmStep { With.Count: > 0 } together
            ? Together(together, lines, rights)
            : [.. lines.Select(line => Understood(command, line, rights))];

    private Line Understood(Command command, Line line, IReadOnlySet<Right> rights) => (line.Entry, command) switch
    {
        (Opened, OpenPositions open) => WithoutLate(Opening(line, LateOf(open, late: false)), LateOf(open, late: false), LateOf(open, late: true)),
        (FittedNew fact, FitNew fit) => line with { Problems = IsLate(fit.Positions, fit.Cycles, fact.Positions[0]) ? [HoldReason.CellMoved] : Those((HoldReason.ReportedByAnother, fit.ReportedFor is not null), (HoldReason.EarlierSession, IsOfAnotherSession(fit.MadeIn))) },
        (Opened, FitNew fit) => Opening(line, ClosedOf(fit)),
        (ResultRecorded, RecordResult result) => ProblemsOfResult(result, line) is var problems
            ? line with { Problems = problems, Undoes = [.. OpeningOf([], HangsOn(result)).Undoes, .. problems.Count > 0 ? [result.Name] : Array.Empty<string>()] }
            : line,
        (Opened, RecordResult result) => line with { Opens = OpeningOf([], HangsOn(result)).Opens, BySetting = true },
        (HandTightened fact, HandTighten hand) => line with { Problems = ProblemsOfHand(hand, fact.Positions[0]) },
        (TorqueRecorded, RecordTorque pull) => line with
        {
            Problems = ProblemsOfPull(pull, line, rights),
            Rests = RestsOfPull(pull),
            RunDown = RunDownOf(pull),
            RidesOn = RiddenBy(pull.Position),
            DrivenBy = DriversOf(pull),
            Conditions = ConditionsOf(pull, line.At),
        },
        (Settled fact, RecordSettled settled) => line with { Problems = ProblemsOfSettling(settled, fact.Positions[0], line, rights) },
        (Witnessed, Witness witness) => line with { About = SeenNow(witness) },
        (Decided fact, DecideHold) => line with { About = AboutNow(fact.Position), Doubts = [.. DoubtsOn(fact.Position).Distinct()] },
        (StepFinished fact, FinishStep) => line with { Rests = RestsOfStep(jobs[fact.Job], jobs[fact.Job].Step(fact.Step)!) },
        (StepConfirmed fact, ConfirmStep signed) => line with
        {
            Rests = RestsOfStep(jobs[fact.Job], jobs[fact.Job].Step(fact.Step)!),
            ByTrainee = !signed.NotApplicable && !rights.Contains(Right.Record),
        },
        (Corrected { Restated: null } fact, VoidEntry) => line with
        {
            Undoes = At(fact.Target).Entry is ResultRecorded result && ResultOf(result.Name)?.Number == fact.Target ? [result.Name] : [],
            TakesBack = At(fact.Target) is { Entry: FittedNew fitted, Problems.Count: 0 }
                ? [.. fitted.Positions.Where(at => LastOpened(at) < fact.Target).Select(HandTightBy).Where(hand => hand > fact.Target).Distinct()]
                : [],
        },
        (CarMoved, ReportMoved) => line with { Against = Reasons(AgainstMoving(DateOnly.FromDateTime(line.At))) },
        (Left, ReportGone gone) => line with { Against = Reasons(AgainstLeaving(gone.Way, gone.Odometer?.Km, DateOnly.FromDateTime(line.At))), Under = RoadNow(DateOnly.FromDateTime(line.At)) },
        (Left, LetGo) => line with { Under = RoadNow(DateOnly.FromDateTime(line.At)) },
        (LookedOver, LookOver) => line with { About = [.. ToLookOver.Select(move => move.Number)] },
        (Released { Kind: ReleaseKind.Road or ReleaseKind.Track } fact, Release release) => line with
        {
            Without = WithoutOf(fact.Kind, release),
            Closes = [.. Running.Where(job => job.Steps.All(step => StandingOf(job, step) == StepStanding.Signed)).Select(job => job.Id)],
        },
        (Released { Kind: ReleaseKind.RoadTest } fact, Release release) => line with { Without = WithoutOf(fact.Kind, release) },
        (JobEnded or JobCancelled, JobCommand ending) => line with { Closes = [ending.Job] },
        (JobTakenBack, TakeJobBack wrong) => line with { Closes = [wrong.Job], LeftOpen = LeftOpenBy(wrong.Job) },
        (JobResumed, ResumeJob resume) => line with { TakesBack = RunDownAgain(resume.Job) },
        _ => line,
    };

    private Line Opening(Line line, IReadOnlyList<JointPosition> positions)
    {
        var (opens, reopens, undoes) = positions.Count == 0 ? ([], [], []) : OpeningOf(positions);
        return line with { Opens = opens, Reopens = reopens, Undoes = undoes };
    }

    // What is reported late is not opened by hand, also where the joint is redone as a whole.
    private Line WithoutLate(Line line, IReadOnlyList<JointPosition> timely, IReadOnlyList<JointPosition> late)
    {
        var byHand = timely.SelectMany(WithJoint).ToHashSet();
        return line with { Opens = [.. line.Opens.Where(at => !late.Contains(at) || !byHand.Contains(at))], Late = late };
    }

    private IReadOnlyList<JointPosition> LateOf(OpenPositions open, bool late) =>
        [.. open.Positions.Where(at => (IsLate(open.Positions, open.Cycles, at) && !IsBare(at)) == late)];

    private IReadOnlyList<long> DriversOf(RecordTorque pull) =>
        jobs[pull.Job].Group(pull.Group, pull.Position.Place) is { Rules.Jam: { } jam } group && jobs[pull.Job].Group(jam.Group, group.Place) is { } pair
            ? [.. PullsOn(pair.Joint.At(pull.Position.Number)).Select(line => line.Number)]
            : [];

    private IReadOnlyList<long> ConditionsOf(RecordTorque pull, DateTime at) =>
    [
        .. jobs[pull.Job].Group(pull.Group, pull.Position.Place)!.Stage(pull.Stage).Conditions
            .Select(condition => DeclaredBy(condition, pull.Position.Place, at)).Where(number => number > 0),
    ];

    // New hardware on a position that is not bare means that it was opened.
    private IReadOnlyList<JointPosition> ClosedOf(FitNew fit) =>
        [.. fit.Positions.Where(position => !IsLate(fit.Positions, fit.Cycles, position)).Where(position => WhatIsOn(position) is On.AsFound or On.Run || LastPull(position) is not null)];

    private IReadOnlyList<Undone> HangsOn(RecordResult result) =>
        result.Name.Split(':') is ["setting", var name] && register.Settings.TryGetValue(name, out var undone) ? undone : [];

    /// <summary>Where an entry and the model's line of it differ; null when they agree.</summary>
    public static string? Difference(Command command, Line line)
    {
        return (line.Entry, command) switch
        {
            (Opened fact, _) => Differ("opens", fact.Positions.Except(fact.Late ?? []).Concat(fact.AlsoOpened), line.Opens.Concat(line.Reopens))
                ?? Differ("late", fact.Late ?? [], line.Late)
                ?? (command is RecordResult ? null : Differ("undoes", fact.Undid.Select(one => one.ToString()), line.Undoes)),
            (ResultRecorded fact, _) => Differ("problems", fact.Problems ?? [], line.Problems)
                ?? Differ("undoes", fact.Undid.Select(one => one.ToString()), line.Undoes.Where(name => name != fact.Name)),
            (FittedNew fact, _) => Differ("problems", fact.Problems ?? [], line.Problems),
            (HandTightened fact, _) => Differ("problems", fact.Problems, line.Problems),
            (TorqueRecorded fact, _) => Differ("problems", fact.Problems, line.Problems) ?? Differ("rests", fact.RestsOn, line.Rests)
                ?? Differ("run-down", [fact.RunDown], [line.RunDown]) ?? Differ("rides on", [fact.RidesOn], [line.RidesOn])
                ?? Differ("driven by", fact.DrivenBy ?? [], line.DrivenBy) ?? Differ("conditions", fact.Conditions ?? [], line.Conditions),
            (Settled fact, _) => Differ("problems", fact.Problems, line.Problems),
            (StepFinished fact, _) => Differ("rests", fact.RestsOn, line.Rests),
            (StepConfirmed fact, _) => Differ("rests", fact.RestsOn, line.Rests) ?? Differ("by a trainee", [fact.ByTrainee == true], [line.ByTrainee]),
            (Witnessed fact, _) => Differ("records", fact.Records, line.About),
            (Decided fact, _) => Differ("about", fact.About, line.About) ?? Differ("doubts", fact.Doubts, line.Doubts),
            (JobResumed fact, _) => Differ("run down again", fact.RunDownAgain, line.TakesBack),
            (JobTakenBack fact, _) => Differ("left open", fact.LeftOpen, line.LeftOpen),
            (CarMoved fact, _) => Differ("against", fact.Against.Select(one => one.Reason), line.Against),
            (Left fact, _) => Differ("against", fact.Against.Select(one => one.Reason), line.Against) ?? Differ("under", [fact.Release], [line.Under]),
            (LookedOver fact, _) => Differ("moves", fact.Moves, line.About),
            (Released fact, _) => Differ("closes", fact.Closes, line.Closes) ?? Differ("without", fact.Without ?? [], line.Without),
            _ => null,
        };
    }

    private static string? Differ<T>(string what, IEnumerable<T> product, IEnumerable<T> model) =>
        product.ToHashSet().SetEquals(model) ? null : $"{what}: product [{string.Join(", ", product)}], model [{string.Join(", ", model)}]";
}
