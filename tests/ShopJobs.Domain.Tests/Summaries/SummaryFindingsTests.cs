using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed class SummaryFindingsTests
{
    private static readonly JointPosition Last = new(TestRegister.Nut, TestRegister.Left, 4);

    private readonly CarAtWork car = new();
    private readonly JobId job;

    public SummaryFindingsTests()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.UpToFinal(job);
    }

    [Fact]
    public void A_hold_that_nobody_decided_is_open_and_found()
    {
        PullAllWithLastAt(131);

        var page = car.Page();

        Assert.Equal(
            new Finding("wheel nut, front-left, no. 4: tightened over the permitted maximum", "not decided yet: it is held", false) { Ours = true },
            OfTheNut(page));
        Assert.Contains(page.Found, found => found.Words.StartsWith("wheel stud, front-left, no. 4", StringComparison.Ordinal));
        Assert.Contains(page.Open, item => item.State == PositionState.Held);
        Assert.Empty(page.ClassA);
        Assert.DoesNotContain("131", page.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Used_as_it_is_is_shown_with_its_acceptance_and_beside_the_joint()
    {
        PullAllWithLastAt(131);
        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.UseAsIs, accepted: true));

        var page = car.Page();

        var found = OfTheNut(page);
        Assert.True(found.UsedAsIs);
        Assert.Equal("used as it is, with a written acceptance by the maker or a named engineer", found.Decision);
        var joint = Assert.Single(page.ClassA);
        Assert.Equal("110 N·m, 131 N·m", joint.Torque);
        Assert.Contains("used as it is", joint.Evidence, StringComparison.Ordinal);
    }

    [Fact]
    public void Used_as_it_is_stays_shown_when_its_job_is_left_out()
    {
        PullAllWithLastAt(131);
        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.UseAsIs, accepted: true));
        car.Do(TestPerson.Lee, CarWork.Decision(Last with { Key = TestRegister.Stud }, Disposition.UseAsIs, accepted: true));
        car.Do(TestPerson.Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"final@{TestRegister.Left}"));
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));

        Assert.True(OfTheNut(car.Page(leaveOut: [job])).UsedAsIs);
    }

    [Fact]
    public void Rework_is_called_redone_only_when_it_is_at_torque_again()
    {
        PullAllWithLastAt(131);
        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.Rework));
        Assert.Equal("to be redone; not finished", OfTheNut(car.Page()).Decision);

        car.Declare(TestRegister.WheelUp);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Lee, CarWork.Decision(Last with { Key = TestRegister.Stud }, Disposition.UseAsIs, accepted: true));
        car.Open(TestPerson.Tess, job, nuts);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        Assert.Equal("to be redone; not finished", OfTheNut(car.Page()).Decision);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"seat@{TestRegister.Left}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 2);

        var page = car.Page();
        Assert.Equal("redone, now at torque", OfTheNut(page).Decision);
        Assert.Equal("110 N·m", Assert.Single(page.ClassA).Torque);
    }

    [Fact]
    public void A_finding_on_a_joint_that_is_a_danger_to_life_stays_when_its_job_is_left_out()
    {
        Rework_is_called_redone_only_when_it_is_at_torque_again();
        Release();

        Assert.Equal("redone, now at torque", OfTheNut(car.Page(leaveOut: [job])).Decision);
    }

    [Fact]
    public void A_dangerous_finding_may_be_left_out_only_when_it_was_put_right_and_an_issued_page_said_so()
    {
        PullAllWithLastAt(131);
        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.Rework));
        car.Issue();
        Rework();
        Release();
        Assert.Equal("redone, now at torque", OfTheNut(car.Page(leaveOut: [job])).Decision);

        car.Issue();

        Assert.DoesNotContain(car.Page(leaveOut: [job]).Found, found => found.Words.StartsWith("wheel nut", StringComparison.Ordinal));
        Assert.Equal("redone, now at torque", OfTheNut(car.Page()).Decision);
    }

    [Fact]
    public void A_dangerous_finding_stays_after_many_issued_pages_while_its_joint_is_not_finished()
    {
        PullAllWithLastAt(131);
        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.Rework));
        car.Do(TestPerson.Lee, CarWork.Decision(Last with { Key = TestRegister.Stud }, Disposition.UseAsIs, accepted: true));
        car.Do(TestPerson.Lee, new CancelJob(job, CarAtWork.Reason, CarAtWork.Shown));
        car.Issue();
        car.Issue();

        Assert.Equal("to be redone; not finished", OfTheNut(car.Page(leaveOut: [job])).Decision);
    }

    [Fact]
    public void A_dangerous_nut_that_moved_at_its_re_torque_stays_until_an_issued_page_said_so()
    {
        PullAllWithLastAt(110);
        Release();
        car.Wait(TimeSpan.FromDays(2));
        car.Declare(TestRegister.WheelDown);
        car.Do(TestPerson.Tess, new RecordSettled(
            job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left), true, 10, TorqueKind.SettingConfirmed,
            CarAtWork.NewtonMetres(110), TestTools.Click, 1060, CarAtWork.Shown));
        Assert.Equal(5, car.Page(leaveOut: [job]).Found.Count(found => found.Words.Contains("moved by 10 degrees", StringComparison.Ordinal)));

        car.Issue();

        Assert.Empty(car.Page(leaveOut: [job]).Found);
    }

    /// <summary>The whole wheel again, after the decision on the nut.</summary>
    private void Rework()
    {
        car.Declare(TestRegister.WheelUp);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Lee, CarWork.Decision(Last with { Key = TestRegister.Stud }, Disposition.UseAsIs, accepted: true));
        car.Open(TestPerson.Tess, job, nuts);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"seat@{TestRegister.Left}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 2);
    }

    private void Release()
    {
        car.Do(TestPerson.Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"final@{TestRegister.Left}"));
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
    }

    private static Finding OfTheNut(WorkSummary page) => Assert.Single(page.Found, found => found.Words.StartsWith("wheel nut", StringComparison.Ordinal));

    private void PullAllWithLastAt(decimal torque)
    {
        foreach (var nut in (int[])[1, 3, 5, 2, 4])
        {
            car.Pull(TestPerson.Tess, job, "nuts", Last with { Number = nut }, 2, nut == 4 ? torque : 110, nut == 4 ? TestTools.Dial : TestTools.Click);
        }
    }
}
