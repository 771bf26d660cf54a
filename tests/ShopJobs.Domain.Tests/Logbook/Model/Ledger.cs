using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>
/// The rules that may never break, read a second time and as plainly as can be: a flat list of what was recorded, scanned from
/// the start at every question. It shares no rule with the product. A ledger never changes; what it was asked once it remembers.
/// </summary>
internal sealed partial class Ledger(
    JointRegister register, IReadOnlyDictionary<ToolId, List<Recorded>> tools, Dictionary<JobId, JobReading> jobs, IReadOnlyList<Line> lines)
{
    private readonly Remembered<JointPosition, long> lastOpened = new();
    private readonly Remembered<JointPosition, IReadOnlyList<Line>> pulls = new();
    private readonly Remembered<long, bool> passes = new();
    private readonly Remembered<(JointPosition, int), bool> done = new();
    private Remembered<long, Ledger> earlier = new();

    public IReadOnlyList<Line> Lines => lines;

    /// <summary>The ledger with these lines after it, the tools' logbooks being what they were.</summary>
    public Ledger With(IReadOnlyList<Line> more)
    {
        earlier.Of(lines.Count, _ => this);
        return new(register, tools, jobs, [.. lines, .. more]) { earlier = earlier };
    }

    /// <summary>The same ledger, asked anew: a tool's logbook has grown.</summary>
    public Ledger Anew() => new(register, tools, jobs, lines);

    /// <summary>The ledger as it was when this line was the newest.</summary>
    private Ledger Upto(long number) => number >= lines.Count
        ? this
        : earlier.Of(number, _ => new(register, tools, jobs, [.. lines.Take((int)number)]) { earlier = earlier });

    private Line At(long number) => lines[(int)number - 1];

    // --- openings ---

    private long LastOpened(JointPosition position) =>
        lastOpened.Of(position, at => lines.LastOrDefault(line => line.Opens.Contains(at))?.Number ?? 0);

    private long FirstOpenedAfter(JointPosition position, long number) =>
        lines.Skip((int)number).FirstOrDefault(line => line.Opens.Contains(position))?.Number ?? 0;

    private IEnumerable<Line> Since(JointPosition position) => lines.Skip((int)LastOpened(position));

    // --- corrections ---

    private IEnumerable<Line> CorrectionsOf(long number) => lines.Where(line => line.Entry is Corrected fact && fact.Target == number);

    private bool IsConfirmed(Line correction) =>
        lines.Any(line => line.Entry is CorrectionConfirmed fact && fact.Correction == correction.Number);

    private bool IsVoid(long number) => CorrectionsOf(number).Any(line => line.Entry is Corrected { Restated: null });

    private bool IsGone(long number) => CorrectionsOf(number).Any(line => line.Entry is Corrected { Restated: null } && IsConfirmed(line));

    // --- pulls ---

    private IReadOnlyList<Line> PullsOn(JointPosition position) => pulls.Of(
        position, at => [.. Since(at).Where(line => line.Entry is TorqueRecorded fact && fact.Position == at && !IsGone(line.Number))]);

    private Line? LastPull(JointPosition position) => PullsOn(position) is [.., var last] ? last : null;

    private static TorqueRecorded Fact(Line pull) => (TorqueRecorded)pull.Entry;

    private bool IsTurn(Line line) =>
        line.Entry is TorqueRecorded fact && (fact.Kind == TorqueKind.AngleTurned || GroupOf(line).Stage(fact.Stage).Turn is not null);

    private GroupAt GroupOf(Line pull) => jobs[Fact(pull).Job].Group(Fact(pull).Group, Fact(pull).Position.Place)!;

    /// <summary>Rule 8: what one person restates may only make it worse; what a second one confirmed is the new ground.</summary>
    private IReadOnlyList<HoldReason> ProblemsNow(Line pull)
    {
        var restated = CorrectionsOf(pull.Number).Where(line => line.Entry is Corrected { Restated: not null }).ToList();
        var ground = restated.FindLastIndex(IsConfirmed);
        var problems = ground < 0 ? pull.Problems : [.. pull.Problems.Except(ValueProblems).Concat(ValueProblem(ground))];
        return [.. problems.Concat(Enumerable.Range(0, restated.Count).Where(i => i > ground).SelectMany(ValueProblem)).Distinct()];

        IEnumerable<HoldReason> ValueProblem(int index) => ProblemOfValue(
            Fact(pull).Kind, ((Corrected)restated[index].Entry).Restated!.Value.NewtonMetres, pull.RunDown, GroupOf(pull).Rules, Fact(pull).Stage, Tool(Fact(pull).Tool, pull.At));
    }

    /// <summary>Decided <em>use as is</em>, and not corrected since.</summary>
    private bool IsAccepted(Line pull) =>
        lines.LastOrDefault(line => line.Entry is Decided { Disposition: Disposition.UseAsIs } && line.About.Contains(pull.Number)) is { } decision
        && !CorrectionsOf(pull.Number).Any(line => line.Number > decision.Number);

    private bool Passes(Line pull) => passes.Of(
        pull.Number, number => !IsVoid(number) && pull.Rests.All(Stands) && (IsAccepted(pull) || ProblemsNow(pull).Count == 0));

    private bool IsShort(Line pull) => !IsAccepted(pull) && ProblemsNow(pull) is [HoldReason.UnderRange];

    /// <summary>Whether something that a pull rests on was taken back by a correction.</summary>
    private bool Stands(long number)
    {
        if (At(number).Entry is not TorqueRecorded fact)
        {
            return !IsVoid(number);
        }

        var opened = FirstOpenedAfter(fact.Position, number);
        return opened == 0
            ? Passes(At(number))
            : Upto(opened).Passes(At(number)) && !CorrectionsOf(number).Any(line => line.Number > opened);
    }

    private IReadOnlyList<Line> Newest(JointPosition position, int stage) =>
    [
        .. PullsOn(position).Where(line => Fact(line).Stage == stage).GroupBy(line => Fact(line).Visit).Select(cell => cell.Last()),
    ];

    private bool IsDone(JointPosition position, int stage) => done.Of((position, stage), _ => ScanDone(position, stage));

    private bool ScanDone(JointPosition position, int stage)
    {
        var newest = Newest(position, stage);
        var whole = newest.Count > 0
            && newest.Count >= GroupOf(newest[0]).Stage(stage).Visits.Count(visit => visit == position.Number)
            && newest.All(Passes);
        return whole || NewestOfCells(position).Any(pull => Fact(pull).Stage > stage && IsAccepted(pull) && Passes(pull));
    }

    private bool IsAtTorque(JointPosition position) =>
        LastPull(position) is { } last && IsDone(position, GroupOf(last).Rules.Stages.Count);

    // --- witness ---

    private Line? SeenBy(Line pull) => lines.LastOrDefault(line => line.Entry is Witnessed { Accepted: true }
        && line.About.Contains(pull.Number)
        && !CorrectionsOf(pull.Number).Any(correction => correction.Number > line.Number)) is { } seen && !IsVoid(seen.Number) ? seen : null;

    private bool IsWitnessed(JointPosition position, int stage, bool asked) => Newest(position, stage).All(pull =>
        (!asked && !GroupOf(pull).Stage(stage).Witness) || SeenBy(pull) is not null || IsAccepted(pull));
}
