using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P4 of the demo shop: discs, pads, hoses and bleed at all four corners.</summary>
public class BrakeTests
{
    private const string Corner = "rear-left";
    private readonly SeedJob job = new("P4-brakes.yaml", "front-left", "front-right", Corner, "rear-right");

    public BrakeTests()
    {
        job.Stand("hub", "held");
        job.Stand("steering", "straight");
    }

    [Fact]
    public void Every_step_is_signed_after_eight_fasteners_a_corner_came_to_torque()
    {
        job.FinishUpTo("end", W3, W5, W7);

        Assert.True(job.IsSigned);
        // A corner: screw 1, carrier 2 + 2, pins 2, flare 1, banjo 1 + 1, nipple 1.
        Assert.Equal(44, job.Pulls.Count);
        foreach (var key in (string[])["brake.carrier", "brake.guide-pin", "brake.flare-nut", "brake.banjo", "brake.bleed-nipple"])
        {
            Assert.Equal(PositionState.Checked, job.Car.Shows(key, Corner));
        }

        Assert.Empty(job.Car.State.Undone);
    }

    [Fact]
    public void The_flare_nut_is_set_to_14_6_on_the_wrench_for_16_at_the_nut()
    {
        BeforeTheFlareNut();
        var pull = job.PullNext($"hose@{Corner}", W3);
        Assert.Empty(pull.Problems);
        // F7: 16 x 320/350 = 14.63, set to the tenth; 14.6 x 350/320 = 15.969 at the nut.
        Assert.Equal(("14.6 N·m", "15.969 N·m"), (pull.Value.ToString(), pull.AtFastener.ToString()));
        Assert.Equal((16m, 14m, 18m), (pull.Spec.Instructed, pull.Spec.Minimum, pull.Spec.Maximum));
    }

    [Fact]
    public void Sixteen_on_the_wrench_is_not_the_instructed_setting_with_the_crowfoot()
    {
        BeforeTheFlareNut();
        var pull = job.PullNext($"hose@{Corner}", W3, setTo: 16);
        Assert.Equal([HoldReason.SettingNotInstructed], pull.Problems);
        Assert.Equal(17.5m, pull.AtFastener!.Value.Value);
    }

    [Fact]
    public void A_wrench_set_too_high_is_judged_by_what_arrives_at_the_nut()
    {
        BeforeTheFlareNut();
        // 16.5 lies inside 14..18 on the wrench; at the nut it is 16.5 x 350/320 = 18.047.
        Assert.Equal([HoldReason.OverRange], job.PullNext($"hose@{Corner}", W3, setTo: 16.5m).Problems);
        Assert.Equal(PositionState.Held, job.Car.Shows("brake.flare-nut", Corner));
    }

    [Fact]
    public void A_typing_slip_is_judged_again_at_the_nut_once_a_second_person_confirmed_it()
    {
        BeforeTheFlareNut();
        var step = $"hose@{Corner}";
        job.PullNext(step, W3, setTo: 16);
        var correction = job.Car.Last + 1;
        job.Car.Do(Tess, new Restate(job.Car.Last, CarAtWork.NewtonMetres(14.6m), CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Held, job.Car.Shows("brake.flare-nut", Corner));
        job.Car.Do(Theo, new ConfirmCorrection(correction, CarAtWork.Reason, CarAtWork.Shown));
        var pull = job.Car.State.Of(job.At("brake.flare-nut", Corner)[0]).Last!;
        Assert.Empty(pull.Problems);
        Assert.Equal("15.969 N·m", pull.AtFastener.ToString());
    }

    [Fact]
    public void The_pedal_waits_for_every_nipple_and_the_bleed_is_void_once_one_is_opened_again()
    {
        job.FinishUpTo("bed-in", W3, W5, W7);
        job.Car.Open(Tess, job.Id, job.At("brake.bleed-nipple", Corner));
        Assert.Equal(["bleed"], job.Car.State.Undone.Keys);
        Assert.Equal(StepStanding.Void, job.Car.Standing(job.Id, "pedal"));
        Assert.Equal([HoldReason.ResultJointLoose], job.Car.Refused(Tess, job.ToRecord("pedal", "bleed")));
        Assert.Contains(HoldReason.ResultJointLoose, job.Refusals("pedal"));
    }

    [Fact]
    public void A_pedal_held_for_less_than_a_minute_is_refused()
    {
        job.FinishUpTo("pedal", W3, W5, W7);
        job.Result("pedal", "bleed");
        Assert.Equal([HoldReason.MeasureOutside], job.Refusals("pedal", ("held", 59)));
        job.Sign("pedal", ("held", 60));
    }

    private void BeforeTheFlareNut()
    {
        job.FinishUpTo("hose", W3, W5, W7);
        job.Car.ByHand(Tess, job.Id, "flare", job.At("brake.flare-nut", Corner));
    }
}
