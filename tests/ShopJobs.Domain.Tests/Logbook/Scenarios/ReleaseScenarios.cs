using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook.Scenarios;

/// <summary>Ways in which a release once said more than was true.</summary>
public class ReleaseScenarios
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public ReleaseScenarios()
    {
        job = car.FitLeftWheel();
        car.Do(Lee, To(ReleaseKind.Road));
    }

    private IReadOnlyList<JointPosition> Nuts => car.Positions(TestRegister.Nut, Left);

    private ReleaseStanding Road => car.State.StandingOf(car.As(Lee), ReleaseKind.Road);

    [Fact]
    public void A_job_whose_sign_off_is_voided_after_its_end_runs_again()
    {
        car.Do(Tess, new VoidEntry(car.State.Jobs[job].SignOffs[$"final@{Left}"].Number, null, CarAtWork.Reason));
        Assert.True(car.State.Jobs[job].IsRunning);
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
        Assert.Contains(HoldReason.StepToReconfirm, car.Refused(Lee, To(ReleaseKind.Road)));
    }

    [Fact]
    public void A_wheel_taken_off_in_May_does_not_restart_the_job_of_March()
    {
        car.Wait(TimeSpan.FromDays(60));
        car.Open(Tess, null, Nuts);
        Assert.False(car.State.Jobs[job].IsRunning);
        Assert.Equal(ReleaseStandingKind.Ended, Road.Kind);
    }

    [Fact]
    public void A_tool_in_doubt_suspends_the_release_until_the_lead_signs_that_it_stands_again()
    {
        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
        Assert.Contains(Road.Why, point => point.Reason == HoldReason.ToolInDoubt);
        Assert.Contains(HoldReason.ToolInDoubt, car.Refused(Lee, new UpholdRelease(ReleaseKind.Road, CarAtWork.Shown)));

        car.TellTool(TestTools.Click, new Cleared([3], CarAtWork.Reason));
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
        Assert.Equal([HoldReason.NoRight], car.Refused(Theo, new UpholdRelease(ReleaseKind.Road, CarAtWork.Shown)));
        car.Do(Lee, new UpholdRelease(ReleaseKind.Road, CarAtWork.Shown));
        Assert.Equal(ReleaseStandingKind.Stands, Road.Kind);
    }

    [Fact]
    public void A_hold_after_the_release_suspends_it()
    {
        car.Do(Theo, new HoldPositions([Nuts[0]], CarAtWork.Reason));
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
        car.Do(Lee, Decision(Nuts[0], Disposition.UseAsIs, accepted: true));
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
    }

    [Fact]
    public void A_late_report_over_the_maximum_ends_it()
    {
        car.Pull(Tess, job, "nuts", Nuts[0], 2, 145);
        Assert.Equal(ReleaseStandingKind.Ended, Road.Kind);
    }

    [Fact]
    public void A_setting_changed_after_the_release_suspends_it()
    {
        car.Do(Tess, new RecordResult("setting:front-bar", [new MeasuredValue("hole", 2, "")], ResultBasis.Measured, null, [], null, null, CarAtWork.Shown));
        Assert.Equal(ReleaseStandingKind.Suspended, Road.Kind);
    }

    [Fact]
    public void A_job_put_on_the_car_later_speaks_against_the_next_release_only()
    {
        var next = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(next, $"faces@{Left}", "clean"));
        Assert.Equal(ReleaseStandingKind.Stands, Road.Kind);
        Assert.Contains(HoldReason.StepNotSigned, car.Refused(Lee, To(ReleaseKind.Road)));
    }

    [Fact]
    public void A_release_taken_back_that_was_not_driven_starts_no_re_torque()
    {
        car.Do(Lee, new WithdrawRelease(ReleaseKind.Road, Driven: false, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(ReleaseStandingKind.Withdrawn, Road.Kind);
        Assert.Null(car.State.FirstDrive(car.State.Of(Nuts[0])));
        Assert.NotEqual(PositionState.Due, car.Shows(Nuts[0]));
    }

    [Fact]
    public void A_second_release_does_not_start_the_re_torque_anew()
    {
        car.Do(Lee, To(ReleaseKind.Road, 1090));
        Assert.Equal(1100, car.State.Releases[ReleaseKind.Road].Fact.LapsesAtKm);
        Assert.Equal([HoldReason.ReTorqueOverdue], car.Refused(Lee, To(ReleaseKind.Road, 1490)));
        car.Do(Lee, To(ReleaseKind.Road, 1490, accepted: true));
    }

    [Fact]
    public void A_release_lapses_at_its_distance_by_the_odometer_that_was_read_last()
    {
        car.Do(Lee, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, new OdometerReading(1100, DistanceUnit.Kilometre)));
        Assert.Equal(ReleaseStandingKind.Stands, Road.Kind);
        car.Do(Lee, new ComeIn(new OdometerReading(1101, DistanceUnit.Kilometre), "Floor", CarAtWork.Reason));
        Assert.Equal(ReleaseStandingKind.Lapsed, Road.Kind);
        Assert.Contains(HoldRules.Standard.OnRelease(car.State, car.As(Lee), ReleaseKind.Road, customerAccepted: false), hold => hold.Reason == HoldReason.ReTorqueOverdue);
    }

    [Fact]
    public void Over_a_re_torque_still_due_the_customer_drives_by_writing_alone()
    {
        var asked = To(ReleaseKind.Road, 1490, accepted: true);
        Assert.Equal([HoldReason.AcceptanceNotWritten], car.Refused(Lee, asked with { CustomerAcceptance = Written with { How = SaidHow.ByTelephone } }));
        car.Do(Lee, asked);
    }

    [Fact]
    public void An_odometer_below_the_last_asks_why()
    {
        Assert.Equal([HoldReason.OdometerBelowLast], car.Refused(Lee, To(ReleaseKind.Road, 61)));
        car.Do(Lee, To(ReleaseKind.Road, 61) with { OdometerWhy = CarAtWork.Reason });
    }

    [Fact]
    public void Thirty_kilometres_early_nothing_settles_and_nothing_is_held()
    {
        car.Declare(TestRegister.WheelDown);
        var early = (Settled)car.Do(Tess, Settle(1020));
        Assert.Equal([HoldReason.ReTorqueEarly], early.Problems);
        Assert.Equal(PositionState.Due, car.Shows(Nuts[0]));
        car.Do(Tess, Settle(1050));
        Assert.Equal(PositionState.Settled, car.Shows(Nuts[0]));
    }

    [Fact]
    public void At_the_date_limit_the_lead_settles_early()
    {
        car.Wait(TimeSpan.FromDays(14));
        car.Declare(TestRegister.WheelDown);
        Assert.Equal([HoldReason.ReTorqueEarly], ((Settled)car.Do(Tess, Settle(1020))).Problems);
        Assert.Empty(((Settled)car.Do(Lee, Settle(1020))).Problems);
    }

    [Fact]
    public void A_nut_that_moved_ninety_degrees_has_not_settled()
    {
        car.Declare(TestRegister.WheelDown);
        Assert.Equal([HoldReason.MovedTooFar], ((Settled)car.Do(Tess, Settle(1060) with { Moved = true, AngleDegrees = 90 })).Problems);
        Assert.Equal(PositionState.Held, car.Shows(Nuts[0]));
    }

    [Fact]
    public void The_witness_of_March_may_re_torque()
    {
        car.Declare(TestRegister.WheelDown);
        car.Do(Theo, Settle(1060));
        Assert.NotNull(car.State.Of(Nuts[0]).Last!.WitnessedBy);
        Assert.Equal(ReleaseStandingKind.Stands, Road.Kind);
    }

    [Fact]
    public void A_shop_without_a_register_releases_nothing_to_the_road()
    {
        var bare = new CarAtWork(register: TestRegister.With(5) with { Kinds = new Dictionary<string, JointKind>() });
        Assert.Contains(HoldReason.NoRegister, bare.Refused(Lee, To(ReleaseKind.Road)));
        Assert.Contains(HoldReason.NoRegister, bare.Refused(Lee, To(ReleaseKind.Track)));
    }

    private RecordSettled Settle(decimal odometer) => new(
        job, "nuts", Nuts, false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(110), TestTools.Click, odometer, CarAtWork.Shown);
}
