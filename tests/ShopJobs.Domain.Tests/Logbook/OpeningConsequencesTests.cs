using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>What is told before OPEN is what OPEN does.</summary>
public class OpeningConsequencesTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();

    [Fact]
    public void Opening_one_nut_of_a_released_wheel_tells_the_whole_joint_its_records_releases_and_summary()
    {
        car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Move));
        car.Do(Lee, To(ReleaseKind.Road));
        car.Do(Lee, new IssueSummary(CarAtWork.Reason, car.State.Number, CarAtWork.Shown));

        var told = OpeningConsequences.Of(car.State, car.As(Theo), [new JointPosition(TestRegister.Nut, Left, 2)]);

        Assert.Equal(car.Positions(TestRegister.Nut, Left), told.Opened.Positions);
        Assert.Equal(10, told.RecordsVoid);
        Assert.Equal([ReleaseKind.Move, ReleaseKind.Road], told.Releases);
        Assert.Equal(1, told.SummaryOutdated);
        car.Open(Theo, null, new JointPosition(TestRegister.Nut, Left, 2));
        Assert.Equal(((Opened)car.Book[^1].Entry).Positions, told.Opened.Positions);
        Assert.All(told.Releases, kind => Assert.Equal(car.Last, car.State.Releases[kind].VoidBy));
    }

    [Fact]
    public void Signed_steps_of_a_running_job_are_told_and_fall()
    {
        var job = car.FitLeftWheel();

        var told = OpeningConsequences.Of(car.State, car.As(Theo), car.Positions(TestRegister.Nut, Left));

        Assert.Equal([$"faces@{Left}", $"seat@{Left}", $"final@{Left}"], told.Steps.Select(step => step.Id));
        car.Open(Theo, null, car.Positions(TestRegister.Nut, Left));
        Assert.All(told.Steps, step => Assert.NotEqual(StepStanding.Signed, car.Standing(job, step.Id)));
    }

    [Fact]
    public void What_rides_on_it_and_what_it_undoes_is_told()
    {
        car.FitLeftWheel();

        var stud = OpeningConsequences.Of(car.State, car.As(Theo), [new JointPosition(TestRegister.Stud, Left, 1)]);
        var clamp = OpeningConsequences.Of(car.State, car.As(Theo), [new JointPosition(TestRegister.StrutClamp, Left, 1)]);

        var nuts = stud.Opened.AlsoOpened.Where(position => position.Key == TestRegister.Nut).OrderBy(position => position.Number);
        Assert.Equal(car.Positions(TestRegister.Nut, Left), nuts);
        Assert.Equal(car.Positions(TestRegister.StrutTop, Left), clamp.Opened.AlsoOpened);
        Assert.Equal(["alignment", "corner-weights", "front-bar"], clamp.Opened.Undid.Select(undone => undone.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Telling_changes_nothing()
    {
        car.FitLeftWheel();
        var before = car.State;

        OpeningConsequences.Of(car.State, car.As(Theo), car.Positions(TestRegister.Nut, Left));

        Assert.Same(before, car.State);
        Assert.Equal(PositionState.Checked, car.Shows(TestRegister.Nut, Left));
    }
}
