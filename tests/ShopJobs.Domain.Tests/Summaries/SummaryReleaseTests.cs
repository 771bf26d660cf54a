using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

/// <summary>What the customer's page says of a release that was given and is not good any more.</summary>
public sealed class SummaryReleaseTests
{
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public SummaryReleaseTests()
    {
        job = car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        car.Issue();
    }

    [Fact]
    public void A_tool_in_doubt_suspends_the_release_and_the_new_page_says_do_not_drive()
    {
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));

        var page = car.Page();

        Assert.Equal(
            "Not released to road: the release of 2 Mar 2026 is suspended until we have looked at the car again.",
            Assert.Single(page.Releases, line => line.Words.Contains("to road", StringComparison.Ordinal)).Words);
        Assert.All(page.Releases, line => Assert.False(line.Given));
        Assert.Equal("Do not drive the car: its release is suspended. Speak to us first, 01632 960100.", page.Duties[0]);
        Assert.Equal("The release to road is suspended: we have to look at the car again before it is good", page.Open[0].Words);
    }

    [Fact]
    public void A_tool_in_doubt_makes_the_issued_page_say_that_the_road_is_no_longer_so()
    {
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));

        var standing = Assert.IsType<SummaryStanding.Overtaken>(car.Standing());

        Assert.Equal([ReleaseKind.Road], standing.NoLonger);
        Assert.True(standing.Grave);
    }

    [Fact]
    public void A_release_whose_doubt_was_lifted_stays_suspended_until_the_lead_has_signed()
    {
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));
        var doubt = car.Tool(TestTools.Click).Doubts[0].Number;
        var since = car.Now;
        car.TellTool(TestTools.Click, new Cleared([doubt], CarAtWork.Reason));

        var suspended = Assert.IsType<SummaryStanding.Overtaken>(car.Standing());
        Assert.Equal([ReleaseKind.Road], suspended.NoLonger);
        Assert.Equal(["a tool that was used was in doubt"], suspended.Reasons);
        Assert.Equal(since, suspended.Since);

        car.Do(TestPerson.Lee, new UpholdRelease(ReleaseKind.Road, CarAtWork.Shown));

        Assert.Empty(car.Standing().NoLonger);
        Assert.True(car.Page().Releases[0].Given);
    }

    [Fact]
    public void A_release_whose_re_torque_was_not_done_in_time_says_do_not_drive_and_why()
    {
        car.Wait(TimeSpan.FromDays(31));

        var standing = Assert.IsType<SummaryStanding.Overtaken>(car.Standing());

        Assert.True(standing.Grave);
        Assert.Equal([ReleaseKind.Road], standing.NoLonger);
        Assert.Equal(["its re-torque is not recorded in time"], standing.Reasons);
    }

    [Fact]
    public void A_car_that_only_left_and_came_in_again_owes_no_new_version()
    {
        car.Do(TestPerson.Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, null));
        car.Do(TestPerson.Tess, new ComeIn(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason });

        Assert.IsType<SummaryStanding.Current>(car.Standing());
    }

    [Fact]
    public void A_hold_after_the_release_suspends_it_and_an_opening_ends_it()
    {
        car.Do(TestPerson.Tess, new HoldPositions([car.Positions(TestRegister.Nut, TestRegister.Left)[0]], CarAtWork.Reason));
        Assert.Equal([ReleaseKind.Road], car.Standing().NoLonger);
        Assert.Contains("is suspended", Road(), StringComparison.Ordinal);

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.BarLink, TestRegister.Front));
        Assert.Equal([ReleaseKind.Road], car.Standing().NoLonger);
        Assert.Contains("ended because of later work or a finding", Road(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_had_ended_and_lost_a_sign_off_by_a_correction_is_open_again()
    {
        var signed = car.Book.Last(entry => entry.Entry is StepConfirmed).Number;
        car.Do(TestPerson.Tess, new VoidEntry(signed, null, CarAtWork.Reason));

        var page = car.Page();

        Assert.Contains(page.Open, item => item.Words.StartsWith("Fit the wheels: 1 of 3 steps void", StringComparison.Ordinal));
        Assert.Null(Assert.Single(page.Work).Until);
        Assert.Contains("is suspended", Road(), StringComparison.Ordinal);
        Assert.Equal([ReleaseKind.Road], car.Standing().NoLonger);
    }

    [Fact]
    public void A_release_that_was_taken_back_is_not_given_and_without_a_drive_it_starts_no_re_torque()
    {
        car.Do(TestPerson.Lee, new WithdrawRelease(ReleaseKind.Road, false, CarAtWork.Reason, CarAtWork.Shown));

        var page = car.Page();

        Assert.Equal("Not released to road: the release of 2 Mar 2026 was taken back.", Road());
        Assert.Contains(page.Duties, duty => duty.Contains("or within 14 days after the first drive, whichever comes first", StringComparison.Ordinal));
        Assert.Equal([ReleaseKind.Road], car.Standing().NoLonger);
        Assert.Equal(["a release was taken back"], Assert.IsType<SummaryStanding.Overtaken>(car.Standing()).Reasons);
    }

    [Fact]
    public void A_release_that_was_taken_back_after_a_drive_keeps_the_re_torque_reckoned_from_it()
    {
        car.Do(TestPerson.Lee, new WithdrawRelease(ReleaseKind.Road, true, CarAtWork.Reason, CarAtWork.Shown));

        Assert.Contains(car.Page().Duties, duty => duty.Contains("between 1,050 and 1,100 km on the odometer, or by 16 Mar 2026", StringComparison.Ordinal));
    }

    [Fact]
    public void A_second_release_to_the_road_starts_no_new_re_torque()
    {
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road, 1090));

        var page = car.Page();

        Assert.Contains("between 1,050 and 1,100 km on the odometer, or by 16 Mar 2026", page.Duties[0], StringComparison.Ordinal);
        Assert.Contains("It expires at 1,100 km or after 16 Mar 2026", page.Releases[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_re_torque_that_is_overdue_is_told_with_the_number_to_call()
    {
        Assert.StartsWith("Come back", car.Page(odometer: 1100).Duties[0], StringComparison.Ordinal);
        Assert.Contains(
            "A re-torque is overdue: 5 wheel nuts, front left. It was due by 1,100 km or by 16 Mar 2026. Call us before you drive on, 01632 960100.",
            car.Page(odometer: 1101).Duties);

        car.Wait(TimeSpan.FromDays(15));

        Assert.Contains(car.Page().Duties, duty => duty.StartsWith("A re-torque is overdue", StringComparison.Ordinal));
    }

    [Fact]
    public void A_version_that_was_only_replaced_says_nothing_of_driving()
    {
        car.Issue();

        Assert.Empty(Assert.IsType<SummaryStanding.Replaced>(car.Standing()).NoLonger);
    }

    [Fact]
    public void A_version_whose_release_ended_says_so_also_when_a_newer_one_was_issued()
    {
        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        car.Issue();

        Assert.Equal([ReleaseKind.Road], Assert.IsType<SummaryStanding.Replaced>(car.Standing()).NoLonger);
        Assert.Empty(car.Standing(2).NoLonger);
    }

    [Fact]
    public void A_page_that_named_no_release_says_nothing_of_one()
    {
        var other = new CarAtWork();
        var wheels = other.FitLeftWheel();
        other.Issue();
        other.Open(TestPerson.Tess, wheels, other.Positions(TestRegister.Nut, TestRegister.Left));

        Assert.Empty(other.Standing().NoLonger);
        Assert.True(Assert.IsType<SummaryStanding.Overtaken>(other.Standing()).Grave);
    }

    private string Road() => Assert.Single(car.Page().Releases, line => line.Words.Contains("released to road", StringComparison.Ordinal)).Words;
}
