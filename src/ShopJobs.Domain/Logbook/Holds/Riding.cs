using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a joint rides on has to be as found, or finished, before the joint is worked and as long as it counts.</summary>
public static class Riding
{
    /// <summary>Why what a position rides on does not carry it; null when it does, or the position rides on nothing.</summary>
    /// <param name="temporary">A temporary joint may ride on one that is hand-tight: the two nuts that drive a stud do.</param>
    public static HoldPoint? Against(CarState state, Circumstances now, JointPosition position, bool temporary)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        if (now.Register.RiddenBy(position) is not { } ridden || state.Of(ridden) is not { } book || book is { IsAsFound: true, Holds.IsEmpty: true })
        {
            return null;
        }

        return temporary && book is { Fitting: Fitting.HandTight, Holds.IsEmpty: true }
            ? null
            : PositionRules.All.SelectMany(rule => rule.Find(new PositionQuestion(state, now, book, null, null, null))).FirstOrDefault()
                ?? UnsignedCure(state, now, book);
    }

    // A cure that its own job names for the ridden joint has to be signed before anything is set on it.
    private static HoldPoint? UnsignedCure(CarState state, Circumstances now, PositionBook book)
    {
        if (book.InForce is not { } id || !state.Jobs.TryGetValue(id, out var job))
        {
            return null;
        }

        var placed = now.Placed(job);
        var cures = from step in placed.Steps
                    from wait in step.Step.WaitsFor.OfType<WaitsFor.ForCure>()
                    where placed.GroupsFor(wait.Group, step.Place).Any(instance => instance.Joint == book.Position.Joint)
                    where state.StandingOf(job, placed, step) != StepStanding.Signed
                    select new HoldPoint(HoldReason.CureNotSigned) { Job = job.Id, Step = step.Id, Position = book.Position };
        return cures.FirstOrDefault();
    }
}
