using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

public class StepProgressTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();

    [Fact]
    public void A_step_counts_the_fasteners_that_have_its_own_stages()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        var nuts = car.Positions(TestRegister.Nut, Left);
        Assert.Equal(new StepProgress(0, 5), On(job, $"seat@{Left}"));

        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Open(Tess, job, nuts);
        car.ByHand(Tess, job, "nuts", nuts);
        car.Declare(TestRegister.WheelUp);
        car.Pull(Tess, job, "nuts", nuts[0], 1, 50);
        Assert.Equal(new StepProgress(1, 5), On(job, $"seat@{Left}"));
        Assert.True(On(job, $"seat@{Left}").IsBegun);
        Assert.Equal(new StepProgress(0, 5), On(job, $"final@{Left}"));
    }

    [Fact]
    public void Temporary_hardware_is_not_counted_and_a_step_that_tightens_nothing_has_none()
    {
        var studs = car.StartJob(TestProcedures.Studs(1, 3, 5, 2, 4), Left);
        var wheels = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);

        Assert.Equal(5, On(studs, $"drive@{Left}").Of);
        Assert.Equal(new StepProgress(0, 0), On(wheels, $"faces@{Left}"));
    }

    private StepProgress On(JobId job, string step) => StepProgress.On(car.State, car.As(Tess).Placed(car.State.Jobs[job]).Step(step)!);
}
