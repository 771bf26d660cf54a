using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Procedures;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P5 of the demo shop in March, and its wheel off again for the brakes (P4) in May.</summary>
public class WheelOffInMayTests
{
    private const string Corner = "front-left";
    private readonly SeedJob march = new("P5-wheel-fit-up.yaml", Corner);

    public WheelOffInMayTests()
    {
        foreach (var step in march.Placed.Steps)
        {
            foreach (var condition in step.Work.SelectMany(work => work.Stages.SelectMany(stage => work.Instance.Group.Stages[stage - 1].Conditions)).Distinct())
            {
                march.Stand(condition.Aspect, condition.Value);
            }

            march.Finish(step.Id, W7);
        }

        march.Car.Do(Lee, CarWork.To(ReleaseKind.Road));
        march.Car.Wait(TimeSpan.FromDays(60));
    }

    [Fact]
    public void Nothing_overflows_into_the_job_of_March()
    {
        Assert.Equal(JobEnd.ByRelease, March.End);
        var may = march.Car.StartJob(Seed.Procedure("P4-brakes.yaml").Value!, Corner);
        march.Car.Open(Tess, may, march.At("wheel.nut", Corner));

        Assert.False(March.IsRunning);
        Assert.All(march.Placed.Steps, step => Assert.Equal(StepStanding.Signed, march.Car.Standing(march.Id, step.Id)));
        Assert.DoesNotContain(Refusals, point => point.Job == march.Id && point.Reason is HoldReason.StepNotSigned or HoldReason.StepToReconfirm);
        Assert.Contains(Refusals, point => point.Job == may && point.Reason == HoldReason.StepNotSigned);
        Assert.Contains(Refusals, point => point.Reason == HoldReason.NothingCloses && point.Joint == new Joint("wheel.nut", Corner));
    }

    [Fact]
    public void A_wheel_put_back_on_by_a_job_of_its_own_leaves_the_job_of_March_ended()
    {
        march.Car.Open(Tess, null, march.At("wheel.nut", Corner));
        march.Car.StartJob(Seed.Procedure("P5-wheel-fit-up.yaml").Value!, Corner);

        Assert.False(March.IsRunning);
        Assert.DoesNotContain(Refusals, point => point.Job == march.Id && point.Reason is HoldReason.StepNotSigned or HoldReason.StepToReconfirm);
    }

    private JobBook March => march.Car.State.Jobs[march.Id];

    private IReadOnlyList<HoldPoint> Refusals => HoldRules.Standard.OnRelease(march.Car.State, march.Car.As(Lee), ReleaseKind.Road, customerAccepted: true);
}
