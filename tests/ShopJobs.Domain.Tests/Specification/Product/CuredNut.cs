using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Clocks;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real nut with a cure of two hours behind it, in a shop whose clock somebody sets while the program runs.</summary>
internal sealed class CuredNut
{
    private static readonly JointPosition Nut = new(TestRegister.Nut, TestRegister.Left, 1);
    private static readonly JobId Job = new(new Guid(1, 2, 0, new byte[8]));

    private static readonly Procedure Curing = new(
        "P5", "Fit the nut", "1", true, [],
        [TestProcedures.Group("nuts", TestRegister.Nut) with { Stages = [TestProcedures.Stage(1, 110, 105, 115, [1])] }],
        [
            TestProcedures.Step("fit", waitsFor: []) with { Work = [new StepWork("nuts", [1])] },
            TestProcedures.Step("load", waitsFor: [new WaitsFor.ForCure("nuts", ShopClock.Cure)]),
        ]);

    private readonly ToolShelf tools = new(CarAtWork.Start);
    private readonly PlacedProcedure placed;
    private CarState car = CarState.Empty;
    private ShopState shop = ShopState.Empty;
    private ClockAnchor anchor = ClockAnchor.First(ShopState.Empty, CarAtWork.Start, CarAtWork.Start, TimeSpan.Zero);
    private DateTime newest = CarAtWork.Start;
    private ShopState seen = ShopState.Empty;
    private bool wentBack;
    private int hours;
    private int off;

    public CuredNut()
    {
        placed = new PlacedProcedure(Curing, TestRegister.With(1), [TestRegister.Left]);
        Do(TestPerson.Lee, new StartJob(Job, Curing, "digest", "digest", [TestRegister.Left]));
        Do(TestPerson.Tess, new OpenPositions([Nut], Job, null));
        Do(TestPerson.Tess, new HandTighten(Job, "nuts", [Nut], []));
    }

    private DateTime Shows => CarAtWork.Start + TimeSpan.FromHours(hours + off);

    private DateTime At => newest > Shows ? newest : Shows;

    public CuredNut Copy() => (CuredNut)MemberwiseClone();

    public string? Take(Transition<ShopClock> step)
    {
        Drive(step);
        return new Agreement()
            .On("instant of the newest entry, in hours", step.After.Last, (newest - CarAtWork.Start).TotalHours)
            .On("an entry went back", step.After.WentBack, wentBack)
            .On("the clock is in doubt", step.After.Doubtful, seen.ClockInDoubt)
            .On("the shop's book says so", step.After.Said, shop.Number > 0)
            .On("loaded", step.After.Loaded, placed.Step($"load@{TestRegister.Left}") is { } load && car.StandingOf(car.Jobs[Job], placed, load) == StepStanding.Signed)
            .Disagrees;
    }

    private void Drive(Transition<ShopClock> step)
    {
        switch (step.Action)
        {
            case "An hour passes":
                hours++;
                break;
            case "Set the clock by":
                off += ShopClock.Jumps[step.ArgIndex];
                break;
            case "Record":
                Do(TestPerson.Tess, new DeclareCondition([TestRegister.WheelUp]) { Places = [TestRegister.Left] });
                break;
            case "Put the locker on":
                Do(TestPerson.Tess, new RecordTorque(
                    Job, "nuts", Nut, car.Of(Nut).Cycle, 1, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, []));
                break;
            case "Load the joint":
                Do(TestPerson.Lee, CarWork.Sign(Job, $"load@{TestRegister.Left}"));
                break;
            default:
                Sign();
                break;
        }
    }

    private void Do(TestPerson person, Command command)
    {
        Look();
        var now = new Circumstances(
            person.Id, person.Rights, At, DateOnly.FromDateTime(At), placed.Register, _ => placed, tools.StateOf)
        { Shop = seen, Ahead = At - Shows };
        if (car.Decide(command is SignedCommand signed ? car.AsShown(now, signed) : command, now) is not Verdict.Accepted accepted)
        {
            return;
        }

        var at = At;
        Say(at);
        foreach (var entry in accepted.Entries)
        {
            car = car.Apply(new Recorded(car.Number + 1, at, person.Id, entry));
        }

        Written(at);
    }

    // The lead sets the clock right and signs that it is.
    private void Sign()
    {
        off = 0;
        Look();
        if (seen.Decide(new SetClock("shown", seen.Number), TestPerson.Lee.Rights) is not Verdict.Accepted accepted)
        {
            return;
        }

        Say(Shows);
        foreach (var entry in accepted.Entries)
        {
            shop = shop.Apply(new Recorded(shop.Number + 1, Shows, TestPerson.Lee.Id, entry));
        }

        (newest, seen) = (Shows, shop);
    }

    private void Look()
    {
        anchor = anchor.Look(shop, Shows, TimeSpan.FromHours(hours));
        seen = anchor.Unsaid(shop).Aggregate(shop, (known, step) => known.Apply(new Recorded(known.Number + 1, At, default, step)));
    }

    private void Say(DateTime at)
    {
        foreach (var step in anchor.Unsaid(shop))
        {
            shop = shop.Apply(new Recorded(shop.Number + 1, at, default, step));
        }
    }

    private void Written(DateTime at)
    {
        wentBack |= at < newest;
        newest = at;
    }
}
