using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 4 and 8: who worked on what, and whose look stands.
internal sealed partial class Ledger
{
    private readonly Remembered<(long, long), (long Since, long FellAt)> looks = new();
    private readonly Remembered<(Joint, PersonId, long), long> work = new();

    /// <summary>
    /// Everybody who recorded, held, helped, corrected or answered for something since it was opened; where a late report holds what it
    /// also opens by another joint, whoever made it too.
    /// </summary>
    private IEnumerable<PersonId> WorkersOn(JointPosition position) =>
        lines.Skip((int)Math.Max(0, LastOpened(position) - 1)).SelectMany(line => WorkersAt(line, position));

    private IEnumerable<PersonId> WorkersAt(Line line, JointPosition position) => line.Entry switch
    {
        FittedNew fact when fact.Positions.Contains(position) => [line.Person],
        HandTightened fact when fact.Positions.Contains(position) => fact.Helpers.Append(line.Person),
        TorqueRecorded fact when fact.Position == position => fact.Helpers.Append(line.Person)
            .Concat(line.DrivenBy.SelectMany(number => Fact(At(number)).Helpers.Append(At(number).Person))),
        TorqueRecorded or Corrected when HeldThrough(line, position) is { } pull => [pull.Person],
        PositionHeld fact when fact.Positions.Contains(position) => [line.Person],
        Opened when line.Late.Contains(position) => [line.Person],
        Corrected fact when IsPullOfCycle(fact.Target, position, line.Number) => [line.Person],
        Countersigned fact when fact.Records.Any(number => IsPullOfCycle(number, position, line.Number)) => [line.Person],
        _ => [],
    };

    private bool IsPullOfCycle(long number, JointPosition position, long at) => At(number).Entry is TorqueRecorded fact && fact.Position == position
        && FirstOpenedAfter(position, number) is var opened && (opened == 0 || opened > at);

    /// <summary>The first line after this one by which somebody worked on a joint; 0 when none.</summary>
    private long WorkedAfter(Joint joint, PersonId person, long number) => work.Of((joint, person, number), _ => lines.Skip((int)number)
        .FirstOrDefault(line => Enumerable.Range(1, register.Kinds[joint.Key].Positions).Any(at => WorkersAt(line, joint.At(at)).Contains(person)))?.Number ?? 0);

    private Line? SeenBy(Line pull) => lines
        .Where(line => line.Entry is Witnessed { Accepted: true } && line.About.Contains(pull.Number) && LookOn(line, pull.Number).FellAt == 0)
        .MaxBy(line => (LookOn(line, pull.Number).Since, line.Number));

    private bool IsWitnessed(JointPosition position, int stage, bool asked) => Newest(position, stage).All(pull =>
        (!asked && !GroupOf(pull).Stage(stage).Witness) || SeenBy(pull) is not null);

    /// <summary>
    /// Since when a look at a pull stands, and what it fell by: an opening, the witness's own work on the joint, a void of the look, or a
    /// correction of the pull. A look that fell by a correction stands again when the same person confirms the figure.
    /// </summary>
    private (long Since, long FellAt) LookOn(Line look, long pull) => looks.Of((look.Number, pull), _ =>
    {
        var position = Fact(At(pull)).Position;
        var worked = WorkedAfter(position.Joint, look.Person, look.Number);
        var (since, fell) = (look.Number, 0L);
        foreach (var line in lines.Skip((int)look.Number))
        {
            if (line.Opens.Contains(position))
            {
                return (since, fell == 0 ? line.Number : fell);
            }

            if (line.Number == worked || (line.Entry is Corrected { Restated: null } taken && taken.Target == look.Number))
            {
                return (since, fell == 0 ? line.Number : fell);
            }

            if (line.Entry is Corrected fact && fact.Target == pull)
            {
                fell = fell == 0 ? line.Number : fell;
            }
            else if (fell > 0 && line.Entry is CorrectionConfirmed confirmed && line.Person == look.Person
                && At(confirmed.Correction).Entry is Corrected { Restated: not null } restated && restated.Target == pull)
            {
                (since, fell) = (line.Number, 0);
            }
        }

        return (since, fell);
    });
}
