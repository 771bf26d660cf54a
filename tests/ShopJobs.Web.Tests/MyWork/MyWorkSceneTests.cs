using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.MyWork;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Tests.CarPage;
using ShopJobs.Web.Tests.Step;

namespace ShopJobs.Web.Tests.MyWork;

public sealed class MyWorkSceneTests
{
    private readonly StepBench bench = StepBench.Wheel();

    [Fact]
    public void Step_whose_gate_is_open_can_be_done_now_with_its_next_action()
    {
        bench.HandTight();

        var item = Assert.Single(Sheet(TestPerson.Tess).Now);

        Assert.Equal("seat@front-left", item.Step.Id);
        Assert.Equal("Torque wheel nut front-left 1 to 50 N·m, stage 1 of 2", item.Words);
        Assert.Equal($"/cars/{StepBench.Row.Id.Value}/jobs/{bench.Job.Value}/steps/seat%40front-left", item.Href);
    }

    [Fact]
    public void Steps_after_ones_own_are_counted_and_not_listed()
    {
        var sheet = Sheet(TestPerson.Tess);

        Assert.Equal("faces@front-left", Assert.Single(sheet.Now).Step.Id);
        Assert.Empty(sheet.Waiting);
        Assert.Equal(2, sheet.Later);
    }

    [Fact]
    public void Step_that_waits_for_somebody_elses_step_says_why()
    {
        var sheet = Sheet(TestPerson.Tess, new Assignment { JobId = bench.Job, PersonId = TestPerson.Tess.Id, StepInstanceId = "seat@front-left" });

        Assert.Empty(sheet.Now);
        Assert.Equal("“faces, front-left” is not signed. Next: finish and sign it first.", Assert.Single(sheet.Waiting).Words);
        Assert.Equal(0, sheet.Later);
    }

    [Fact]
    public void Step_that_waits_for_its_witness_is_no_work_to_do_now()
    {
        bench.Car.TightenWheel(TestPerson.Tess, bench.Job, TestRegister.Left);

        var sheet = Sheet(TestPerson.Tess);

        Assert.Empty(sheet.Now);
        Assert.Equal("final@front-left", Assert.Single(sheet.Waiting).Step.Id);
        Assert.Empty(sheet.Witness);
    }

    [Fact]
    public void Stage_of_somebody_else_waits_for_me_as_witness()
    {
        bench.Car.TightenWheel(TestPerson.Tess, bench.Job, TestRegister.Left);

        Assert.Equal("Witness nuts front-left, stage 2 of 2", Assert.Single(Sheet(TestPerson.Theo).Witness).Words);
    }

    [Fact]
    public void Helper_and_person_without_the_right_are_not_asked_to_witness()
    {
        bench.HandTight();
        foreach (var nut in new[] { 1, 3, 5, 2, 4 })
        {
            bench.Car.Pull(TestPerson.Tess, bench.Job, "nuts", bench.Nuts[nut - 1], 1, 50, helpers: TestPerson.Theo.Id);
        }

        bench.Car.Do(TestPerson.Tess, CarWork.Sign(bench.Job, "seat@front-left"));
        bench.Car.Declare(TestRegister.WheelDown);
        bench.Car.PullStage(TestPerson.Tess, bench.Job, "nuts", TestRegister.Left, 2);

        Assert.Empty(Sheet(TestPerson.Theo).Witness);
        Assert.Empty(Sheet(TestPerson.Nobody).Witness);
        Assert.Single(Sheet(TestPerson.Lee).Witness);
    }

    [Fact]
    public void Step_given_to_nobody_is_offered_to_all()
    {
        var sheet = Sheet(TestPerson.Theo, Array.Empty<Assignment>());

        Assert.Equal("faces@front-left", Assert.Single(sheet.Free).Step.Id);
        Assert.Empty(sheet.Now);
    }

    [Fact]
    public void Of_a_job_on_hold_one_line_says_that_it_rests()
    {
        bench.Car.Do(TestPerson.Lee, new PutJobOnHold(bench.Job, CarAtWork.Reason));

        var sheet = Sheet(TestPerson.Tess);

        Assert.Empty(sheet.Now);
        Assert.Equal("This job is on hold. Next: the lead resumes it.", Assert.Single(sheet.Waiting).Words);
        Assert.Equal(0, sheet.Later);
    }

    [Fact]
    public void Cars_come_in_the_order_of_the_shops_places_with_the_names_these_have_now()
    {
        bench.Car.Places = new([new("yard", "Yard", PlaceKind.Outside), new("p7", "Rig lift", PlaceKind.Lift), new("LiftA", "Front lift", PlaceKind.Lift)]);
        var scene = bench.Scene("faces", TestPerson.Theo);
        var cars = new[] { "", "LiftA", "yard", "p7" }.Select(place => new Car { Id = new CarId(Guid.NewGuid()), CustomerId = default, Name = $"at {place}", Model = "", Place = place }).ToList();

        var sheet = MyWorkScene.Of(scene.Here, [.. cars.Select(car => scene.Reading with { Car = car.Id })], cars.ToDictionary(car => car.Id), []);

        Assert.Equal([("at yard", "Yard"), ("at p7", "Rig lift"), ("at LiftA", "Front lift"), ("at ", "")], sheet.Free.Select(item => (item.Car.Name, item.Place)));
    }

    [Fact]
    public void A_joint_that_was_driven_far_enough_to_re_torque_is_work_of_whoever_may_record()
    {
        var car = Readings.OnTheRoad();
        var here = new Present(TestPerson.Tess.Id, "Tess", "TT", default, default, TestPerson.Tess.Rights);
        Assert.Empty(MyWorkScene.Of(here, [Readings.Of(car, TestPerson.Tess)], new Dictionary<CarId, Car> { [Readings.Of(car, TestPerson.Tess).Car] = StepBench.Row }, []).Due);
        car.Do(TestPerson.Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, null));
        car.Do(TestPerson.Tess, new ComeIn(new OdometerReading(48_280, DistanceUnit.Kilometre), "LiftA", CarAtWork.Reason));
        var reading = Readings.Of(car, TestPerson.Tess);

        var due = Assert.Single(MyWorkScene.Of(here, [reading], new Dictionary<CarId, Car> { [reading.Car] = StepBench.Row }, []).Due);

        var item = Assert.Single(due.Items);
        Assert.Equal(("wheel nut front-left", "Re-torque", $"/cars/{reading.Car.Value}/re-torque"), (item.Words, item.Act, item.Href));
    }

    [Fact]
    public void A_release_that_lapsed_while_the_car_is_out_is_for_the_lead_to_call_about()
    {
        var car = Readings.OnTheRoad();
        car.Do(TestPerson.Tess, new LetGo(WayOut.Driven, CarAtWork.Reason, null));
        car.Wait(TimeSpan.FromDays(31));

        var item = Assert.Single(Decisions(car));

        Assert.Equal(
            ("The release to road has expired: its re-torque is overdue, and the car is not here", "Call its owner"), (item.Words, item.Act));
    }

    [Fact]
    public void A_release_whose_re_torque_is_done_and_that_still_runs_out_is_for_the_lead_to_give_anew()
    {
        var car = Readings.OnTheRoad();
        var due = Assert.Single(DueJoint.Of(Readings.Of(car, TestPerson.Tess)));
        Assert.False(due.IsRipe(Readings.Of(car, TestPerson.Tess)));
        Assert.Empty(Decisions(car));
        car.Declare(TestRegister.WheelDown);
        car.Do(TestPerson.Tess, new RecordSettled(
            due.Job, due.Instance.Group.Id, due.Due, false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(110), TestTools.Click, 48_280, CarAtWork.Shown));

        var item = Assert.Single(Decisions(car));

        Assert.Equal(("Its re-torque is done, and the release to road still expires", "Release it again"), (item.Words, item.Act));
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road, 48_280));
        Assert.Empty(Decisions(car));
    }

    private static IReadOnlyList<DecisionItem> Decisions(CarAtWork car)
    {
        var reading = Readings.Of(car, TestPerson.Lee);
        var here = new Present(TestPerson.Lee.Id, "Lee", "LE", default, default, TestPerson.Lee.Rights);
        return [.. MyWorkScene.Of(here, [reading], new Dictionary<CarId, Car> { [reading.Car] = StepBench.Row }, []).Decisions.SelectMany(one => one.Items)];
    }

    [Fact]
    public void What_is_open_on_no_running_job_is_for_the_lead_to_put_a_procedure_on()
    {
        bench.Car.Open(TestPerson.Tess, null, bench.Car.Positions(TestRegister.BarLink, TestRegister.Front));

        Assert.Contains(
            Assert.Single(Sheet(TestPerson.Lee).Decisions).Items,
            item => item is { Words: "bar link front: open, and no running job works on it", Act: "Start a job" });
        Assert.Empty(Sheet(TestPerson.Tess).Decisions);
    }

    private MyWorkScene Sheet(TestPerson person) => Sheet(person, new Assignment { JobId = bench.Job, PersonId = TestPerson.Tess.Id });

    private MyWorkScene Sheet(TestPerson person, params IReadOnlyList<Assignment> assigned)
    {
        var scene = bench.Scene("faces", person);
        return MyWorkScene.Of(scene.Here, [scene.Reading], new Dictionary<CarId, Car> { [StepBench.Row.Id] = StepBench.Row }, assigned);
    }
}
