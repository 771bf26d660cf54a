using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Why a car is not released: the AND over every joint of the car.
internal sealed partial class Ledger
{
    private IEnumerable<Reason> WaitsOf(Release release)
    {
        foreach (var kind in register.Kinds.Values)
        {
            foreach (var position in kind.AllPositions())
            {
                foreach (var reason in kind.Temporary ? OfTemporary(position) : OfLasting(kind, position, release.Kind))
                {
                    yield return reason;
                }
            }
        }

        if (Running.SelectMany(job => job.Steps, (job, step) => StandingOf(job, step)).Any(standing => standing is StepStanding.Void or StepStanding.ToReconfirm))
        {
            yield return new(HoldReason.StepToReconfirm);
        }

        if (release.Kind == ReleaseKind.Move)
        {
            yield break;
        }

        if (UndoneNames.Any())
        {
            yield return new(HoldReason.ResultVoid);
        }

        if (Running.Any(job => HasBegun(job.Id) && job.Steps.Any(step => StandingOf(job, step) == StepStanding.NotSigned)))
        {
            yield return new(HoldReason.StepNotSigned);
        }

        if (release.Kind == ReleaseKind.Track && release.CustomerAcceptance is null && register.Kinds.Values.SelectMany(kind => kind.AllPositions()).Any(OwesReTorque))
        {
            yield return new(HoldReason.ReTorqueDue);
        }

        if (release.OdometerKm is null or < 0)
        {
            yield return new(HoldReason.OdometerMissing);
        }
    }

    private IEnumerable<JobReading> Running => jobs.Values.Where(job => !IsClosed(job.Id));

    private bool HasBegun(JobId job) => lines.Any(line => line.Entry switch
    {
        Opened fact => fact.Job == job,
        FittedNew fact => fact.Job == job,
        HandTightened fact => fact.Job == job,
        TorqueRecorded fact => fact.Job == job,
        StepConfirmed fact => fact.Job == job,
        _ => false,
    });

    private IEnumerable<Reason> OfTemporary(JointPosition position) =>
        IsOn(position) || HoldsOn(position).Count > 0 ? [new(HoldReason.TemporaryFitted)] : [];

    private IEnumerable<Reason> OfLasting(JointKind kind, JointPosition position, ReleaseKind release)
    {
        var least = kind.Least.GetValueOrDefault(release, LeastState.Counts);
        var held = HoldsOn(position).Count > 0;
        var asFound = IsAsFound(position);
        if (least == LeastState.MadeHere && asFound)
        {
            yield return new(HoldReason.JointNotMadeHere);
        }

        if ((!asFound || held) && !(least == LeastState.HandTight && WhatIsOn(position) == On.Run && !held))
        {
            foreach (var why in ProblemsOf(position, null, null, null))
            {
                yield return new(why, position);
            }
        }

        if (WhatIsOn(position) is On.Nothing or On.New && !Running.Any(job => job.Groups.Any(group => group.Joint == position.Joint)))
        {
            yield return new(HoldReason.NothingCloses);
        }
    }
}
