using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Summaries;

/// <summary>What was stopped and is no fastener stands among the findings, with its decision.</summary>
public sealed class HeldWorkFindingsTests
{
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public HeldWorkFindingsTests() => job = car.FitLeftWheel();

    [Fact]
    public void A_step_to_be_done_again_is_found_until_it_is_signed_anew()
    {
        car.Do(Tess, new HoldWork(CarAtWork.Reason) { Job = job, Step = "faces@front-left" });
        car.Do(Theo, Decide(Disposition.Rework));
        Assert.Equal("to be redone; not finished", Found(car.Page()).Decision);

        car.Do(Tess, Sign(job, "faces@front-left", "clean"));

        Assert.Equal("redone", Found(car.Page()).Decision);
    }

    [Fact]
    public void A_step_used_as_it_is_stays_found_when_its_job_is_left_out()
    {
        car.Do(Lee, To(ReleaseKind.Road));
        car.Do(Tess, new HoldWork(CarAtWork.Reason) { Job = job, Step = "faces@front-left" });
        car.Do(Theo, Decide(Disposition.UseAsIs));
        car.Issue();
        car.Issue();

        var found = Found(car.Page(leaveOut: [job]));

        Assert.Equal(("used as it is, with a written acceptance by the maker or a named engineer", true), (found.Decision, found.UsedAsIs));
        Assert.EndsWith(": stopped because of damage or doubt", found.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_of_a_dangerous_joint_used_as_it_is_stays_found_while_it_is_on_the_car()
    {
        var stud = new JointPosition(TestRegister.Stud, TestRegister.Right, 1);
        var studs = car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5), TestRegister.Right);
        car.Open(Tess, studs, stud);
        car.FitNew(Tess, studs, "studs", stud);
        car.Do(Theo, new HoldWork(CarAtWork.Reason) { Job = studs, Lot = "lot 4471", Group = "studs" });
        Assert.Contains(car.Page().Open, item => item.State == PositionState.Held);
        car.Do(Lee, Decide(Disposition.UseAsIs));
        car.Do(Lee, new CancelJob(studs, CarAtWork.Reason, CarAtWork.Shown));
        car.Issue();

        var found = Found(car.Page(leaveOut: [job, studs]));

        Assert.Equal("parts marked “lot 4471”, wheel stud, front-right: stopped because of damage or doubt", found.Words);
        Assert.True(found.UsedAsIs);
    }

    private DecideWork Decide(Disposition disposition) =>
        new(car.Last, disposition, CarAtWork.Reason, disposition == Disposition.UseAsIs ? Written : null, CarAtWork.Shown);

    private static Finding Found(WorkSummary page) => Assert.Single(page.Found);
}
