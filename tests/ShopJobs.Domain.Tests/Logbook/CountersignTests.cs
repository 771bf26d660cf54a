using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Pulls of somebody without the right to record, with one who has it standing by.</summary>
public class CountersignTests
{
    private static readonly int[] Star = [1, 3, 5, 2, 4];
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> nuts;

    public CountersignTests()
    {
        job = car.StartJob(TestProcedures.Wheels(Star), TestRegister.Left);
        nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Open(TestPerson.Tess, job, nuts);
        car.Declare(TestRegister.WheelUp);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
    }

    [Fact]
    public void The_pattern_goes_on_and_the_stage_ends_with_the_countersignature()
    {
        foreach (var number in Star)
        {
            Assert.Equal(number, Assert.IsType<NextAction.PullNow>(Next()).Cell.Position.Number);
            Assert.Equal([HoldReason.NoRightToRecord], car.Pull(TestPerson.Nobody, job, "nuts", nuts[number - 1], 1, 50).Problems);
        }

        var asked = Assert.IsType<NextAction.Countersign>(Next());
        Assert.Equal(5, asked.Pulls.Count);
        Assert.All(nuts, nut => Assert.False(car.State.IsDone(car.State.Of(nut), 1)));

        car.Do(TestPerson.Theo, new Countersign([.. asked.Pulls.Select(pull => pull.Number)], CarAtWork.Shown));

        Assert.All(nuts, nut => Assert.True(car.State.IsDone(car.State.Of(nut), 1)));
        Assert.IsNotType<NextAction.Countersign>(Next());
    }

    [Fact]
    public void The_next_stage_does_not_count_before_it()
    {
        foreach (var number in Star)
        {
            car.Pull(TestPerson.Nobody, job, "nuts", nuts[number - 1], 1, 50);
        }

        Assert.Contains(HoldReason.LowerStageMissing, car.Pull(TestPerson.Tess, job, "nuts", nuts[0], 2, 110).Problems);
    }

    [Fact]
    public void A_second_pull_on_what_waits_is_out_of_order()
    {
        car.Pull(TestPerson.Nobody, job, "nuts", nuts[0], 1, 50);

        Assert.Equal([HoldReason.OutOfOrder], car.Pull(TestPerson.Tess, job, "nuts", nuts[0], 1, 50).Problems);
    }

    private NextAction Next() => car.Next(job, $"seat@{TestRegister.Left}");
}
