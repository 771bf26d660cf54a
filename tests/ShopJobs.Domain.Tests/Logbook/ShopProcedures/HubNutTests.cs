using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P9 of the demo shop: rear drive shafts and staked hub nuts.</summary>
public class HubNutTests
{
    private const string Left = "rear-left";
    private const string Nut = "nut@rear-left";
    private readonly SeedJob job = new("P9-hub-nut.yaml", Left, "rear-right");

    [Fact]
    public void Every_step_is_signed_after_two_hub_nuts_and_twelve_flange_bolts_came_to_torque()
    {
        Held();
        job.FinishUpTo("end", W5, W9);

        Assert.True(job.IsSigned);
        Assert.Equal(28, job.Pulls.Count);
        Assert.Equal(PositionState.Checked, job.Car.Shows("hub.nut", Left));
        Assert.Equal(PositionState.Checked, job.Car.Shows("hub.drive-flange", "rear-right"));
    }

    [Fact]
    public void The_hub_nut_is_pulled_with_the_wheel_up_and_not_on_the_ground()
    {
        Held();
        job.FinishUpTo("nut", W5, W9);
        job.PullNext(Nut, W9);
        job.Stand("stand", "tyre-on-ground");
        Assert.Equal([HoldReason.WrongCarCondition], job.PullNext(Nut, W9).Problems);
    }

    [Fact]
    public void A_nut_that_was_backed_off_is_not_run_down_again()
    {
        Held();
        job.FinishUpTo("nut", W5, W9);
        job.PullNext(Nut, W9);
        job.PullNext(Nut, W9);
        job.Car.Open(Tess, job.Id, job.At("hub.nut", Left));
        Assert.Equal([HoldReason.HardwareNotNew], job.Car.ByHand(Tess, job.Id, "hub-nut", job.At("hub.nut", Left)).Problems);
        Assert.IsType<NextAction.Fit>(job.Car.Next(job.Id, Nut));
    }

    [Fact]
    public void A_short_pull_is_pulled_on_and_never_backed_off()
    {
        Held();
        job.FinishUpTo("nut", W5, W9);
        job.PullNext(Nut, W9);
        var cell = Assert.IsType<NextAction.PullNow>(job.Car.Next(job.Id, Nut)).Cell;
        var shown = new RecordTorque(job.Id, "hub-nut", cell.Position, cell.Cycle, 2, 0, TorqueKind.Reading, CarAtWork.NewtonMetres(230), Dial, []);
        Assert.Equal([HoldReason.UnderRange], ((TorqueRecorded)job.Car.Do(Tess, shown)).Problems);
        Assert.Empty(job.PullNext(Nut, W9).Problems);
    }

    [Fact]
    public void The_stake_waits_for_a_tick_and_for_a_second_person()
    {
        Held();
        job.FinishUpTo("nut", W5, W9);
        job.Work(Nut, W9);
        Assert.Equal([HoldReason.NotWitnessed], job.Refusals(Nut));
        job.Look(Nut);
        Assert.Equal([HoldReason.TickMissing], job.Car.Refused(Tess, job.ToSign(Nut) with { Ticks = ["not-backed"] }));
        Assert.Contains("staked", job.ToSign(Nut).Ticks);
        job.Sign(Nut);
    }

    [Fact]
    public void It_is_never_re_torqued_after_the_drive()
    {
        Held();
        job.FinishUpTo("end", W5, W9);
        Assert.False(job.Car.State.OwesReTorque(job.Car.State.Of(job.At("hub.nut", Left)[0])));
        Assert.True(job.Car.State.OwesReTorque(job.Car.State.Of(job.At("hub.drive-flange", Left)[0])));
        var again = new RecordSettled(job.Id, "hub-nut", job.At("hub.nut", Left), false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(250), W9, 1060, CarAtWork.Shown);
        Assert.Equal([HoldReason.ReTorqueNotDue], ((Settled)job.Car.Do(Tess, again)).Problems);
    }

    [Fact]
    public void The_car_does_not_move_with_an_open_hub_nut()
    {
        Held();
        job.Open($"crack@{Left}");
        Assert.Contains(HoldReason.NotAtStage, job.Car.Refused(Lee, To(ReleaseKind.Move)));
    }

    private void Held()
    {
        job.Stand("stand", "wheel-up");
        job.Stand("hub", "held");
    }
}
