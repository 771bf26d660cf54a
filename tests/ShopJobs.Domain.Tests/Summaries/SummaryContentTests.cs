using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed class SummaryContentTests
{
    private readonly CarAtWork car = new();

    [Fact]
    public void Says_what_was_asked_for_what_was_done_and_where_the_logbook_stood()
    {
        car.FitLeftWheel();

        var page = car.Page();

        var work = Assert.Single(page.Work);
        Assert.Equal("Fit the wheels: front-left", work.Title);
        Assert.Equal(SummaryOf.Asked, work.AskedFor);
        Assert.Equal(["faces: front-left"], work.Steps);
        Assert.Equal(
            "wheel nut, front-left: tightened to torque (5 fasteners), checked by a second person",
            Assert.Single(Assert.Single(page.Done).Lines));
        Assert.Equal(new LogbookMark(car.Last, "a3f1"), page.Logbook);
        Assert.Equal((1, null, car.Today), (page.Version, page.Replaces, page.IssuedOn));
        Assert.Contains(page.Cautions, words => words.Contains("covers only the work listed", StringComparison.Ordinal));
        Assert.Contains(page.Cautions, words => words.Contains("licensed", StringComparison.Ordinal));
        Assert.Empty(page.Open);
    }

    [Fact]
    public void Joints_known_in_the_same_way_stand_in_one_line()
    {
        car.FitLeftWheel();
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Right);
        car.TightenWheel(TestPerson.Tess, job, TestRegister.Right);
        Assert.Equal(["yes", "no"], car.Page().ClassA.Select(joint => joint.Witness));

        car.Do(TestPerson.Theo, CarWork.Looks(job, "nuts", TestRegister.Right, 2));

        Assert.Equal(
            new ClassAJoint("wheel nut, front-left, front-right", 10, "110 N·m", "click wrench", "yes", "due"),
            Assert.Single(car.Page().ClassA));
    }

    [Fact]
    public void A_click_tool_is_never_counted_as_measured()
    {
        car.FitLeftWheel();

        var page = car.Page();

        Assert.Equal((0, 5, 5), (page.Counts.Measured, page.Counts.SettingConfirmed, page.Counts.Witnessed));
        Assert.Equal(1, page.Counts.Ticks);
        Assert.Equal(
            new ClassAJoint("wheel nut, front-left", 5, "110 N·m", "click wrench", "yes", "due"), Assert.Single(page.ClassA));
    }

    [Fact]
    public void Readings_are_counted_as_measured_and_mixed_joints_say_so()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.UpToFinal(job);
        foreach (var (nut, torque) in new[] { (1, 109.5m), (3, 110.5m), (5, 111m), (2, 112m) })
        {
            car.Pull(TestPerson.Tess, job, "nuts", Nut(nut), 2, torque, TestTools.Dial);
        }

        car.Pull(TestPerson.Tess, job, "nuts", Nut(4), 2, 110);

        var page = car.Page();

        Assert.Equal((4, 1, 0), (page.Counts.Measured, page.Counts.SettingConfirmed, page.Counts.Witnessed));
        Assert.Equal(
            new ClassAJoint("wheel nut, front-left", 5, "109.5 N·m to 112 N·m", "partly measured, else click wrench", "no", "due"),
            Assert.Single(page.ClassA));
    }

    /// <summary>The second bolt was not read in degrees, and was used as it is: what is said of it is what was recorded.</summary>
    [Theory]
    [InlineData(TorqueKind.Reading, 2, "measured, torque or angle")]
    [InlineData(TorqueKind.SettingConfirmed, 1, "partly angle measured, else click wrench")]
    public void An_angle_beside_another_record_is_said_in_its_own_words(TorqueKind other, int measured, string evidence)
    {
        var job = car.StartJob(TestProcedures.Head(), TestRegister.Left);
        var bolts = car.Positions(TestRegister.StrutTop, TestRegister.Left);
        car.Open(TestPerson.Tess, job, bolts);
        car.FitNew(TestPerson.Tess, job, "bolts", bolts);
        car.ByHand(TestPerson.Tess, job, "bolts", bolts);
        car.PullStage(TestPerson.Tess, job, "bolts", TestRegister.Left, 1, TestTools.Dial);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"snug@{TestRegister.Left}"));
        foreach (var bolt in bolts)
        {
            car.Turn(TestPerson.Tess, job, "bolts", bolt, 2, 90);
        }

        car.Do(TestPerson.Theo, CarWork.Looks(job, "bolts", TestRegister.Left, 2));
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"turn@{TestRegister.Left}"));
        car.Turn(TestPerson.Tess, job, "bolts", bolts[1], 3, 90);
        car.Do(TestPerson.Tess, new RecordTorque(job, "bolts", bolts[0], 1, 3, 1, other, CarAtWork.NewtonMetres(60), TestTools.Angle, []));
        car.Do(TestPerson.Lee, CarWork.Decision(bolts[0], Disposition.UseAsIs, accepted: true));

        var page = car.Page();

        Assert.Equal((measured, 2 - measured), (page.Counts.Measured, page.Counts.SettingConfirmed));
        Assert.Equal($"{evidence}; used as it is, see what was found", Assert.Single(page.ClassA).Evidence);
    }

    [Fact]
    public void Everything_unfinished_stands_on_top()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left, TestRegister.Right);
        car.StartJob(TestProcedures.Studs(1, 3, 5, 2, 4), TestRegister.Right);
        car.UpToFinal(job);
        car.Pull(TestPerson.Tess, job, "nuts", Nut(1), 2, 110);
        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Right));
        car.Do(TestPerson.Tess, new HoldPositions([Nut(5)], CarAtWork.Reason));

        var open = car.Page().Open;

        Assert.Contains(new OpenItem(PositionState.Open, "wheel nut, front-right: 5 of 5 open (no. 1, 2, 3, 4, 5)"), open);
        Assert.Contains(new OpenItem(PositionState.Staged, "wheel nut, front-left: 3 of 5 tightened part of the way only (no. 2, 3, 4)"), open);
        Assert.Contains(new OpenItem(PositionState.Held, "wheel nut, front-left: 1 of 5 held: not to be used before it is decided (no. 5)"), open);
        Assert.Contains(
            new OpenItem(PositionState.AtTorque, "wheel nut, front-left: 1 of 5 at torque, not yet checked by a second person (no. 1)"), open);
        Assert.Contains(new OpenItem(null, "Fit the wheels: 4 of 6 steps not signed, among them: faces: front-right"), open);
        Assert.Contains(new OpenItem(null, "Fit wheel studs: not started"), open);
        Assert.Empty(car.Page().ClassA);
    }

    [Fact]
    public void A_void_result_stands_on_top_and_not_among_the_results()
    {
        var job = car.StartJob(TestProcedures.Strut(), TestRegister.Left);
        car.Do(TestPerson.Tess, new RecordResult("alignment", [new("toe-left", 1.2m, "mm")], ResultBasis.Measured, "rig 4711", [], job, "align", CarAtWork.Shown));
        Assert.Equal(new ShownResult("alignment", "toe left 1.2 mm", "measured"), Assert.Single(car.Page().Results));

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.StrutTop, TestRegister.Left));

        var page = car.Page();
        Assert.Empty(page.Results);
        Assert.Equal(0, page.Counts.ResultsMeasured);
        Assert.Contains(page.Open, item => item.Words.StartsWith("alignment: no longer valid", StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_only_declared_is_called_so()
    {
        car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        car.Do(TestPerson.Tess, new RecordResult("tyre-age", [new("week", 12, "")], ResultBasis.Declared, null, [], null, null, CarAtWork.Shown));

        var page = car.Page();

        Assert.Equal("declared, not measured by us", Assert.Single(page.Results).Basis);
        Assert.Equal((0, 1), (page.Counts.ResultsMeasured, page.Counts.ResultsDeclared));
    }

    [Fact]
    public void Says_how_many_fasteners_were_not_checked()
    {
        car.FitLeftWheel();

        var counts = car.Page().Counts;

        var all = car.Register.Kinds.Values.Where(kind => !kind.Temporary).SelectMany(kind => kind.AllPositions()).ToList();
        Assert.Equal(all.Count - 5, counts.NotChecked);
        Assert.Equal(all.Select(position => position.Joint).Distinct().Count() - 1, counts.JointsNotChecked);
    }

    [Fact]
    public void New_parts_on_the_car_are_listed_with_their_lot()
    {
        var job = car.StartJob(TestProcedures.Studs(1, 3, 5, 2, 4), TestRegister.Left);
        car.FitNew(TestPerson.Tess, job, "studs", car.Positions(TestRegister.Stud, TestRegister.Left));

        Assert.Equal(new PartFitted("5 × stud M12x1.5, new", "lot 4471", "wheel stud, front-left"), Assert.Single(car.Page().Parts));

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Stud, TestRegister.Left));

        Assert.Empty(car.Page().Parts);
    }

    [Fact]
    public void An_ended_job_may_be_left_out_a_running_one_never()
    {
        var ended = car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        var running = car.StartJob(TestProcedures.Strut(), TestRegister.Left);

        var page = car.Page(leaveOut: [ended, running]);

        Assert.Equal("Change the strut: front-left", Assert.Single(page.Work).Title);
        Assert.Empty(page.ClassA);
        Assert.Equal((0, 5), (page.Counts.SettingConfirmed, page.Counts.Earlier));
        Assert.Equal(car.Today, car.Page().Work[0].Until);
    }

    [Fact]
    public void A_joint_the_register_wants_made_here_is_named_beside_the_release() =>
        Assert.Contains(
            new ReleaseLine(false, "Not released to track. Before that we would have to tighten what is as found: brake carrier bolt, front."),
            car.Page().Releases);

    private static JointPosition Nut(int number) => new(TestRegister.Nut, TestRegister.Left, number);
}
