using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// What is entered from paper after it was done.
public static partial class Decider
{
    private static Verdict Declare(CarState state, DeclareFromPaper declare, Circumstances now)
    {
        if ((UnknownPositions(state, declare.Positions, now) ?? UnknownJob(state, declare.Job)) is { } unknown)
        {
            return unknown;
        }

        if (GroupsOf(state, now, declare.Job, declare.Group, declare.Positions) is not { } groups
            || declare.Stage < 0 || declare.Stage > groups[0].Group.Stages.Count)
        {
            return NotInGroup(declare.Group);
        }

        var recorded = declare.Positions.Distinct().Where(position => state.Of(position) is var book
            && (declare.Stage == 0 ? book.Fitting == Fitting.HandTight || book.Highest > 0 : book.Highest >= declare.Stage)).ToList();
        return recorded.Count > 0
            ? new Verdict.Refused([.. recorded.Select(position => new HoldPoint(HoldReason.RecordedAlready) { Position = position })])
            : Accept(new DeclaredFromPaper(
                declare.Job, declare.Group, [.. declare.Positions.Distinct()], declare.Stage, declare.DoneBy, declare.Words, [HoldReason.DeclaredFromPaper])
            {
                Turned = declare.Stage > 0 && groups[0].Group.Stages[declare.Stage - 1].Turn is not null ? true : null,
            });
    }

    // A late report from paper is one of a moment: not of one to come, and not of one before what is recorded of the same fasteners.
    private static Verdict? NotOfThatMoment(CarState state, IReadOnlyList<JointPosition> positions, OnPaper? paper, Circumstances now) =>
        paper is { } card && PaperMoments.Against(state, positions, card.At, now) is { } reason ? Refuse(reason) : null;
}
