using CsCheck;
using ShopJobs.Domain.Tests.Specification.AsFound;
using ShopJobs.Domain.Tests.Specification.Behind;
using ShopJobs.Domain.Tests.Specification.Clocks;
using ShopJobs.Domain.Tests.Specification.Closing;
using ShopJobs.Domain.Tests.Specification.Corrections;
using ShopJobs.Domain.Tests.Specification.Counts;
using ShopJobs.Domain.Tests.Specification.Cycles;
using ShopJobs.Domain.Tests.Specification.JobEnds;
using ShopJobs.Domain.Tests.Specification.LateReports;
using ShopJobs.Domain.Tests.Specification.Proof;
using ShopJobs.Domain.Tests.Specification.Releases;
using ShopJobs.Domain.Tests.Specification.Results;
using ShopJobs.Domain.Tests.Specification.ReTorques;
using ShopJobs.Domain.Tests.Specification.Revisions;
using ShopJobs.Domain.Tests.Specification.RoadTests;
using ShopJobs.Domain.Tests.Specification.Shown;
using ShopJobs.Domain.Tests.Specification.SignOffs;
using ShopJobs.Domain.Tests.Specification.Trainees;
using ShopJobs.Domain.Tests.Specification.Visits;
using ShopJobs.Domain.Tests.Specification.Waits;
using ShopJobs.Domain.Tests.Specification.Witnesses;
using ShopJobs.Domain.Tests.Specification.WrongCars;
using Xunit.Abstractions;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>The real decider and fold go along every transition of a specification and answer as it does.</summary>
public sealed class ConformanceTests(ITestOutputHelper output)
{
    [Fact]
    public void A_wheel_nut_knows_its_second_person() => Conforms(WitnessRules.Book(), () => new WitnessedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_stud_knows_who_jammed_the_pair_that_drove_it() => Conforms(WitnessRules.Book(), () => new WitnessedStud(), (car, step) => car.Take(step));

    [Fact]
    public void Corrections_of_a_pull_need_two_people() => Conforms(CorrectionRules.Book(), () => new CorrectedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void Sign_offs_fall_and_stand_as_the_rules_say() => Conforms(SignOffRules.Book(), () => new SignedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_PIN_signs_what_was_shown() => Conforms(ShownRules.Book(), () => new ShownWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_release_ends_or_is_suspended_as_the_rules_say() => Conforms(ReleaseRules.Book(), () => new ReleasedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_road_test_lets_a_result_wait_and_nothing_else() => Conforms(RoadTestRules.Book(), () => new TestDrivenCar(), (car, step) => car.Take(step));

    [Fact]
    public void A_result_is_one_by_its_joints_its_figures_and_its_instrument() => Conforms(ResultRules.Book(), () => new WeighedCar(), (car, step) => car.Take(step));

    [Fact]
    public void A_re_torque_is_reckoned_from_its_first_release() => Conforms(ReTorqueRules.Book(), () => new DrivenWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_job_ends_rests_and_is_given_up_as_the_rules_say() => Conforms(JobEndRules.Book(), () => new RestingCar(), (car, step) => car.Take(step));

    [Fact]
    public void A_job_on_the_wrong_car_is_taken_back_as_the_rules_say()
    {
        var report = WrongCarRules.Book().Spec.ConformExhaustive(
            () => new WrongCarAtWork(), (car, step) => car.Take(step), output.WriteLine, threads: 1, clone: WrongCarAtWork.CopyOf);
        Assert.Equal(report.Transitions, report.ConformedTransitions);
    }

    [Fact]
    public void A_car_comes_is_moved_and_leaves_as_the_rules_say() => Conforms(VisitRules.Book(), () => new VisitedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_car_has_the_joints_of_its_list_as_the_rules_say() => Conforms(CountRules.Book(), () => new CountedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void Work_under_a_revised_procedure_stands_or_waits_as_the_rules_say() => Conforms(RevisionRules.Book(), () => new RevisedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_tool_counts_up_to_its_limit_and_from_its_calibration_on() => Conforms(CycleRules.Book(), () => new SpentWrench(), (car, step) => car.Take(step));

    [Fact]
    public void A_wheel_goes_on_when_the_brake_behind_it_is_finished() => Conforms(BehindRules.Book(), () => new BrakedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void A_trainees_step_counts_when_one_who_stood_by_answers_for_it() => Conforms(TraineeRules.Book(), () => new TaughtWheel(), (car, step) => car.Take(step));

    [Fact]
    public void Work_goes_on_over_an_unsigned_step_in_one_hand_and_one_PIN_signs_both() => Conforms(WaitRules.Book(), () => new WaitedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void How_a_car_was_found_is_asked_before_it_is_opened() => Conforms(FoundRules.Book(), () => new FoundNut(), (car, step) => car.Take(step));

    [Fact]
    public void A_report_that_comes_late_counts_in_its_own_cycle_and_session() => Conforms(LateReportRules.Book(), () => new LateNut(), (car, step) => car.Take(step));

    [Fact]
    public void Nobody_drives_before_the_closing_check() => Conforms(ClosingRules.Book(), () => new ClosedWheel(), (car, step) => car.Take(step));

    [Fact]
    public void However_the_clock_is_set_a_cure_ends_as_the_rules_say()
    {
        var report = ClockRules.Book().Spec.ConformExhaustive(
            () => new CuredNut(), (car, step) => car.Take(step), output.WriteLine, threads: 1, clone: car => car.Copy());
        Assert.Equal(report.Transitions, report.ConformedTransitions);
    }

    private void Conforms<TState, TCar>(RuleBook<TState> book, Func<TCar> create, Func<TCar, Transition<TState>, string?> take)
        where TCar : ProductCar
    {
        var report = book.Spec.ConformExhaustive(create, take, output.WriteLine, threads: 1, clone: ProductCar.Copy);
        Assert.Equal(report.Transitions, report.ConformedTransitions);
    }
}
