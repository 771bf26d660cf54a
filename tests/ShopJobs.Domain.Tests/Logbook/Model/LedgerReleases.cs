using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Why a car is not released: the AND over every joint of the car.
internal sealed partial class Ledger
{
    private IEnumerable<Reason> WaitsOf(Release release, DateOnly today)
    {
        foreach (var reason in RulesOf(release.Kind, release.CustomerAcceptance is not null, release.OdometerKm, today, _ => true, _ => release.CustomerAcceptance is not null))
        {
            yield return reason;
        }

        if (release.Kind != ReleaseKind.Move && release.OdometerKm is null or < 0)
        {
            yield return new(HoldReason.OdometerMissing);
        }

        if (release.Kind == ReleaseKind.RoadTest && release.Driver is null)
        {
            yield return new(HoldReason.DriverMissing);
        }

        if (release.Kind == ReleaseKind.RoadTest && release.DistanceKm is null or <= 0)
        {
            yield return new(HoldReason.DistanceMissing);
        }

        if (IsBelowLast(release.OdometerKm, release.OdometerWhy))
        {
            yield return new(HoldReason.OdometerBelowLast);
        }
    }

    /// <summary>What the rules of a release find.</summary>
    /// <param name="asked">Jobs whose unsigned steps speak against it.</param>
    /// <param name="told">Results that only a drive gives, of which the customer was told that they are missing.</param>
    private IEnumerable<Reason> RulesOf(ReleaseKind release, bool accepted, decimal? odometer, DateOnly today, Func<JobId, bool> asked, Func<string, bool> told)
    {
        foreach (var kind in register.Kinds.Values)
        {
            foreach (var position in kind.AllPositions())
            {
                foreach (var reason in kind.Temporary ? OfTemporary(position) : OfLasting(kind, position, release))
                {
                    yield return reason;
                }
            }
        }

        if (Running.SelectMany(job => job.Steps, (job, step) => StandingOf(job, step)).Any(standing => standing is StepStanding.Void or StepStanding.ToReconfirm))
        {
            yield return new(HoldReason.StepToReconfirm);
        }

        foreach (var why in release != ReleaseKind.Move ? [] : Those(
            (HoldReason.ResultVoid, UndoneNames.Any(name => !IsAfterDrive(name) && KindOf(name)?.HoldsMove == true)),
            (HoldReason.ResultInDoubt, ResultNames.Any(name => KindOf(name)?.HoldsMove == true && IsDoubted(name)))))
        {
            yield return new(why);
        }

        foreach (var why in release == ReleaseKind.Move ? [] : OfDriving(release, accepted, odometer, today, asked, told))
        {
            yield return new(why);
        }
    }

    private IEnumerable<string> ResultNames => lines.Select(line => line.Entry).OfType<ResultRecorded>().Select(fact => fact.Name).Distinct();

    private bool IsDoubted(string name) => !UndoneNames.Contains(name) && IsInDoubt(name);

    private IReadOnlyList<HoldReason> OfDriving(ReleaseKind release, bool accepted, decimal? odometer, DateOnly today, Func<JobId, bool> asked, Func<string, bool> told)
    {
        var owing = register.Kinds.Values.SelectMany(kind => kind.AllPositions()).Where(OwesReTorque).ToList();
        return Those(
            (HoldReason.NoRegister, register.Kinds.Count == 0),
            (HoldReason.ResultVoid, UndoneNames.Any(name => !IsAfterDrive(name))),
            (HoldReason.AwaitsDrive, UndoneNames.Any(name => IsAfterDrive(name) && release != ReleaseKind.RoadTest && !(release == ReleaseKind.Road && told(name)))),
            (HoldReason.ResultInDoubt, ResultNames.Any(IsDoubted)),
            (HoldReason.StepNotSigned, Running.Any(job => asked(job.Id) && HasBegun(job.Id) && job.Steps.Any(step => StandingOf(job, step) is StepStanding.NotSigned or StepStanding.AwaitsCountersign))),
            (HoldReason.MovedAnyway, ToLookOver.Any()),
            (HoldReason.ReTorqueDue, release == ReleaseKind.Track && !accepted && owing.Count > 0),
            (HoldReason.ReTorqueOverdue, !accepted && owing.Exists(position => IsOverdue(position, odometer ?? LastKm, today))));
    }

    // A re-torque that is due, and a result that only a drive gives, go by the customer's writing alone.
    private bool IsByWriting(Release release, DateOnly today) => RulesOf(release.Kind, accepted: false, release.OdometerKm, today, _ => true, _ => false)
        .Any(reason => reason.Why is HoldReason.ReTorqueDue or HoldReason.ReTorqueOverdue || (reason.Why == HoldReason.AwaitsDrive && release.Kind == ReleaseKind.Road));

    private IEnumerable<JobReading> Running => jobs.Values.Where(job => !IsClosed(job.Id));

    private bool HasBegun(JobId job) => lines.Any(line => line.Entry switch
    {
        Opened fact => fact.Job == job,
        FittedNew fact => fact.Job == job,
        HandTightened fact => fact.Job == job,
        TorqueRecorded fact => fact.Job == job,
        StepFinished fact => fact.Job == job,
        StepConfirmed fact => fact.Job == job,
        _ => false,
    });

    private IEnumerable<Reason> OfTemporary(JointPosition position) =>
        IsOn(position) || HoldsOn(position).Count > 0 ? [new(HoldReason.TemporaryFitted)] : [];

    private IEnumerable<Reason> OfLasting(JointKind kind, JointPosition position, ReleaseKind release)
    {
        var least = kind.Least.GetValueOrDefault(release == ReleaseKind.RoadTest ? ReleaseKind.Road : release, LeastState.Counts);
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
