using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 7: what holds a position, and what lets it go.
internal sealed partial class Ledger
{
    private readonly Remembered<JointPosition, IReadOnlyList<ModelHold>> holds = new();

    private IReadOnlyList<ModelHold> HoldsOn(JointPosition position) =>
        holds.Of(position, at => [.. lines.Select(line => HoldOf(line, at)).OfType<ModelHold>()]);

    private ModelHold? HoldOf(Line line, JointPosition position) => line.Entry switch
    {
        TorqueRecorded fact when fact.Position == position => HoldOfPull(line, position),
        HandTightened fact when fact.Positions.Contains(position) && line.Problems.Contains(HoldReason.NotOpened) => Simple(line, position),
        Settled fact when fact.Positions.Contains(position) && line.Problems.Count > 0 => Simple(line, position),
        PositionHeld fact when fact.Positions.Contains(position) => Simple(line, position),
        Witnessed { Accepted: false } when line.About.Any(pull => Fact(At(pull)).Position == position) => Simple(line, position),

        Corrected { Restated: null } fact when IsTurn(At(fact.Target)) && Fact(At(fact.Target)).Position == position
            && FirstOpenedAfter(position, fact.Target) is var opened && (opened == 0 || opened > line.Number) => HoldOfVoid(line, position),

        // Rework or replace for a doubt, or for another job's pull, holds until the position is opened.
        Decided { Disposition: not Disposition.UseAsIs } fact when fact.Position == position
            && LastOpened(position) < line.Number
            && (line.Doubts.Count > 0 || line.About.Any(number => Upto(line.Number - 1).HoldOf(At(number), position) is null)) =>
            new ModelHold(line.Number, true, [line.Person]),
        _ => null,
    };

    private ModelHold? Simple(Line line, JointPosition position)
    {
        var decision = DecisionAbout(line.Number, position);
        var opened = LastOpened(position) > line.Number;
        return decision is { Entry: Decided { Disposition: Disposition.UseAsIs } } || (decision is not null && opened)
            ? null
            : new ModelHold(line.Number, decision is not null, DoersAt(line, line.Number, position));
    }

    /// <summary>An angle that was turned is not turned back by voiding its record: it holds until it is decided, or a second person confirms.</summary>
    private ModelHold? HoldOfVoid(Line line, JointPosition position)
    {
        var decision = DecisionAbout(line.Number, position);
        var confirmed = lines.FirstOrDefault(later => later.Entry is CorrectionConfirmed fact && fact.Correction == line.Number);
        return confirmed is not null && (decision is null || confirmed.Number < decision.Number) ? null : Simple(line, position);
    }

    private ModelHold? HoldOfPull(Line pull, JointPosition position)
    {
        var hold = Holds(pull.Problems) ? new ModelHold(pull.Number, false, DoersAt(pull, pull.Number, position)) : null;
        var opened = false;
        foreach (var line in lines.Skip((int)pull.Number))
        {
            if (line.Opens.Contains(position))
            {
                opened = true;
                hold = hold is { IsDecided: true } ? null : hold;
            }
            else if (line.Entry is Decided decided && line.About.Contains(pull.Number) && hold is { IsDecided: false })
            {
                hold = opened || decided.Disposition == Disposition.UseAsIs ? null : hold with { IsDecided = true };
            }
            else if (line.Entry is Corrected fact && fact.Target == pull.Number && hold is null && !opened
                && Holds(Upto(line.Number).ProblemsNow(pull)))
            {
                hold = new ModelHold(pull.Number, false, DoersAt(pull, line.Number, position));
            }
        }

        return hold;
    }

    private static bool Holds(IReadOnlyList<HoldReason> problems) => problems.Count > 0 && problems is not [HoldReason.UnderRange];

    private Line? DecisionAbout(long number, JointPosition position) => lines.Skip((int)number)
        .FirstOrDefault(line => line.Entry is Decided fact && fact.Position == position && line.About.Contains(number));

    private IReadOnlyList<PersonId> DoersAt(Line line, long number, JointPosition position) =>
        [line.Person, .. Upto(number).WorkersOn(position)];
}
