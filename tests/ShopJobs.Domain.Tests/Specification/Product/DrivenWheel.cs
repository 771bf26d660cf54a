using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.ReTorques;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>The re-torque of a real wheel nut after 50 km, at the latest after 100 km or 14 days.</summary>
internal sealed class DrivenWheel : ProductCar
{

    public DrivenWheel() => PullAnew();

    public string? Take(Transition<DrivenJoint> step)
    {
        var km = 1000m + (30 * step.Before.Km);
        var granted = step.Action switch
        {
            "Release" => Release(DrivenJoint.Releases[step.ArgIndex], km),
            "Re-torque" => Settle(TestPerson.Tess, km),
            "Settle early, signed by the lead" => Settle(Zoe, km),
            "Give a new interval, signed by the lead" => Try(Zoe, new ExtendReTorque([Nut], new OdometerReading(km, DistanceUnit.Kilometre), CarAtWork.Reason, CarAtWork.Shown)),
            "Withdraw the release" => Withdraw(step.Before.Driven),
            "Its last day ends" => DayEnds(),
            "Open and pull again" => PullAnew(),
            _ => true,
        };
        return Differ(
            ($"{step} is accepted", step.Action is not ("Release" or "Give a new interval, signed by the lead") || step.After.Granted, granted),
            ("overdue by its day", step.After.DayOver && !step.After.Settled && Book.Last is not null, Car.State.OwesReTorque(Book) && Car.Today > Car.State.LatestDay(Car.As(Zoe), Book)),
            ("settled", step.After.Settled, Book.IsSettled),
            ("held", step.After.Held, IsHeld(Nut)),
            ("lapses at km", Lapses(step.After), Car.State.Releases.TryGetValue(ReleaseKind.Road, out var road) && step.Action == "Release" && step.After is { Granted: true, Asked: Asked.Road or Asked.RoadAccepted } ? road.Fact.LapsesAtKm : null));

        decimal? Lapses(DrivenJoint joint) => step.Action == "Release" && joint is { Granted: true, Asked: Asked.Road or Asked.RoadAccepted, Settled: false }
            ? 1000 + (30 * joint.From) + 100
            : null;
    }

    private bool Release(Asked asked, decimal km) => Try(Zoe, asked switch
    {
        Asked.Road => CarWork.To(ReleaseKind.Road, km),
        Asked.RoadAccepted => CarWork.To(ReleaseKind.Road, km, accepted: true),
        Asked.RoadFromALowerOdometer => CarWork.To(ReleaseKind.Road, km - 1000),
        Asked.Track => CarWork.To(ReleaseKind.Track, km),
        _ => CarWork.To(ReleaseKind.Track, km, accepted: true),
    });

    private bool Settle(TestPerson person, decimal km)
    {
        Car.Declare(TestRegister.WheelDown);
        return Try(person, new RecordSettled(
        Job, "nuts", [Nut], false, null, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, km, CarAtWork.Shown));
    }

    private bool Withdraw(bool driven) => Try(Zoe, new WithdrawRelease(
        Car.State.ReleaseHistory[^1].Fact.Kind, driven, CarAtWork.Reason, CarAtWork.Shown));

    private bool DayEnds()
    {
        Car.Wait(TimeSpan.FromDays(15));
        return true;
    }

    private bool PullAnew()
    {
        if (Job != default)
        {
            Car.Open(Zoe, JobRuns ? Job : null, Nut);
        }

        if (Job == default || !JobRuns)
        {
            Job = Car.StartJob(TestProcedures.Wheels(1), Place);
        }

        if (Book.IsAsFound)
        {
            Car.Open(Zoe, Job, Nut);
        }

        SignWhereAsked(Zoe, $"faces@{Place}", "clean");
        Car.Declare(TestRegister.WheelUp);
        Car.ByHand(Zoe, Job, "nuts", Nut);
        Pull(Zoe, "nuts", Nut, 1, 50);
        SignWhereAsked(Zoe, $"seat@{Place}");
        Car.Declare(TestRegister.WheelDown);
        Pull(Zoe, "nuts", Nut, 2, 110);
        Car.Do(Who(People.Cy), CarWork.Looks(Job, "nuts", Place, 2));
        SignWhereAsked(Zoe, $"final@{Place}");
        return true;
    }
}
