using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Whether a step's sign-off is valid.</summary>
public enum StepStanding
{
    NotSigned,

    /// <summary>Signed, and all it rests on is valid.</summary>
    Signed,

    /// <summary>Signed once; something it rested on was voided, opened over or undone.</summary>
    Void,

    /// <summary>Signed, but a step it waited for is not signed any more, or was signed again.</summary>
    ToReconfirm,

    /// <summary>Signed by a trainee, and nobody who stood by has countersigned it.</summary>
    AwaitsCountersign,
}

/// <summary>Derives whether sign-offs are valid.</summary>
public static class StepStandings
{
    /// <summary>The standing of a step instance of a job.</summary>
    public static StepStanding StandingOf(this CarState state, JobBook job, PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        return Find(step, []);

        StepStanding Find(StepInstance instance, Dictionary<string, StepStanding> known)
        {
            if (!known.TryGetValue(instance.Id, out var standing))
            {
                known[instance.Id] = standing = Judge(instance, known);
            }

            return standing;
        }

        StepStanding Judge(StepInstance instance, Dictionary<string, StepStanding> known)
        {
            if (!job.SignOffs.TryGetValue(instance.Id, out var sign))
            {
                return StepStanding.NotSigned;
            }

            // Where a step before it fell, this one is only to be confirmed again.
            if (!state.IsIntact(job, placed, instance, sign.Number, sign.Fact.RestsOn))
            {
                return StepStanding.Void;
            }

            var before = placed.Before(instance).ToList();
            return before.TrueForAll(other => Find(other, known) == StepStanding.Signed
                && sign.Fact.RestsOn.Contains(job.SignOffs[other.Id].Number))
                ? sign.AwaitsCountersign ? StepStanding.AwaitsCountersign : StepStanding.Signed
                : StepStanding.ToReconfirm;
        }
    }

    /// <summary>True while what a step's sign-off, or the word that it is done, rests on stands; the steps before it apart.</summary>
    /// <param name="number">Its entry.</param>
    internal static bool IsIntact(this CarState state, JobBook job, PlacedProcedure placed, StepInstance step, long number, IReadOnlyList<long> restsOn)
    {
        return !state.Fallen.ContainsKey(number)
            && !restsOn.Any(on => HasFallen(on) && !IsSignOff(on))
            && !JointsOf(placed, step).Any(position => WasOpenedAgain(state.Of(position)));

        // What an opening takes away after the job's end leaves its sign-offs standing; a correction has the job run again.
        bool HasFallen(long on) => state.Fallen.GetValueOrDefault(on) is var by && by > number && IsOfTheJob(by);

        // The first opening of a joint in a job is what the job is there for; one that ends a cycle somebody had begun is not.
        bool WasOpenedAgain(PositionBook book) =>
            book.OpenedBy > number && book.TouchedBefore > job.Number && IsOfTheJob(book.OpenedBy);

        bool IsOfTheJob(long by) => job.IsRunning || by < job.ClosedBy;

        bool IsSignOff(long on) => state.Correctables.TryGetValue(on, out var target) && target.Entry is StepConfirmed;
    }

    /// <summary>
    /// The lasting positions whose cycle a sign-off rests on: of every joint its step works or waits for, and of every joint that its
    /// job works later at its place. A joint that the step only opens, and another job closes, is not among them.
    /// </summary>
    public static IEnumerable<JointPosition> JointsOf(this PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(placed);
        ArgumentNullException.ThrowIfNull(step);
        var waited = step.Step.WaitsFor.SelectMany(wait => wait switch
        {
            WaitsFor.ForGroup(var group, _) => placed.GroupsFor(group, step.Place),
            WaitsFor.ForCure(var group, _) => placed.GroupsFor(group, step.Place),
            _ => [],
        });
        var later = placed.Steps.Where(other => other.Id != step.Id && AreTogether(other.Place, step.Place) && placed.AllBefore(other).Contains(step));
        return later.Prepend(step).SelectMany(other => other.Work.Select(work => work.Instance))
            .Where(instance => AreTogether(instance.Place, step.Place))
            .Concat(waited)
            .Where(instance => !instance.Group.Temporary)
            .Distinct()
            .SelectMany(instance => instance.Positions);
    }

    private static bool AreTogether(string? one, string? other) => one is null || other is null || one == other;

    /// <summary>Every step instance that this one waits for, directly or through others.</summary>
    public static IReadOnlyList<StepInstance> AllBefore(this PlacedProcedure placed, StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(placed);
        var found = new List<StepInstance>();
        var open = new Queue<StepInstance>(placed.Before(step));
        while (open.TryDequeue(out var next))
        {
            if (!found.Contains(next))
            {
                found.Add(next);
                foreach (var before in placed.Before(next))
                {
                    open.Enqueue(before);
                }
            }
        }

        return found;
    }

    /// <summary>The standing in words, for "… is not signed".</summary>
    public static string Words(this StepStanding standing) => standing switch
    {
        StepStanding.NotSigned => "not signed",
        StepStanding.Signed => "signed",
        StepStanding.Void => "void",
        StepStanding.AwaitsCountersign => "not countersigned",
        _ => "to be confirmed again",
    };

    /// <summary>The step's title with its place.</summary>
    public static string Title(this StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Place is null ? step.Step.Title : $"{step.Step.Title}, {step.Place}";
    }
}
