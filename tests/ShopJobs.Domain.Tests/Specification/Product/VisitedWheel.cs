using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Visits;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car that comes in, is moved and leaves, with a wheel nut open or closed, while another stands on the lift or not.</summary>
internal sealed class VisitedWheel : ProductCar
{
    private const string Place = TestRegister.Left;

    public VisitedWheel()
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), Place);
        Car.OnLiftB = null;
        Car.Do(Zoe, new ComeIn(new OdometerReading(1000, DistanceUnit.Kilometre), Key(Stands.Floor), CarAtWork.Reason));
        Open();
        Close();
    }

    public string? Take(Transition<VisitedCar> step)
    {
        var ann = Who(People.Ann);
        var from = Key(step.Before.At);
        var granted = step.Action switch
        {
            "Come in" => Try(ann, new ComeIn(new OdometerReading(1000, DistanceUnit.Kilometre), Key((Stands)step.ArgIndex), CarAtWork.Reason)),
            "Ask to move" => Try(ann, new MoveCar(from, Key((Stands)step.ArgIndex))),
            "Say that it was moved" => Moved(from, VisitedCar.Moves[step.ArgIndex]),
            "Look over" => Try(Who(Persons.Each[step.ArgIndex]), new LookOver(CarAtWork.Reason, CarAtWork.Shown)),
            "Ask to drive away" => Try(ann, new LetGo(WayOut.Driven, CarAtWork.Reason, null)),
            "Ask to load it" => Try(ann, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, null)),
            "Say that it was driven away" => Try(ann, new ReportGone(WayOut.Driven, CarAtWork.Reason, null, CarAtWork.Reason)),
            "Say that it was loaded" => Try(ann, new ReportGone(WayOut.OnTrailer, CarAtWork.Reason, null, CarAtWork.Reason)),
            "Release to the road" => Try(Zoe, CarWork.To(ReleaseKind.Road)),
            "Open a nut" => Open(),
            "Close it" => Close(),
            _ => Other(step.After.Taken ? "Orange" : null),
        };
        return Differ(
            ($"{step} is accepted", step.After.Granted, granted),
            ("here", step.After.Here, Car.State.Visit!.IsOpen),
            ("waits to be looked over", step.After.ToLookOver, !Car.State.ToLookOver.IsEmpty),
            ("may go on the road", step.After.Road, Car.State.StandingOf(Car.As(Zoe), ReleaseKind.Road).IsGood));
    }

    private static string Key(Stands at) => at == Stands.Lift ? "LiftB" : "Floor";

    private bool Moved(string from, (People Who, Stands To) move) => Try(Who(move.Who), new ReportMoved(from, Key(move.To), CarAtWork.Reason));

    private bool Other(string? car)
    {
        Car.OnLiftB = car;
        return false;
    }

    private bool Open()
    {
        Car.Open(Zoe, JobRuns ? Job : null, Nut);
        return false;
    }

    private bool Close()
    {
        if (!JobRuns)
        {
            Job = Car.StartJob(TestProcedures.Wheels(1), Place);
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
        return false;
    }
}
