using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.HeldWorks;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car whose step, result and lot of nuts are held and decided.</summary>
internal sealed class StoppedWheel : ProductCar
{
    private const string Weights = "corner-weights";
    private long step;
    private long result;
    private long lot;

    public StoppedWheel(HoldRules? rules = null)
        : base(rules: rules)
    {
        Job = Car.StartJob(TestProcedures.Wheels(1), Place);
        Fit("4471");
        RecordResult();
    }

    public string? Take(Transition<StoppedWork> taken)
    {
        var by = taken.ArgIndex >= 0 && taken.ArgIndex < StoppedWork.Deciders.Length ? StoppedWork.Deciders[taken.ArgIndex] : People.Bob;
        var granted = taken.Action switch
        {
            "Hold the step" => Hold(new HoldWork(CarAtWork.Reason) { Job = Job, Step = $"faces@{Place}" }, out step),
            "Use the step as is" => Decide(by, step, Disposition.UseAsIs),
            "Have the step done again" => Decide(by, step, Disposition.Rework),
            "Sign" => Sign(),
            "Hold the result" => Hold(new HoldWork(CarAtWork.Reason) { Result = Car.State.Results[Weights].Number }, out result),
            "Use the result as is" => Decide(by, result, Disposition.UseAsIs),
            "Have the result done again" => Decide(by, result, Disposition.Rework),
            "Record the result" => RecordResult(),
            "Hold the lot" => Hold(new HoldWork(CarAtWork.Reason) { Lot = " 4471", Job = Job, Group = "nuts" }, out lot),
            "Use the lot as is" => Decide(by, lot, Disposition.UseAsIs),
            "Rework the lot" => Decide(by, lot, Disposition.Rework),
            "Replace the lot" => Decide(by, lot, Disposition.Replace),
            "Open" => Open(),
            "Fit from the lot" => Fit("4471"),
            _ => Fit("5512"),
        };
        return Differ(
            ($"{taken} is granted", taken.After.Granted, granted),
            ("the step is signed", taken.After.Signed, Car.Standing(Job, $"faces@{Place}") == StepStanding.Signed),
            ("the result stands", taken.After.Result, Car.State.Results[Weights].VoidBy == 0),
            ("the nut waits for a decision", taken.After.NutHold == NutHold.Waits, IsHeld(Nut)),
            ("the car goes", taken.After.Goes, Car.Rules.OnRelease(Car.State, Car.As(Zoe), ReleaseKind.Road, customerAccepted: false, 1000).Count == 0));
    }

    private bool Hold(HoldWork hold, out long number)
    {
        var held = Try(Who(People.Ann), hold);
        number = Car.Last;
        return held;
    }

    private bool Decide(People by, long hold, Disposition disposition) => Try(Who(by), new DecideWork(
        hold, disposition, CarAtWork.Reason, disposition == Disposition.UseAsIs ? CarWork.Written : null, CarAtWork.Shown));

    private bool RecordResult() => Try(Zoe, new RecordResult(
        Weights, [new MeasuredValue("cross", 50, "%")], ResultBasis.Measured, "scales", [], null, null, CarAtWork.Shown));

    private bool Open()
    {
        Car.Open(Zoe, Job, Nut);
        return true;
    }

    private bool Sign()
    {
        foreach (var (signed, ticks) in new (string, string[])[] { ($"faces@{Place}", ["clean"]), ($"seat@{Place}", []), ($"final@{Place}", []) })
        {
            if (Car.Standing(Job, signed) != StepStanding.Signed && !Try(Zoe, CarWork.Sign(Job, signed, ticks)))
            {
                return false;
            }
        }

        return true;
    }

    // From new hardware to the last signature; false where the hardware does not count as new.
    private bool Fit(string from)
    {
        if (((FittedNew)Car.Do(Zoe, new FitNew(Job, "nuts", [Nut], from))).Problems is { Count: > 0 })
        {
            return false;
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
