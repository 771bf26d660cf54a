using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed class SummaryNextTests
{
    private readonly CarAtWork car = new();

    [Fact]
    public void Tells_the_customer_when_to_come_back_and_to_keep_off_the_track()
    {
        car.FitLeftWheel();
        Assert.Equal(
            [
                "Do not drive the car: it is not released to the road. Wait until we call you.",
                "Come back after 50 to 100 km, or within 14 days after the first drive, whichever comes first. We re-tighten 5 wheel nuts, front left: a joint settles in the first kilometres.",
                "Do not drive on track before this re-torque.",
            ],
            car.Page().Duties);

        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));

        var page = car.Page();
        Assert.Equal(
            "Come back between 1,050 and 1,100 km on the odometer, or by 16 Mar 2026, whichever comes first. "
            + "We re-tighten 5 wheel nuts, front left: a joint settles in the first kilometres.",
            page.Duties[0]);
        Assert.Equal(
            [
                new ReleaseLine(true, "Released to road on 2 Mar 2026 at 1,000 km, signed by LE. It expires at 1,100 km or after 16 Mar 2026, "
                    + "whichever comes first. 9 joints as found, not checked by us."),
                new ReleaseLine(false, "Not released to track. Before that we would have to tighten what is as found: brake carrier bolt, front."),
            ],
            page.Releases);
    }

    [Fact]
    public void A_written_acceptance_to_go_on_track_before_the_re_torque_is_told()
    {
        car.FitLeftWheel();
        var job = car.StartJob(
            new Procedure("P9", "Fit the brake", "1", true, [], [TestProcedures.Group("bolt", TestRegister.BrakeBolt) with { Stages = [TestProcedures.Stage(1, 80, 75, 85, [1])] }],
                [TestProcedures.Step("bolt", waitsFor: []) with { Places = [TestRegister.Front], Work = [new StepWork("bolt", [1])] }]),
            TestRegister.Front);
        var bolt = car.Positions(TestRegister.BrakeBolt, TestRegister.Front);
        car.Open(TestPerson.Tess, job, bolt);
        car.ByHand(TestPerson.Tess, job, "bolt", bolt);
        car.Pull(TestPerson.Tess, job, "bolt", bolt[0], 1, 80);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"bolt@{TestRegister.Front}"));
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Track, accepted: true));

        Assert.Equal("You accepted in writing to drive on track before this re-torque. We advise against it.", car.Page().Duties[^1]);
    }

    [Fact]
    public void Before_any_work_nothing_is_due_and_no_release_is_given()
    {
        car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Right);

        Assert.Equal(3, car.Page().Releases.Count);
        Assert.All(car.Page().Releases, release => Assert.False(release.Given));
        Assert.Equal("Do not drive the car: it is not released to the road. Wait until we call you.", Assert.Single(car.Page().Duties));
    }

    [Fact]
    public void A_release_that_lapsed_or_ended_is_not_shown_as_given()
    {
        var job = car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        Assert.False(car.Page(odometer: 1101).Releases[0].Given);
        Assert.True(car.Page(odometer: 1100).Releases[0].Given);

        car.Wait(TimeSpan.FromDays(15));
        Assert.Contains("has expired at 1,100 km or after 16 Mar 2026", car.Page().Releases[1].Words, StringComparison.Ordinal);

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Equal(
            "Not released to road: the release of 2 Mar 2026 ended because of later work or a finding.", car.Page().Releases[1].Words);
    }

    [Fact]
    public void After_the_re_torque_nothing_is_asked_and_a_moved_nut_is_told()
    {
        var job = car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        var again = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Declare(TestRegister.WheelDown);
        foreach (var nut in car.Positions(TestRegister.Nut, TestRegister.Left))
        {
            car.Do(TestPerson.Tess, new RecordSettled(
                again, "nuts", [nut], nut.Number == 2, nut.Number == 2 ? 12 : null, TorqueKind.SettingConfirmed,
                CarAtWork.NewtonMetres(110), TestTools.Click, 1060, CarAtWork.Shown));
        }

        var page = car.Page();

        Assert.Empty(page.Duties);
        Assert.Equal("done", Assert.Single(page.ClassA).ReTorque);
        Assert.Equal(
            "wheel nut, front-left, no. 2: moved by 12 degrees at the re-torque after the drive", Assert.Single(page.Found).Words);
        Assert.NotEqual(job, again);
    }

    [Fact]
    public void A_nut_that_had_moved_further_than_a_joint_settles_is_told_by_how_much()
    {
        car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        var again = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Declare(TestRegister.WheelDown);
        car.Do(TestPerson.Tess, new RecordSettled(
            again, "nuts", [car.Positions(TestRegister.Nut, TestRegister.Left)[1]], true, 40, TorqueKind.SettingConfirmed,
            CarAtWork.NewtonMetres(110), TestTools.Click, 1060, CarAtWork.Shown));

        Assert.Contains(car.Page().Found, found => found.Words.Contains("it had moved 40 degrees by the re-torque after the drive, more than a joint settles", StringComparison.Ordinal));
    }

    [Fact]
    public void The_summary_after_an_opening_shows_the_joint_open_and_no_old_torque()
    {
        var job = car.FitLeftWheel();
        car.Issue();
        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left)[1]);

        var page = car.Page();

        Assert.Equal((2, 1), (page.Version, page.Replaces));
        Assert.Equal(PositionState.Open, page.Open[0].State);
        Assert.StartsWith("wheel nut, front-left: 5 of 5 open", page.Open[0].Words, StringComparison.Ordinal);
        Assert.Empty(page.ClassA);
        Assert.DoesNotContain("110 N·m", page.Text(), StringComparison.Ordinal);
    }
}
