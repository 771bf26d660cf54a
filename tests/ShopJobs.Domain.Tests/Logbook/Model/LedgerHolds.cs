using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 7: what holds a position, and what lets it go.
internal sealed partial class Ledger
{
    private readonly Remembered<JointPosition, IReadOnlyList<ModelHold>> holds = new();
    private readonly Remembered<(long, JointPosition), (ModelHold? Hold, IReadOnlyList<long> Raised)> pullHolds = new();

    private IReadOnlyList<ModelHold> HoldsOn(JointPosition position) =>
        holds.Of(position, at => [.. lines.Select(line => HoldOf(line, at)).OfType<ModelHold>()]);

    private ModelHold? HoldOf(Line line, JointPosition position) => line.Entry switch
    {
        TorqueRecorded fact when fact.Position == position || line.RidesOn == position => HoldOfPull(line, position).Hold,
        HandTightened fact when fact.Positions.Contains(position) && line.Problems.Contains(HoldReason.NotOpened) => Simple(line, position),
        Settled fact when fact.Positions.Contains(position) && line.Problems is not ([] or [HoldReason.ReTorqueEarly]) => Simple(line, position),
        PositionHeld fact when fact.Positions.Contains(position) => Simple(line, position),
        Opened when line.Late.Contains(position) => Simple(line, position),
        Witnessed { Accepted: false } when line.About.Any(pull => Fact(At(pull)).Position == position) => Simple(line, position),

        Corrected { Restated: null } fact when IsTurn(At(fact.Target)) && Fact(At(fact.Target)).Position == position
            && FirstOpenedAfter(position, fact.Target) is var opened && (opened == 0 || opened > line.Number) => HoldOfVoid(line, position),

        // Rework or replace for a doubt, or for another job's pull, holds until the position is opened.
        Decided { Disposition: not Disposition.UseAsIs } fact when fact.Position == position
            && !IsSaidOpenAfter(position, line.Number)
            && (line.Doubts.Count > 0 || line.About.Any(number => Upto(line.Number - 1).HoldOf(At(number), position) is null)) =>
            new ModelHold(line.Number, true, [line.Person]),
        _ => null,
    };

    private bool IsSaidOpenAfter(JointPosition position, long number) =>
        lines.Skip((int)number).Any(line => line.Opens.Contains(position) || line.Reopens.Contains(position));

    private ModelHold? Simple(Line line, JointPosition position)
    {
        var decision = DecisionAbout(line.Number, position);
        return decision is { Entry: Decided { Disposition: Disposition.UseAsIs } }
            || (decision is not null && (IsSaidOpenAfter(position, decision.Number) || LastOpened(position) > line.Number))
            ? null
            : new ModelHold(line.Number, decision is not null, DoersAt(line, line.Number, position));
    }

    /// <summary>An angle that was turned is not turned back by voiding its record: it holds until it is decided, or a second person confirms that it never was.</summary>
    private ModelHold? HoldOfVoid(Line line, JointPosition position)
    {
        var decision = DecisionAbout(line.Number, position);
        var confirmed = line.Entry is Corrected { WasPulled: true }
            ? null
            : lines.FirstOrDefault(later => later.Entry is CorrectionConfirmed fact && fact.Correction == line.Number);
        return confirmed is not null && (decision is null || confirmed.Number < decision.Number) ? null : Simple(line, position);
    }

    /// <summary>The hold of a pull on its own position, or on the one that it reaches through to, and the lines that raised it.</summary>
    private (ModelHold? Hold, IReadOnlyList<long> Raised) HoldOfPull(Line pull, JointPosition position) => pullHolds.Of((pull.Number, position), _ =>
    {
        var raised = new List<long>();
        ModelHold? hold = null;
        var opened = false;
        Raise(pull, pull.Problems, this);
        foreach (var line in lines.Skip((int)pull.Number))
        {
            if (line.Opens.Contains(position) || line.Reopens.Contains(position))
            {
                opened |= line.Opens.Contains(position);
                hold = hold is { IsDecided: true } ? null : hold;
            }

            if (line.Entry is Decided decided && decided.Position == position && line.About.Contains(pull.Number) && hold is { IsDecided: false })
            {
                hold = opened || decided.Disposition == Disposition.UseAsIs ? null : hold with { IsDecided = true };
            }
            else if (IsPullOfCycle(pull.Number, Fact(pull).Position, line.Number))
            {
                Judge(line);
            }
        }

        return (hold, raised);

        void Judge(Line line)
        {
            if (line.Entry is Corrected fact && fact.Target == pull.Number && hold is null)
            {
                opened = false;
                Raise(line, Upto(line.Number).ProblemsNow(pull), Upto(line.Number));
            }
            else if (line.Entry is CorrectionConfirmed confirmed && hold is { IsDecided: false } && IsLifted(At(confirmed.Correction), line.Number))
            {
                hold = null;
            }
        }

        // One pull that was reported twice, or a slip of typing that is in order now, each said by the doer.
        bool IsLifted(Line said, long at) => said.Person == pull.Person && said.Entry is Corrected correction && correction.Target == pull.Number
            && (correction.Restated is null
                ? correction.WasPulled == false && pull.Problems.Contains(HoldReason.SecondPull)
                : !Holds(Upto(at).ProblemsNow(pull)));

        void Raise(Line line, IReadOnlyList<HoldReason> problems, Ledger then)
        {
            var reaches = Fact(pull).Position == position || problems.Contains(HoldReason.TurnOutside)
                || (problems.Contains(HoldReason.OverRange) && then.ValuesOf(pull, line.Number).Any(value => value > JointMaximum(pull)));
            if (reaches && Holds(problems))
            {
                hold = new ModelHold(pull.Number, false, DoersAt(pull, Fact(pull).Position == position ? line.Number : line.Number - 1, position));
                raised.Add(line.Number);
            }
        }
    });

    // What the joint bears at all: the upper end of its final stage, or of this one where that is higher.
    private decimal JointMaximum(Line pull) =>
        Math.Max(GroupOf(pull).Rules.Stages[^1].Permitted.Maximum.NewtonMetres, GroupOf(pull).Stage(Fact(pull).Stage).Permitted.Maximum.NewtonMetres);

    /// <summary>The values by which a pull is judged, at the fastener: the one confirmed last, or the one recorded, and all restated since.</summary>
    private IEnumerable<decimal> ValuesOf(Line pull, long at)
    {
        var restated = CorrectionsOf(pull.Number).Where(line => line.Number <= at && line.Entry is Corrected { Restated: not null }).ToList();
        var ground = restated.FindLastIndex(IsConfirmed);
        var values = restated.Skip(Math.Max(ground, 0)).Select(line => ((Corrected)line.Entry).Restated);
        return (ground < 0 ? values.Prepend(Fact(pull).Value) : values).OfType<EnteredTorque>()
            .Select(value => AtFastener(value.NewtonMetres, pull.RunDown, GroupOf(pull).Rules, Tool(Fact(pull).Tool, pull.At)));
    }

    /// <summary>The pull by which this line holds a position that was reached through another one; null when it holds none.</summary>
    private Line? HeldThrough(Line line, JointPosition position)
    {
        var pull = line.Entry is Corrected fact ? At(fact.Target) : line;
        return pull.RidesOn == position && HoldOfPull(pull, position).Raised.Contains(line.Number) ? pull : null;
    }

    private static bool Holds(IReadOnlyList<HoldReason> problems) =>
        problems.Count > 0 && problems is not ([HoldReason.UnderRange] or [HoldReason.NoRightToRecord]);

    /// <summary>What an undecided hold was laid on for.</summary>
    private IEnumerable<HoldReason> ReasonsOf(ModelHold hold, JointPosition position) => At(hold.Number) switch
    {
        { Entry: TorqueRecorded fact } pull when fact.Position == position && FirstOpenedAfter(position, pull.Number) == 0 => ProblemsNow(pull),

        // Opened since, the hold says only what was written first.
        { Entry: TorqueRecorded fact } when fact.Position == position => fact.Problems.Take(1),
        { Entry: TorqueRecorded } => [HoldReason.OverRange],
        { Entry: HandTightened } => [HoldReason.NotOpened],
        { Entry: Opened } => [HoldReason.CellMoved],
        { Entry: Settled fact } => fact.Problems.Take(1),
        _ => [],
    };

    // Rule 1: use as is stands in on the final record it names.
    private bool IsOfALowerStage(ModelHold hold, JointPosition position) =>
        At(hold.Number) is { Entry: TorqueRecorded fact } pull && fact.Position == position && FirstOpenedAfter(position, pull.Number) == 0
        && fact.Stage < GroupOf(pull).Rules.Stages.Count;

    private Line? DecisionAbout(long number, JointPosition position) => lines.Skip((int)number)
        .FirstOrDefault(line => line.Entry is Decided fact && fact.Position == position && line.About.Contains(number));

    private IReadOnlyList<PersonId> DoersAt(Line line, long number, JointPosition position) =>
        [line.Person, .. Upto(number).WorkersOn(position)];
}
