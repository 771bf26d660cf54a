using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>A new register was taken in over running jobs: reports were refused and signing broke off.</summary>
public class RegisterScenarios
{
    private const string Front = TestRegister.Front;
    private const string Left = TestRegister.Left;
    private static readonly JointPosition Link = new(TestRegister.BarLink, Front, 1);
    private readonly CarAtWork car = new();

    [Fact]
    public void A_running_job_goes_on_to_its_end_when_the_new_register_lacks_its_joint()
    {
        var job = car.StartJob(TestProcedures.Link(), Front);
        car.Open(Tess, job, Link);

        car.TakeIn(Without(TestRegister.BarLink));

        Assert.Empty(car.ByHand(Tess, job, "link", Link).Problems);
        Assert.IsType<StepConfirmed>(car.Do(Tess, Sign(job, $"by-hand@{Front}")));
        Assert.Equal(Link, Assert.IsType<NextAction.PullNow>(car.Next(job, $"torque@{Front}")).Cell.Position);
        Assert.Empty(car.Pull(Tess, job, "link", Link, 1, 60).Problems);
        Assert.IsType<StepConfirmed>(car.Do(Tess, Sign(job, $"torque@{Front}")));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"torque@{Front}"));
        Assert.Equal(PositionState.AtTorque, car.Shows(Link));
    }

    [Fact]
    public void Opening_and_holding_go_on_when_the_new_register_lacks_the_joint()
    {
        var job = car.StartJob(TestProcedures.Link(), Front);

        car.TakeIn(Without(TestRegister.BarLink));

        car.Open(Tess, job, Link);
        Assert.Equal(PositionState.Open, car.Shows(Link));
        car.Do(Tess, new HoldPositions([Link], CarAtWork.Reason));
        Assert.Equal(PositionState.Held, car.Shows(Link));
    }

    [Fact]
    public void A_running_job_goes_on_at_a_position_that_the_new_register_counts_no_more()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        var nuts = car.Positions(TestRegister.Nut, Left);

        car.TakeIn(TestRegister.With(4));

        car.Open(Tess, job, nuts);
        Assert.Empty(car.ByHand(Tess, job, "nuts", nuts).Problems);
        Assert.All(nuts, nut => Assert.Equal(PositionState.HandTight, car.Shows(nut)));
    }

    [Fact]
    public void What_was_opened_stays_in_the_release_and_a_joint_that_no_register_has_is_unknown()
    {
        var job = car.StartJob(TestProcedures.Link(), Front);
        car.Open(Tess, job, Link);
        car.TakeIn(Without(TestRegister.BarLink));

        Assert.Contains(Link, ReleaseRules.PositionsOf(car.State, car.As(TestPerson.Lee)));
        Assert.Contains(HoldReason.NotAtStage, car.Refused(Lee, To(ReleaseKind.Move)));
        Assert.Equal([HoldReason.UnknownPosition], car.Refused(Tess, new HoldPositions([new JointPosition("no.such", Front, 1)], CarAtWork.Reason)));
    }

    private JointRegister Without(string key) =>
        car.Register with { Kinds = car.Register.Kinds.Where(kind => kind.Key != key).ToDictionary(kind => kind.Key, kind => kind.Value) };
}
