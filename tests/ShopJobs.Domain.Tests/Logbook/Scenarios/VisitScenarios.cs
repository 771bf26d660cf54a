using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>Cars that were moved over a NO, left without a word, or stood on a trailer while their re-torque came due.</summary>
public class VisitScenarios
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, Left);

    private ReleaseStandingKind Road => car.State.StandingOf(car.As(Lee), ReleaseKind.Road).Kind;

    [Fact]
    public void A_car_with_an_open_wheel_is_not_moved_and_the_refusal_says_what_is_loose()
    {
        car.Open(Tess, car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left), Nuts);

        var refused = Assert.IsType<Verdict.Refused>(car.Try(Tess, new MoveCar("LiftA", "Floor")));

        Assert.Equal(Nuts, refused.Reasons.Where(point => point.Reason == HoldReason.NotAtStage).Select(point => point.Position!.Value));
        Assert.All(car.Book, recorded => Assert.IsNotType<CarMoved>(recorded.Entry));
    }

    [Fact]
    public void A_car_moved_all_the_same_is_recorded_with_what_was_loose_and_waits_to_be_looked_over_by_somebody_else()
    {
        var job = car.FitLeftWheel();
        car.Open(Tess, null, Nuts[0]);
        var moved = (CarMoved)car.Do(Tess, new ReportMoved("LiftA", "Outside", CarAtWork.Reason));
        Assert.Contains(new SpokenAgainst(HoldReason.NotAtStage, Nuts[0]), moved.Against);

        Close(job);
        Assert.Equal([HoldReason.MovedAnyway], car.Refused(Lee, To(ReleaseKind.Road)));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Tess, new LookOver(CarAtWork.Reason, CarAtWork.Shown)));
        car.Do(Theo, new LookOver(CarAtWork.Reason, CarAtWork.Shown));
        car.Do(Lee, To(ReleaseKind.Road));
        Assert.Equal([HoldReason.NothingToLookOver], car.Refused(Theo, new LookOver(CarAtWork.Reason, CarAtWork.Shown)));
    }

    [Fact]
    public void A_car_that_was_driven_away_without_a_release_is_looked_over_when_it_is_back()
    {
        var job = car.FitLeftWheel();
        Assert.Equal([HoldReason.NotReleased], car.Refused(Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, null)));
        var left = (Left)car.Do(Tess, new ReportGone(WayOut.Driven, CarAtWork.Reason, Km(1004), CarAtWork.Reason));
        Assert.Equal((null, HoldReason.NotReleased), (left.Release, Assert.Single(left.Against).Reason));

        Assert.Equal([HoldReason.NotHere], car.Refused(Tess, new ReportMoved("LiftA", "Floor", CarAtWork.Reason)));
        car.Do(Tess, new ComeIn(Km(1010), "LiftA", CarAtWork.Reason));
        Assert.Equal([HoldReason.MovedAnyway], car.Refused(Lee, To(ReleaseKind.Road, 1010)));
        Assert.Equal(job, Assert.Single(car.State.RunningJobs).Id);
    }

    [Fact]
    public void It_leaves_under_the_road_release_that_stands_and_comes_back_for_another_visit()
    {
        car.Do(Tess, new ComeIn(Km(990), "LiftA", CarAtWork.Reason));
        car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        var road = car.Last;

        var left = (Left)car.Do(Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, Km(1001)));

        Assert.Equal((road, 0), (left.Release!.Value, left.Against.Count));
        Assert.False(car.State.Visit!.IsOpen);
        car.Do(Tess, new ComeIn(Km(1060), "Floor", CarAtWork.Reason));
        Assert.Equal([true, false], car.State.Visits.Select(visit => visit.Left is not null));
        Assert.True(car.State.Visits[0].Holds(road));
        Assert.False(car.State.Visits[1].Holds(road));
        Assert.Equal([HoldReason.AlreadyHere], car.Refused(Tess, new ComeIn(Km(1060), "Floor", CarAtWork.Reason)));
    }

    [Fact]
    public void Past_the_kilometres_of_its_release_it_is_not_driven_away()
    {
        car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        Assert.Equal([HoldReason.NotReleased], car.Refused(Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, Km(1101))));
        car.Do(Tess, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, Km(1101)));
    }

    [Fact]
    public void A_car_that_was_here_before_visits_were_kept_leaves_like_any_other()
    {
        Assert.Null(car.State.Visit);
        car.Do(Tess, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, null));
        Assert.Equal((0, null, false), (car.State.Visit!.Number, car.State.Visit.Arrived, car.State.Visit.IsOpen));
    }

    [Fact]
    public void Two_cars_never_stand_on_one_lift_whoever_says_so()
    {
        Assert.Equal([HoldReason.PlaceTaken], car.Refused(Tess, new MoveCar("LiftA", "LiftB")));
        Assert.Equal([HoldReason.PlaceTaken], car.Refused(Tess, new ReportMoved("LiftA", "LiftB", CarAtWork.Reason)));
        Assert.Equal([HoldReason.PlaceTaken], car.Refused(Tess, new ComeIn(Km(1000), "LiftB", CarAtWork.Reason)));
        Assert.Contains("Orange", car.Say(new HoldPoint(HoldReason.PlaceTaken) { Name = "Orange" }).Next, StringComparison.Ordinal);
    }

    [Fact]
    public void What_holds_one_car_is_the_kind_of_a_place_and_not_its_key()
    {
        car.Places = new([new("LiftA", "Lift A", PlaceKind.Lift), new("LiftB", "Lane B", PlaceKind.Floor)]);
        Assert.IsType<Verdict.Accepted>(car.Try(Tess, new ReportMoved("LiftA", "LiftB", CarAtWork.Reason)));

        var third = new ShopPlace("7c1e", "Lift C", PlaceKind.Lift);
        var now = car.As(Tess) with { Places = new([third]), StandsAt = place => place == third.Key ? "Orange" : null };
        foreach (Command onto in new Command[] { new MoveCar("LiftB", third.Key), new ReportMoved("LiftB", third.Key, CarAtWork.Reason) })
        {
            var refused = Assert.IsType<Verdict.Refused>(car.State.Decide(onto, now));
            Assert.Contains(refused.Reasons, point => (point.Reason, point.Name) == (HoldReason.PlaceTaken, "Orange"));
        }

        Assert.IsType<Verdict.Accepted>(car.State.Decide(new ReportMoved("LiftB", third.Key, CarAtWork.Reason), now with { StandsAt = _ => null }));
    }

    [Fact]
    public void No_car_is_put_on_a_place_that_is_not_in_use_or_that_the_shop_never_had()
    {
        car.Places = new([new("LiftA", "Lift A", PlaceKind.Lift), new("Floor", "Paint booth", PlaceKind.Floor, InUse: false)]);
        foreach (var place in new[] { "Floor", "Nowhere" })
        {
            Assert.Equal([HoldReason.PlaceNotInUse], car.Refused(Tess, new MoveCar("LiftA", place)));
            Assert.Equal([HoldReason.PlaceNotInUse], car.Refused(Tess, new ReportMoved("LiftA", place, CarAtWork.Reason)));
            Assert.Equal([HoldReason.PlaceNotInUse], car.Refused(Tess, new ComeIn(Km(1000), place, CarAtWork.Reason)));
        }

        var refused = Assert.IsType<Verdict.Refused>(car.Try(Tess, new MoveCar("LiftA", "Floor")));
        Assert.StartsWith("Paint booth is not in use", car.Say(Assert.Single(refused.Reasons)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_odometer_is_never_below_any_earlier_reading_without_a_word()
    {
        car.Do(Tess, new ComeIn(new OdometerReading(31000, DistanceUnit.Mile), "LiftA", CarAtWork.Reason));
        car.FitLeftWheel();

        Assert.Equal([HoldReason.OdometerBelowLast], car.Refused(Lee, To(ReleaseKind.Road, 49889.6m)));
        Assert.Equal([HoldReason.OdometerBelowLast], car.Refused(Tess, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, Km(12))));
        car.Do(Lee, To(ReleaseKind.Road, 49889.664m));
        car.Declare(TestRegister.WheelDown);
        Assert.Equal([HoldReason.OdometerBelowLast], car.Refused(Tess, Settle(49000)));
        car.Do(Tess, Settle(49000) with { OdometerWhy = CarAtWork.Reason });
        Assert.Equal(49000, car.State.Odometer);
    }

    [Fact]
    public void An_odometer_that_can_not_be_read_needs_a_word()
    {
        Assert.Equal([HoldReason.OdometerMissing], car.Refused(Tess, new ComeIn(null, "LiftA", CarAtWork.Reason)));
        car.Do(Tess, new ComeIn(null, "LiftA", CarAtWork.Reason) { OdometerWhy = CarAtWork.Reason });
    }

    [Fact]
    public void A_trailered_car_gets_one_new_interval_at_its_last_day_and_may_then_go_to_the_road()
    {
        car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        Assert.Equal([HoldReason.NoNewInterval], car.Refused(Lee, Extend(1000)));
        car.Wait(TimeSpan.FromDays(15));
        Assert.Equal([HoldReason.ReTorqueOverdue], car.Refused(Lee, To(ReleaseKind.Road)));
        Assert.Equal([HoldReason.NoRight], car.Refused(Theo, Extend(1000)));
        Assert.Equal([HoldReason.NoNewInterval], car.Refused(Lee, Extend(1050)));

        car.Do(Lee, Extend(1020));

        Assert.Equal(car.Today.AddDays(14), car.State.LatestDay(car.As(Lee), car.State.Of(Nuts[0])));
        Assert.Equal(PositionState.Due, car.Shows(Nuts[0]));
        Assert.Equal(ReleaseStandingKind.Lapsed, Road);
        car.Do(Lee, To(ReleaseKind.Road, 1020));
        Assert.Equal(car.Today.AddDays(14), car.State.Releases[ReleaseKind.Road].Fact.LapsesOn);
        car.Wait(TimeSpan.FromDays(15));
        Assert.Equal([HoldReason.NoNewInterval], car.Refused(Lee, Extend(1020)));
    }

    [Fact]
    public void A_car_with_twenty_kilometres_at_its_last_day_is_settled_early_by_the_lead_alone()
    {
        car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
        car.Wait(TimeSpan.FromDays(14));
        car.Declare(TestRegister.WheelDown);
        Assert.Equal([HoldReason.ReTorqueEarly], ((Settled)car.Do(Tess, Settle(1020))).Problems);
        car.Do(Lee, Settle(1020));
        Assert.Equal(PositionState.Settled, car.Shows(Nuts[0]));
    }

    private static OdometerReading Km(decimal km) => new(km, DistanceUnit.Kilometre);

    private ExtendReTorque Extend(decimal km) => new(Nuts, Km(km), CarAtWork.Reason, CarAtWork.Shown);

    private RecordSettled Settle(decimal odometer) => new(
        car.State.Jobs.Keys.Single(), "nuts", Nuts, false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(110), TestTools.Click, odometer, CarAtWork.Shown);

    private void Close(JobId job)
    {
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.ByHand(Tess, job, "nuts", [.. Nuts.Where(nut => car.Shows(nut) == PositionState.Open)]);
        car.PullStage(Tess, job, "nuts", Left, 1);
        car.Do(Tess, Sign(job, $"seat@{Left}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(Tess, job, "nuts", Left, 2);
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
    }
}
