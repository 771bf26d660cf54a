using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed class SummaryStandingTests
{
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public SummaryStandingTests()
    {
        job = car.FitLeftWheel();
        car.Issue();
    }

    [Fact]
    public void Is_current_until_something_is_recorded()
    {
        Assert.IsType<SummaryStanding.Current>(car.Standing());

        car.StartJob(TestProcedures.Strut(), TestRegister.Left);

        Assert.IsType<SummaryStanding.Current>(car.Standing());
    }

    [Fact]
    public void An_opening_says_since_when_and_which_joints()
    {
        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        var since = car.Now;
        car.Open(TestPerson.Tess, null, car.Positions(TestRegister.BarLink, TestRegister.Front));

        var overtaken = Assert.IsType<SummaryStanding.Overtaken>(car.Standing());

        Assert.Equal(since, overtaken.Since);
        Assert.Equal(["wheel nut, front-left", "bar link, front"], overtaken.Opened);
        Assert.True(overtaken.Grave);
    }

    [Fact]
    public void A_tool_that_falls_into_doubt_speaks_against_it()
    {
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));

        var overtaken = Assert.IsType<SummaryStanding.Overtaken>(car.Standing());

        Assert.Equal(car.Now, overtaken.Since);
        Assert.Equal(["a tool that was used is in doubt"], overtaken.Reasons);
    }

    [Fact]
    public void A_correction_and_a_hold_speak_against_it()
    {
        car.Do(TestPerson.Tess, new VoidEntry(car.Book.First(entry => entry.Entry is TorqueRecorded).Number, null, CarAtWork.Reason));
        car.Do(TestPerson.Tess, new HoldPositions([new(TestRegister.BarLink, TestRegister.Front, 1)], CarAtWork.Reason));

        Assert.Equal(
            ["a record was corrected", "a joint is held"], Assert.IsType<SummaryStanding.Overtaken>(car.Standing()).Reasons);
    }

    [Fact]
    public void A_release_does_not_make_it_untrue()
    {
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));

        Assert.False(Assert.IsType<SummaryStanding.Overtaken>(car.Standing()).Grave);
    }

    [Fact]
    public void A_newer_version_replaces_it()
    {
        car.Issue();

        var replaced = Assert.IsType<SummaryStanding.Replaced>(car.Standing());

        Assert.Equal((2, car.Now), (replaced.By, replaced.At));
        Assert.IsType<SummaryStanding.Current>(car.Standing(2));
    }

    [Fact]
    public void Is_not_issued_for_a_car_on_which_no_job_was_started() => Assert.Equal(
        [HoldReason.NoJobYet], new CarAtWork().Refused(TestPerson.Lee, new IssueSummary(CarAtWork.Reason, 0, CarAtWork.Shown)));

    [Fact]
    public void Is_not_issued_from_a_page_that_the_car_has_left_behind()
    {
        var shown = car.State.Number;
        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));

        Assert.Equal(
            [HoldReason.Superseded],
            car.Refused(TestPerson.Lee, new IssueSummary(CarAtWork.Reason, shown, CarAtWork.Shown)));
        Assert.Equal([HoldReason.NoRight], car.Refused(TestPerson.Tess, new IssueSummary(CarAtWork.Reason, car.State.Number, CarAtWork.Shown)));
    }
}
