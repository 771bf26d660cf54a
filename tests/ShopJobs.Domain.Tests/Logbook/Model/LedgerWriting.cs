using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Writes an accepted command as the model understands it.
internal sealed partial class Ledger
{
    /// <summary>The lines of an accepted command. Positions, values and people are the entry's facts; the rest is the model's own.</summary>
    public IReadOnlyList<Line> LinesOf(Command command, IReadOnlyList<Recorded> entries, DateOnly day) =>
        [.. entries.Select(recorded => Understood(command, new Line(recorded.Number, recorded.At, day, recorded.Person, recorded.Entry)))];

    private Line Understood(Command command, Line line) => (line.Entry, command) switch
    {
        (Opened, OpenPositions open) => Opening(line, open.Positions),
        (Opened, FitNew fit) => Opening(line, ClosedOf(fit)),
        (ResultRecorded, RecordResult result) => line with { Undoes = OpeningOf([], HangsOn(result)).Undoes },
        (Opened, RecordResult result) => line with { Opens = OpeningOf([], HangsOn(result)).Opens },
        (HandTightened fact, HandTighten hand) => line with { Problems = ProblemsOfHand(hand, fact.Positions[0]) },
        (TorqueRecorded, RecordTorque pull) => line with { Problems = ProblemsOfPull(pull, line.Day), Rests = RestsOfPull(pull), RunDown = RunDownOf(pull) },
        (Settled fact, RecordSettled settled) => line with { Problems = ProblemsOfSettling(settled, fact.Positions[0], line.Day) },
        (Witnessed, Witness witness) => line with { About = SeenNow(witness) },
        (Decided fact, DecideHold) => line with { About = AboutNow(fact.Position), Doubts = [.. DoubtsOn(fact.Position).Distinct()] },
        (StepConfirmed fact, ConfirmStep) => line with { Rests = RestsOfStep(jobs[fact.Job], jobs[fact.Job].Step(fact.Step)!) },
        (Corrected { Restated: null } fact, VoidEntry) => line with
        {
            Undoes = At(fact.Target).Entry is ResultRecorded result && ResultOf(result.Name)?.Number == fact.Target ? [result.Name] : [],
        },
        (Released { Kind: not ReleaseKind.Move }, Release) => line with
        {
            Closes = [.. Running.Where(job => job.Steps.All(step => StandingOf(job, step) == StepStanding.Signed)).Select(job => job.Id)],
        },
        _ => line,
    };

    private Line Opening(Line line, IReadOnlyList<JointPosition> positions)
    {
        var (opens, undoes) = OpeningOf(positions);
        return line with { Opens = opens, Undoes = undoes };
    }

    // New hardware on a position that is not bare means that it was opened.
    private IReadOnlyList<JointPosition> ClosedOf(FitNew fit) =>
        [.. fit.Positions.Where(position => WhatIsOn(position) is On.AsFound or On.Run || LastPull(position) is not null)];

    private IReadOnlyList<Undone> HangsOn(RecordResult result) =>
        result.Name.Split(':') is ["setting", var name] && register.Settings.TryGetValue(name, out var undone) ? undone : [];

    /// <summary>Where an entry and the model's line of it differ; null when they agree.</summary>
    public static string? Difference(Command command, Line line)
    {
        return (line.Entry, command) switch
        {
            (Opened fact, _) => Differ("opens", fact.Positions.Concat(fact.AlsoOpened), line.Opens)
                ?? (command is RecordResult ? null : Differ("undoes", fact.Undid.Select(one => one.ToString()), line.Undoes)),
            (ResultRecorded fact, _) => Differ("undoes", fact.Undid.Select(one => one.ToString()), line.Undoes),
            (HandTightened fact, _) => Differ("problems", fact.Problems, line.Problems),
            (TorqueRecorded fact, _) => Differ("problems", fact.Problems, line.Problems) ?? Differ("rests", fact.RestsOn, line.Rests)
                ?? Differ("run-down", [fact.RunDown], [line.RunDown]),
            (Settled fact, _) => Differ("problems", fact.Problems, line.Problems),
            (Witnessed fact, _) => Differ("records", fact.Records, line.About),
            (Decided fact, _) => Differ("about", fact.About, line.About) ?? Differ("doubts", fact.Doubts, line.Doubts),
            (Released fact, _) => Differ("closes", fact.Closes, line.Closes),
            _ => null,
        };
    }

    private static string? Differ<T>(string what, IEnumerable<T> product, IEnumerable<T> model) =>
        product.ToHashSet().SetEquals(model) ? null : $"{what}: product [{string.Join(", ", product)}], model [{string.Join(", ", model)}]";
}
