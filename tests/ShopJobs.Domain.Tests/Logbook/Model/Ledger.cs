using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>
/// The rules that may never break, read a second time and as plainly as can be: a flat list of what was recorded, scanned from
/// the start at every question. It shares no rule with the product. A ledger never changes; what it was asked once it remembers.
/// </summary>
internal sealed partial class Ledger(
    JointRegister register, IReadOnlyDictionary<ToolId, List<Recorded>> tools, Dictionary<JobId, JobReading> jobs, IReadOnlyList<Line> written, TrueClock clock)
{
    private readonly IReadOnlyList<Line> lines = WithoutWhatNeverWas(written);
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
        return new(register, tools, jobs, [.. written, .. more], clock) { earlier = earlier };
    }

    /// <summary>The same ledger, asked again: a tool's logbook has grown, or the clock was set.</summary>
    public Ledger Anew(TrueClock set) => new(register, tools, jobs, written, set);

    /// <summary>The ledger as it was when this line was the newest.</summary>
    private Ledger Upto(long number) => number >= lines.Count
        ? this
        : earlier.Of(number, _ => new(register, tools, jobs, [.. written.Take((int)number)], clock) { earlier = earlier });

    private Line At(long number) => lines[(int)number - 1];

    // An opening that somebody voided and a second person confirmed was never done: its line stays and opens nothing. New hardware that
    // somebody voided was none.
    private static IReadOnlyList<Line> WithoutWhatNeverWas(IReadOnlyList<Line> written)
    {
        var never = (from line in written
                     where line.Entry is CorrectionConfirmed
                     let voided = written[(int)((CorrectionConfirmed)line.Entry).Correction - 1]
                     where voided.Entry is Corrected fact && written[(int)fact.Target - 1].Entry is Opened
                     select ((Corrected)voided.Entry).Target).ToHashSet();
        var notNew = (from line in written
                      where line.Entry is Corrected { Restated: null }
                      let target = ((Corrected)line.Entry).Target
                      where written[(int)target - 1].Entry is FittedNew
                      select target).ToHashSet();
        return never.Count + notNew.Count == 0 ? written :
        [
            .. written.Select(line => never.Contains(line.Number) ? line with { Opens = [], Reopens = [], Undoes = [] }
                : notNew.Contains(line.Number) ? line with { Problems = [HoldReason.CellMoved] }
                : line),
        ];
    }

    // --- openings ---

    private long LastOpened(JointPosition position) =>
        lastOpened.Of(position, at => lines.LastOrDefault(line => line.Opens.Contains(at))?.Number ?? 0);

    /// <summary>Openings of a position: the cycle it is in. OPEN on what is open and bare starts none.</summary>
    private int CycleOf(JointPosition position) => lines.Count(line => line.Opens.Contains(position));

    private bool IsLate(IReadOnlyList<JointPosition> positions, IReadOnlyList<int>? cycles, JointPosition position) =>
        cycles is not null && cycles.ElementAtOrDefault(positions.ToList().IndexOf(position)) != CycleOf(position);

    private long FirstOpenedAfter(JointPosition position, long number) =>
        lines.Skip((int)number).FirstOrDefault(line => line.Opens.Contains(position))?.Number ?? 0;

    private IEnumerable<Line> Since(JointPosition position) => lines.Skip((int)LastOpened(position));

    // --- corrections ---

    private IEnumerable<Line> CorrectionsOf(long number) => lines.Where(line => line.Entry is Corrected fact && fact.Target == number);

    private bool IsConfirmed(Line correction) =>
        lines.Any(line => line.Entry is CorrectionConfirmed fact && fact.Correction == correction.Number);

    private bool IsVoid(long number) => VoidedAt(number) > 0;

    /// <summary>Said never to have been pulled, and confirmed: as if it had never been written.</summary>
    private bool IsGone(long number) =>
        CorrectionsOf(number).Any(line => line.Entry is Corrected { Restated: null, WasPulled: not true } && IsConfirmed(line));

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

    /// <summary>Decided <em>use as is</em>, and neither corrected nor pulled again since.</summary>
    private bool IsAccepted(Line pull) =>
        lines.LastOrDefault(line => line.Entry is Decided { Disposition: Disposition.UseAsIs } fact && fact.Position == Fact(pull).Position
            && line.About.Contains(pull.Number)) is { } decision
        && !CorrectionsOf(pull.Number).Any(line => line.Number > decision.Number)
        && !lines.Skip((int)decision.Number).Any(line => line.Entry is TorqueRecorded later && later.Position == Fact(pull).Position);

    private bool Passes(Line pull) => passes.Of(
        pull.Number,
        number => !IsVoid(number) && RestsOnAll(pull)
            && (IsAccepted(pull) || ProblemsNow(pull).Count == 0 || (NeedsCountersign(pull) && CountersignOf(number) is not null)));

    private bool RestsOnAll(Line pull) => pull.Rests.All(Stands) && !pull.Conditions.Any(IsVoid);

    /// <summary>Nothing is wrong but that whoever pulled it had no right to.</summary>
    private bool NeedsCountersign(Line pull) => !IsAccepted(pull) && ProblemsNow(pull) is [HoldReason.NoRightToRecord];

    private Line? CountersignOf(long number) =>
        lines.FirstOrDefault(line => line.Entry is Countersigned fact && fact.Records.Contains(number) && !IsVoid(line.Number));

    private bool IsShort(Line pull) => !IsAccepted(pull) && ProblemsNow(pull) is [HoldReason.UnderRange];

    /// <summary>Whether something that a pull rests on was taken back by a correction.</summary>
    private bool Stands(long number)
    {
        if (At(number).Entry is not TorqueRecorded fact)
        {
            return !IsVoid(number);
        }

        if (At(number).Conditions.Any(IsVoid))
        {
            return false;
        }

        if (!CorrectionsOf(number).Any() && !IsCountersignVoid(number))
        {
            return true;
        }

        var opened = FirstOpenedAfter(fact.Position, number);
        return opened == 0
            ? Passes(At(number))
            : Upto(opened).Passes(At(number)) && !CorrectionsOf(number).Any(line => line.Number > opened);
    }

    private bool IsCountersignVoid(long number) => CountersignOf(number) is null
        && lines.Any(line => line.Entry is Countersigned fact && fact.Records.Contains(number));

    private IReadOnlyList<Line> Newest(JointPosition position, int stage) =>
    [
        .. PullsOn(position).Where(line => Fact(line).Stage == stage).GroupBy(line => Fact(line).Visit).Select(cell => cell.Last()),
    ];

    private bool IsDone(JointPosition position, int stage) => done.Of((position, stage), _ => ScanDone(position, stage));

    private bool ScanDone(JointPosition position, int stage)
    {
        var newest = Newest(position, stage);
        return newest.Count > 0
            && newest.Count >= GroupOf(newest[0]).Stage(stage).Visits.Count(visit => visit == position.Number)
            && newest.All(Passes);
    }

    private bool IsAtTorque(JointPosition position) =>
        LastPull(position) is { } last && GroupOf(last).Rules.Stages.All(stage => IsDone(position, stage.Number));
}
