using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Work on a joint that stops half done and goes on.</summary>
public class HandoverTests
{
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public HandoverTests()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Do(Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Null(Half);
        car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left));
        car.Pull(Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left)[0], 1, 50, TestTools.Dial, 0);
    }

    private HalfDone? Half => HalfDone.Of(car.State, car.Placed(job).Group("nuts", TestRegister.Left)!);

    [Fact]
    public void Whoever_works_on_is_not_asked_and_after_half_an_hour_is()
    {
        Assert.Equal(car.Last, Half!.Number);
        Assert.False(Half.IsAsked(Tess.Id, car.Now.AddMinutes(30)));
        Assert.True(Half.IsAsked(Tess.Id, car.Now.AddMinutes(31)));
    }

    [Fact]
    public void Somebody_else_looks_at_the_last_item_first_and_once()
    {
        Assert.True(Half!.IsAsked(Theo.Id, car.Now));

        car.Do(Theo, new TakeOver(job, "nuts", TestRegister.Left, Half.Number));

        Assert.False(Half!.IsAsked(Theo.Id, car.Now));
        Assert.True(Half.IsAsked(Tess.Id, car.Now));
        Assert.True(Half.IsAsked(Theo.Id, car.Now.AddMinutes(31)));
    }

    [Fact]
    public void Who_leaves_it_says_so_and_is_asked_too_when_he_comes_back()
    {
        car.Do(Tess, new LeaveHalfDone(job, "nuts", TestRegister.Left, Half!.Number) { Words = CarAtWork.Reason });

        Assert.Equal((CarAtWork.Reason, Tess.Id, false), (Half!.Left!.Words, Half.Left.Person, Half.Left.TakenOver));
        Assert.True(Half.IsAsked(Tess.Id, car.Now));
        car.Do(Tess, new TakeOver(job, "nuts", TestRegister.Left, Half.Number));
        Assert.False(Half!.IsAsked(Tess.Id, car.Now));
    }

    [Fact]
    public void The_next_pull_ends_what_was_said()
    {
        car.Do(Theo, new TakeOver(job, "nuts", TestRegister.Left, Half!.Number));
        car.Pull(Theo, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left)[2], 1, 50, TestTools.Dial, 1);

        Assert.Null(Half!.Left);
        Assert.False(Half.IsAsked(Theo.Id, car.Now));
    }

    [Fact]
    public void A_finished_joint_is_not_half_done_and_a_stale_word_is_refused()
    {
        var shown = Half!.Number;
        foreach (var (visit, number) in new[] { 3, 5, 2, 4 }.Index())
        {
            car.Pull(Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Left)[number - 1], 1, 50, TestTools.Dial, visit + 1);
        }

        Assert.Equal([HoldReason.WentOn], car.Refused(Theo, new TakeOver(job, "nuts", TestRegister.Left, shown)));
        car.Do(Tess, CarWork.Sign(job, $"seat@{TestRegister.Left}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(Tess, job, "nuts", TestRegister.Left, 2);

        Assert.Null(Half);
        Assert.Equal([HoldReason.NothingHalfDone], car.Refused(Theo, new TakeOver(job, "nuts", TestRegister.Left, shown)));
        Assert.Equal([HoldReason.UnknownGroup], car.Refused(Theo, new LeaveHalfDone(job, "bolts", TestRegister.Left, shown)));
    }
}
