using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>OPEN was pressed for the wrong corner or on the wrong car: it is taken back by a new entry, and a second person has looked.</summary>
public class NeverOpenedScenarios
{
    private const string Left = TestRegister.Left;
    private const string Right = TestRegister.Right;
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public NeverOpenedScenarios()
    {
        job = car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
    }

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, Left);

    private ReleaseStanding Road => car.State.StandingOf(car.As(Lee), ReleaseKind.Road);

    [Fact]
    public void An_opening_on_the_wrong_corner_is_taken_back_by_two_and_the_joint_is_as_it_was()
    {
        var before = Nuts.Select(car.State.Of).ToList();
        var opening = Open();
        car.Do(Tess, new VoidEntry(opening, null, CarAtWork.Reason));
        Assert.All(Nuts, nut => Assert.Equal(PositionState.Open, car.Shows(nut)));

        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(before, Nuts.Select(car.State.Of));
        Assert.Equal(StepStanding.Signed, car.Standing(job, $"final@{Left}"));
    }

    [Fact]
    public void Nobody_takes_an_opening_back_alone()
    {
        Open();
        car.Do(Lee, new VoidEntry(car.Last, null, CarAtWork.Reason));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown)));
    }

    [Fact]
    public void The_release_that_it_ended_is_suspended_until_the_lead_signs_that_it_stands()
    {
        TakeBack(Open());
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
        car.Do(Lee, new UpholdRelease(ReleaseKind.Road, CarAtWork.Shown));
        Assert.Equal(ReleaseStandingKind.Stands, Road.Kind);
    }

    [Fact]
    public void A_release_that_another_opening_ended_too_stays_ended()
    {
        var opening = Open();
        car.Open(Tess, null, car.Positions(TestRegister.Nut, Right));
        TakeBack(opening);
        Assert.Equal(ReleaseStandingKind.Ended, Road.Kind);
    }

    [Fact]
    public void What_was_worked_on_since_is_not_taken_back()
    {
        var opening = Open();
        car.Do(Tess, new HoldPositions([Nuts[0]], CarAtWork.Reason));
        Assert.Equal([HoldReason.OpenedAndGoneOn], car.Refused(Tess, new VoidEntry(opening, null, CarAtWork.Reason)));
    }

    [Fact]
    public void A_re_torque_that_was_recorded_and_decided_since_is_something_that_was_recorded()
    {
        var opening = Open();
        car.Do(Tess, new RecordSettled(job, "nuts", [Nuts[0]], false, null, TorqueKind.Reading, CarAtWork.NewtonMetres(110), TestTools.Dial, 1050, CarAtWork.Shown));
        car.Do(Lee, Decision(Nuts[0], Disposition.UseAsIs, accepted: true));
        Assert.Equal([HoldReason.OpenedAndGoneOn], car.Refused(Tess, new VoidEntry(opening, null, CarAtWork.Reason)));
    }

    [Fact]
    public void What_was_worked_on_between_the_two_is_not_confirmed()
    {
        var opening = Open();
        car.Do(Tess, new VoidEntry(opening, null, CarAtWork.Reason));
        var taking = car.Last;
        car.Do(Tess, new HoldPositions([Nuts[0]], CarAtWork.Reason));
        Assert.Equal([HoldReason.OpenedAndGoneOn], car.Refused(Theo, new ConfirmCorrection(taking, CarAtWork.Reason, CarAtWork.Shown)));
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_result_that_it_undid_stands_again_and_not_where_another_opening_undid_it_too()
    {
        car.Do(Tess, new RecordResult("alignment", [new MeasuredValue("toe", 1, "mm")], ResultBasis.Measured, "rig", [], null, null, CarAtWork.Shown));
        car.Open(Tess, null, car.Positions(TestRegister.StrutTop, Left));
        var first = car.Last;
        Assert.Equal(first, car.State.Results["alignment"].VoidBy);
        TakeBack(first);
        Assert.Equal(0, car.State.Results["alignment"].VoidBy);

        car.Open(Tess, null, car.Positions(TestRegister.StrutTop, Left));
        var second = car.Last;
        car.Open(Tess, null, car.Positions(TestRegister.StrutTop, Right));
        var third = car.Last;
        TakeBack(second);
        Assert.Equal(third, car.State.Results["alignment"].VoidBy);
    }

    [Fact]
    public void What_a_setting_opened_goes_with_the_setting()
    {
        var barred = new CarAtWork(register: TestRegister.With(5) with
        {
            Settings = new Dictionary<string, IReadOnlyList<Undone>> { ["front-bar"] = [new(UndoneKind.Joint, TestRegister.BarLink)] },
        });
        barred.Do(Tess, new RecordResult("setting:front-bar", [new MeasuredValue("hole", 2, "")], ResultBasis.LookedAt, null, [], null, null, CarAtWork.Shown));
        Assert.IsType<Opened>(barred.Book[^1].Entry);
        Assert.Equal([HoldReason.OpenedAndGoneOn], barred.Refused(Tess, new VoidEntry(barred.Last, null, CarAtWork.Reason)));
    }

    [Fact]
    public void The_entry_says_that_it_waits_for_a_second_person_and_then_that_it_was_taken_back()
    {
        var opening = car.Book[(int)Open() - 1];
        car.Do(Tess, new VoidEntry(opening.Number, null, CarAtWork.Reason));
        Assert.False(car.State.StandingOf(opening).Struck);
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.True(car.State.StandingOf(opening).Struck);
        Assert.StartsWith("taken back as never done", car.State.StandingOf(opening).Words, StringComparison.Ordinal);
    }

    private long Open()
    {
        car.Open(Tess, null, Nuts);
        return car.Last;
    }

    private void TakeBack(long opening)
    {
        car.Do(Tess, new VoidEntry(opening, null, CarAtWork.Reason));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
    }
}
