namespace ShopJobs.Domain.Logbook;

// A joint is left half done, and somebody goes on with it.
public static partial class Decider
{
    private static Verdict Leave(CarState state, LeaveHalfDone leave, Circumstances now) =>
        StoodAt(state, leave.Job, leave.Group, leave.Place, leave.Last, now, out var refused) is { } half
            ? Accept(new LeftHalfDone(leave.Job, leave.Group, half.Instance.Joint, leave.Last, leave.Words))
            : refused;

    private static Verdict GoOn(CarState state, TakeOver take, Circumstances now) =>
        StoodAt(state, take.Job, take.Group, take.Place, take.Last, now, out var refused) is { } half
            ? Accept(new WorkTakenOver(take.Job, take.Group, half.Instance.Joint, take.Last))
            : refused;

    private static HalfDone? StoodAt(CarState state, JobId id, string group, string place, long last, Circumstances now, out Verdict refused)
    {
        refused = Refuse(HoldReason.UnknownGroup);
        if (UnknownJob(state, id) is { } unknown)
        {
            refused = unknown;
            return null;
        }

        if (now.Placed(state.Jobs[id]).Group(group, place) is not { } instance)
        {
            return null;
        }

        var half = HalfDone.Of(state, instance);
        refused = Refuse(half is null ? HoldReason.NothingHalfDone : HoldReason.WentOn);
        return half?.Number == last ? half : null;
    }
}
