using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.ShopProcedures.SeedTools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.ShopProcedures;

/// <summary>P3 of the demo shop: studs in place of wheel bolts, driven with two jammed nuts.</summary>
public class WheelStudTests
{
    private const string Left = "front-left";
    private const string Drive = "drive@front-left";
    private readonly SeedJob job = new("P3-wheel-studs.yaml", Left);

    [Fact]
    public void Every_step_is_signed_after_five_studs_were_driven_and_had_cured()
    {
        job.Stand("hub", "held");
        job.FinishUpTo("cure", W5, W7);
        job.Car.Wait(TimeSpan.FromHours(24));
        job.FinishUpTo("none", W5, W7);

        Assert.True(job.IsSigned);
        Assert.Equal(10, job.Pulls.Count);
        Assert.Equal(PositionState.Checked, job.Car.Shows("wheel.stud", Left));
    }

    [Fact]
    public void A_stud_that_is_driven_late_is_held_and_the_ones_driven_in_time_are_not()
    {
        job.Stand("hub", "held");
        job.FinishUpTo("drive", W5, W7);
        job.PullNext(Drive, W7);
        Assert.Empty(job.PullNext(Drive, W7).Problems);
        job.Car.Open(Tess, job.Id, job.At("wheel.stud-jam-pair", Left, 1));
        job.PullNext(Drive, W7);
        job.Car.Wait(TimeSpan.FromMinutes(30));

        var late = job.PullNext(Drive, W7);

        Assert.Equal([HoldReason.TooLate], late.Problems);
        Assert.Equal(PositionState.Held, job.Car.Shows(late.Position));
        Assert.NotEqual(PositionState.Held, job.Car.Shows(job.At("wheel.stud", Left, 1)[0]));
    }
}
