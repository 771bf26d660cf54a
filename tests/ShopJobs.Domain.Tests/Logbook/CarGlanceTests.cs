using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

public class CarGlanceTests
{
    private const string Left = TestRegister.Left;
    private const int Lasting = 28; // studs 10, nuts 10, strut tops 4, strut clamps 2, bar link 1, brake bolt 1

    private readonly CarAtWork car = new();
    private readonly Procedure wheels = TestProcedures.Wheels(1, 3, 5, 2, 4);

    [Fact]
    public void Car_nobody_touched_is_as_found_and_may_be_moved()
    {
        var glance = Look();

        Assert.Equal(Lasting, glance.Count(GlanceCount.AsFound));
        Assert.Equal([GlanceCount.AsFound], glance.Counts.Keys);
        Assert.True(glance.MayBeMoved);
        Assert.Null(glance.Next);
        Assert.Null(glance.OldestHandTight);
    }

    [Fact]
    public void Every_fastener_is_counted_once_through_the_whole_job()
    {
        var job = car.StartJob(wheels, Left);
        var nuts = car.Positions(TestRegister.Nut, Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Open(Tess, job, nuts);
        Counts(GlanceCount.Open, 5);
        car.ByHand(Tess, job, "nuts", nuts);
        Counts(GlanceCount.HandTight, 5);
        car.Declare(TestRegister.WheelUp);
        car.PullStage(Tess, job, "nuts", Left, 1);
        Counts(GlanceCount.Staged, 5);
        car.Do(Tess, Sign(job, $"seat@{Left}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(Tess, job, "nuts", Left, 2);
        Counts(GlanceCount.ToWitness, 5);
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        Counts(GlanceCount.AtTorque, 5);
        car.Do(Tess, Sign(job, $"final@{Left}"));
        car.Do(Lee, To(ReleaseKind.Road));
        Counts(GlanceCount.Due, 5);

        void Counts(GlanceCount kind, int expected)
        {
            Assert.Equal(expected, Look().Count(kind));
            Assert.Equal(Lasting, Look().Counts.Values.Sum());
        }
    }

    [Fact]
    public void Oldest_hand_tight_is_the_one_run_down_first()
    {
        var job = car.StartJob(wheels, Left, TestRegister.Right);
        car.Open(Tess, job, [.. car.Positions(TestRegister.Nut, Left), .. car.Positions(TestRegister.Nut, TestRegister.Right)]);
        car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, TestRegister.Right));
        var first = car.Now;
        car.Wait(TimeSpan.FromHours(3));
        car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, Left));

        Assert.Equal((TestRegister.Right, (DateTime?)first), (Look().OldestHandTight!.Value.Position.Place, Look().OldestHandTight!.Value.Since));
    }

    [Fact]
    public void Held_fastener_is_on_top_and_is_the_first_reason_against_moving()
    {
        var job = car.StartJob(wheels, Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, car.Positions(TestRegister.Nut, Left));
        car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, Left));
        car.Pull(Tess, job, "nuts", new(TestRegister.Nut, Left, 1), 1, 90, TestTools.Dial);
        var at = car.Now;

        var glance = Look();
        Assert.Equal((new JointPosition(TestRegister.Nut, Left, 1), (DateTime?)at), (Assert.Single(glance.Held).Position, glance.Held[0].Since));
        Assert.False(glance.MayBeMoved);
        Assert.Equal(HoldReason.Held, glance.AgainstMoving[0].Reason);
        Assert.Equal("wheel nut front-left 1: held: over the permitted maximum", glance.AgainstMoving[0].Words);
    }

    [Fact]
    public void Same_reason_on_all_nuts_of_a_wheel_is_said_once()
    {
        car.Open(Tess, null, car.Positions(TestRegister.Nut, Left));

        Assert.Equal(
            ["wheel nut front-left is open and no job closes it", "wheel nut front-left 1 to 5: open"],
            Look().AgainstMoving.Select(reason => reason.Words));
    }

    [Fact]
    public void Next_step_is_blocked_by_person_until_somebody_is_on_it()
    {
        car.StartJob(wheels, Left);

        Assert.Equal(($"faces@{Left}", (Blocker?)Blocker.Person), Next(manned: false));
        Assert.Equal(($"faces@{Left}", null), Next(manned: true));
    }

    [Fact]
    public void Next_step_is_blocked_by_a_hold_a_missing_wrench_and_a_witness()
    {
        var job = car.StartJob(wheels, Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Open(Tess, job, car.Positions(TestRegister.Nut, Left));
        car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, Left));
        Assert.Equal(Blocker.Wrench, CarGlance.Of(car.State, car.As(Lee), [car.Tool(TestTools.Overdue), car.Tool(TestTools.Small)], (_, _) => true).Next!.Blocker);
        Assert.Null(Next(manned: true).Blocker);

        car.Do(Lee, new HoldPositions([new(TestRegister.Nut, Left, 3)], CarAtWork.Reason));
        Assert.Equal(Blocker.Held, Next(manned: true).Blocker);

        var other = new CarAtWork();
        var second = other.StartJob(wheels, Left);
        other.TightenWheel(Tess, second, Left);
        Assert.Equal(Blocker.Witness, CarGlance.Of(other.State, other.As(Lee), [other.Tool(TestTools.Click)], (_, _) => true).Next!.Blocker);
    }

    /// <summary>What is asked of the tool is an angle: its torque range does not matter, as it does not when the turn is judged.</summary>
    [Fact]
    public void Next_step_that_turns_by_an_angle_is_blocked_until_a_tool_measures_one()
    {
        var head = new CarAtWork();
        var job = head.StartJob(TestProcedures.Head(), Left);
        var bolts = head.Positions(TestRegister.StrutTop, Left);
        head.Open(Tess, job, bolts);
        head.FitNew(Tess, job, "bolts", bolts);
        head.ByHand(Tess, job, "bolts", bolts);
        head.PullStage(Tess, job, "bolts", Left, 1, TestTools.Dial);
        head.Do(Tess, Sign(job, $"snug@{Left}"));
        var wrench = head.Tool(TestTools.Angle);
        var strong = wrench with { Tool = new TorqueTool(TestTools.Angle, "WB", "NB-WB", ToolKind.Angle, TorqueUnit.NewtonMetre, 100, 400, 1) };

        Assert.Equal(Blocker.Wrench, Blocked(head.Tool(TestTools.Click), head.Tool(TestTools.Dial)));
        Assert.Null(Blocked(head.Tool(TestTools.Dial), wrench));
        Assert.Null(Blocked(strong));

        Blocker? Blocked(params ToolState[] tools) => CarGlance.Of(head.State, head.As(Lee), tools, (_, _) => true).Next!.Blocker;
    }

    [Fact]
    public void Next_step_is_blocked_by_a_cure_until_it_runs_out()
    {
        var stud = new JointPosition(TestRegister.Stud, Left, 1);
        var one = new CarAtWork(nuts: 1);
        var job = one.StartJob(TestProcedures.Studs(1), Left);
        one.Open(Tess, job, stud);
        one.FitNew(Tess, job, "studs", stud);
        one.ByHand(Tess, job, "studs", stud);
        one.Pull(Tess, job, "jam", stud with { Key = TestRegister.Jam }, 1, 90);
        one.Pull(Tess, job, "studs", stud, 1, 73);
        one.Open(Tess, job, stud with { Key = TestRegister.Jam });
        one.Do(Tess, Sign(job, $"drive@{Left}"));
        Assert.Equal((Blocker?)Blocker.Cure, CarGlance.Of(one.State, one.As(Lee), [one.Tool(TestTools.Click)], (_, _) => true).Next!.Blocker);

        one.Wait(TimeSpan.FromHours(24));
        Assert.Null(CarGlance.Of(one.State, one.As(Lee), [one.Tool(TestTools.Click)], (_, _) => true).Next!.Blocker);
    }

    private CarGlance Look() => CarGlance.Of(car.State, car.As(Lee), [car.Tool(TestTools.Click)], (_, _) => true);

    private (string Step, Blocker? Blocker) Next(bool manned)
    {
        var next = CarGlance.Of(car.State, car.As(Lee), [car.Tool(TestTools.Click)], (_, _) => manned).Next!;
        return (next.Step.Id, next.Blocker);
    }
}
