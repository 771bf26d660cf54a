using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.RoadTests;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car with new pads: its alignment depends on a wheel nut, and its bed-in needs a drive.</summary>
internal sealed class TestDrivenCar : ProductCar
{
    private const string BedIn = "bed-in";
    private const string Alignment = "alignment";
    private const string Pads = "setting:pads";

    public TestDrivenCar()
        : base(WithPads())
    {
        Job = Car.StartJob(WithoutReTorque, Place);
        Record(Pads);
        Car.Open(Zoe, Job, Nut);
        Close();
    }

    protected override Procedure FittedBy => WithoutReTorque;

    // What is due after a drive is another specification.
    private static Procedure WithoutReTorque { get; } = Without(TestProcedures.Wheels(1));

    public string? Take(Transition<TestedCar> step)
    {
        var granted = step.Action switch
        {
            "Ask for" => Try(Zoe, Asking(step.After.Asked)),
            "Drive" => true,
            "Return, or the day ends" => Try(Zoe, new EndRoadTest(new OdometerReading(1000, DistanceUnit.Kilometre), null)),
            "Record the bed-in" => Record(BedIn),
            "Record the alignment" => Record(Alignment),
            "Open a joint" => Open(),
            _ => Tighten(),
        };
        return Differ(
            ($"{step} is accepted", step.Action != "Ask for" || step.After.Granted, granted),
            ("it is out on a road test", step.After.Out, Car.State.StandingOf(Car.As(Zoe), ReleaseKind.RoadTest).IsGood),
            ("the bed-in stands", step.After.BedIn, Car.State.HasResult(BedIn, Car.Tool)),
            ("the alignment stands", step.After.Aligned, Car.State.HasResult(Alignment, Car.Tool)));
    }

    private static Procedure Without(Procedure wheels) =>
        wheels with { Groups = [.. wheels.Groups.Select(group => group with { ReTorque = null })] };

    private static Release Asking(Asked asked) => asked switch
    {
        Asked.RoadTest => CarWork.To(ReleaseKind.RoadTest) with { Driver = Zoe.Id, DistanceKm = 20 },
        Asked.RoadTestOfNobody => CarWork.To(ReleaseKind.RoadTest) with { DistanceKm = 20 },
        Asked.Road => CarWork.To(ReleaseKind.Road),
        Asked.RoadToldInWriting => CarWork.To(ReleaseKind.Road, accepted: true),
        Asked.Track => CarWork.To(ReleaseKind.Track),
        _ => CarWork.To(ReleaseKind.Track, accepted: true),
    };

    private static JointRegister WithPads()
    {
        var register = Register();
        var nut = register.Kinds[TestRegister.Nut] with { Undoes = [new Undone(UndoneKind.Result, Alignment)] };
        return register with
        {
            Kinds = register.Kinds.Values.Select(kind => kind.Key == nut.Key ? nut : kind).ToDictionary(kind => kind.Key),
            Results = [Alignment, BedIn],
            ResultKinds = new Dictionary<string, ResultKind> { [BedIn] = ResultKind.Bare(BedIn) with { AfterDrive = true } },
            Settings = new Dictionary<string, IReadOnlyList<Undone>>(register.Settings) { ["pads"] = [new Undone(UndoneKind.Result, BedIn)] },
        };
    }

    private bool Record(string name) => Try(Zoe, new RecordResult(
        name, [new MeasuredValue("value", 1, "")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown));

    private bool Open()
    {
        Car.Open(Zoe, JobRuns ? Job : null, Nut);
        return true;
    }

    private bool Tighten()
    {
        Close();
        return true;
    }
}
