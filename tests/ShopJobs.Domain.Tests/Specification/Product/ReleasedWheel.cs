using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Releases;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Releases to road of a real car whose wheel was fitted, and what happens to them.</summary>
internal sealed class ReleasedWheel : ProductCar
{
    private long opening;
    private int settings;

    public ReleasedWheel()
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), Place);
        Car.Open(Zoe, Job, Nut);
        Close();
    }

    public string? Take(Transition<ReleasedCar> step)
    {
        var granted = step.Action switch
        {
            "Give" => Try(Zoe, CarWork.To(ReleaseKind.Road)),
            "Uphold" => Uphold(),
            "Withdraw" => Withdraw(),
            "Open" => Open(),
            "Close again" => CloseAgain(),
            "Take the opening back, confirmed" => TakeBack(),
            "Pull on top" => Try(Who(People.Ann), new RecordTorque(
                Job, "nuts", Nut, Book.Cycle, 2, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, [])),
            "Raise" => Raise(ReleasedCar.Causes[step.ArgIndex]),
            _ => Lift(ReleasedCar.Causes[step.ArgIndex]),
        };
        return Differ(
            ($"{step} is accepted", step.Action is not ("Give" or "Uphold" or "Withdraw") || step.After.Granted, granted),
            ("the road release", step.After.Given, Standing()),
            ("held", step.After.Against.HasFlag(Against.Hold), IsHeld(Nut)));
    }

    private Given Standing() => Car.State.StandingOf(Car.As(Zoe), ReleaseKind.Road).Kind switch
    {
        ReleaseStandingKind.NotGiven => Given.None,
        ReleaseStandingKind.Stands => Given.Stands,
        ReleaseStandingKind.Ended => Given.Ended,
        ReleaseStandingKind.Withdrawn => Given.Withdrawn,
        _ => Given.Suspended,
    };

    private bool Uphold() => Try(Zoe, new UpholdRelease(ReleaseKind.Road, CarAtWork.Shown));

    private bool Withdraw() => Try(Zoe, new WithdrawRelease(ReleaseKind.Road, Driven: false, CarAtWork.Reason, CarAtWork.Shown));

    private bool Open()
    {
        Car.Open(Zoe, JobRuns ? Job : null, Nut);
        opening = Car.Last;
        return true;
    }

    private bool CloseAgain()
    {
        Close();
        return true;
    }

    private bool TakeBack()
    {
        Car.Do(Zoe, new VoidEntry(opening, null, CarAtWork.Reason));
        return Try(Who(People.Bob), new ConfirmCorrection(Car.Last, CarAtWork.Reason, CarAtWork.Shown));
    }

    private bool Raise(Against cause)
    {
        switch (cause)
        {
            case Against.Doubt:
                Car.TellTool(TestTools.Dial, new Doubted(CarAtWork.Reason));
                return true;
            case Against.Hold:
                return Try(Who(People.Ann), new HoldPositions([Nut], CarAtWork.Reason));
            case Against.SettingChanged:
                return Try(Zoe, new RecordResult("setting:front-bar", [new MeasuredValue("hole", ++settings, "")], ResultBasis.LookedAt, null, [], null, null, CarAtWork.Shown));
            default:
                return Try(Zoe, new VoidEntry(Car.State.Jobs[Job].SignOffs[$"faces@{Place}"].Number, null, CarAtWork.Reason));
        }
    }

    private bool Lift(Against cause)
    {
        switch (cause)
        {
            case Against.Doubt:
                Car.TellTool(TestTools.Dial, new Cleared([.. Car.Tool(TestTools.Dial).Doubts.Select(doubt => doubt.Number)], CarAtWork.Reason));
                return true;
            case Against.Hold:
                return Try(Who(People.Bob), CarWork.Decision(Nut, Disposition.UseAsIs, accepted: true));
            case Against.SettingChanged:
                return Try(Zoe, new RecordResult("corner-weights", [new MeasuredValue("cross", 50, "%")], ResultBasis.Measured, "scales", [], null, null, CarAtWork.Shown));
            default:
                SignWhereAsked(Zoe, $"faces@{Place}", "clean");
                SignWhereAsked(Zoe, $"seat@{Place}");
                SignWhereAsked(Zoe, $"final@{Place}");
                return true;
        }
    }
}
