using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A correction never makes valid what was not, unless a second person confirms it.</summary>
public class CorrectionTests
{
    private const string Left = TestRegister.Left;
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly JointPosition last = new(TestRegister.Nut, Left, 4);

    public CorrectionTests()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.TightenWheel(Tess, job, Left);
    }

    private bool Counts => car.State.IsAtTorque(car.State.Of(last));

    [Fact]
    public void A_voided_pull_no_longer_counts_and_its_sign_off_and_witness_fall()
    {
        var pull = NumberOf(last);
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        Correct(Tess, pull, null);
        Assert.False(Counts);
        Assert.Equal(StepStanding.Void, car.Standing(job, $"final@{Left}"));
        Assert.Contains(HoldReason.StepToReconfirm, car.Refused(Lee, To(ReleaseKind.Move)));
    }

    [Fact]
    public void A_voided_lower_stage_takes_the_finals_that_rest_on_it_along()
    {
        var lower = car.Book.First(recorded => recorded.Entry is TorqueRecorded { Stage: 1 }).Number;
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        Correct(Tess, lower, null);
        Assert.False(Counts);
        Assert.Equal(StepStanding.Void, car.Standing(job, $"seat@{Left}"));
        Assert.Equal(StepStanding.Void, car.Standing(job, $"final@{Left}"));
    }

    [Fact]
    public void A_voided_hand_tight_takes_the_pulls_and_sign_offs_that_rest_on_it_along()
    {
        var hand = car.Book.First(recorded => recorded.Entry is HandTightened).Number;
        Correct(Tess, hand, null);
        Assert.False(Counts);
        Assert.Equal(StepStanding.Void, car.Standing(job, $"seat@{Left}"));
    }

    [Fact]
    public void Restating_within_the_range_keeps_the_pull_and_voids_its_witness()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        Correct(Tess, NumberOf(last), 109.6m);
        Assert.True(Counts);
        Assert.Null(car.State.Of(last).Last!.WitnessedBy);
        car.Do(Theo, Looks(job, "nuts", Left, 2));
    }

    [Fact]
    public void No_chain_of_restatements_by_one_person_brings_a_pull_back()
    {
        Correct(Tess, NumberOf(last), 100);
        Assert.False(Counts);
        Correct(Tess, NumberOf(last), 110);
        Assert.False(Counts);
    }

    [Fact]
    public void A_restatement_after_a_confirmed_one_stands_alone_against_it()
    {
        Correct(Tess, NumberOf(last), 100);
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Correct(Tess, NumberOf(last), 110);
        Assert.False(Counts);
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.True(Counts);
    }

    [Fact]
    public void A_slip_of_typing_is_put_right_by_two_people()
    {
        car.Declare(TestRegister.WheelUp);
        car.Open(Tess, job, car.Positions(TestRegister.Nut, Left));
        car.Do(Tess, Sign(job, $"faces@{Left}", "clean"));
        car.ByHand(Tess, job, "nuts", car.Positions(TestRegister.Nut, Left));
        var first = new JointPosition(TestRegister.Nut, Left, 1);
        car.Pull(Tess, job, "nuts", first, 1, 5, TestTools.Dial);
        Correct(Tess, car.Last, 50);
        Assert.False(car.State.IsDone(car.State.Of(first), 1));
        Assert.Equal([HoldReason.NoRight, HoldReason.OwnWork], car.Refused(Tess, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown)).Order());
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.True(car.State.IsDone(car.State.Of(first), 1));
        Assert.Equal(new JointPosition(TestRegister.Nut, Left, 3), Assert.IsType<NextAction.PullNow>(car.Next(job, $"seat@{Left}")).Cell.Position);
    }

    [Fact]
    public void A_hold_by_a_slip_of_typing_stands_until_it_is_decided()
    {
        car.Pull(Tess, job, "nuts", last, 2, 130);
        Correct(Tess, car.Last, 110);
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.Equal(PositionState.Held, car.Shows(last));
    }

    [Fact]
    public void A_voided_pull_hides_the_one_before_it_until_a_second_person_confirms()
    {
        var second = car.Pull(Tess, job, "nuts", last, 2, 110);
        Assert.Equal([HoldReason.SecondPull], second.Problems);
        Correct(Tess, car.Last, null);
        Assert.False(Counts);
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        Assert.True(Counts);
        Assert.Equal(PositionState.Held, car.Shows(last));
        car.Do(Theo, Decision(last, Disposition.UseAsIs, accepted: true));
        Assert.NotEqual(PositionState.Held, car.Shows(last));
    }

    [Fact]
    public void A_pull_restated_over_the_maximum_holds_its_position()
    {
        Correct(Tess, NumberOf(last), 130);
        Assert.Equal(PositionState.Held, car.Shows(last));
    }

    [Fact]
    public void A_pull_used_as_is_is_held_again_when_its_value_was_another()
    {
        car.Pull(Tess, job, "nuts", last, 2, 130);
        var second = car.Last;
        car.Do(Theo, Decision(last, Disposition.UseAsIs, accepted: true));
        Correct(Tess, second, 150);
        Assert.Equal(PositionState.Held, car.Shows(last));
        car.Do(Theo, Decision(last, Disposition.UseAsIs, accepted: true));
        Assert.Equal(PositionState.AtTorque, car.Shows(last));
    }

    [Fact]
    public void A_lower_stage_taken_back_under_a_tight_nut_asks_to_back_off_and_start_again()
    {
        var lower = car.Book.FindLast(recorded => recorded.Entry is TorqueRecorded { Stage: 1 } pull && pull.Position == last)!.Number;
        Correct(Tess, lower, null);
        Assert.IsType<NextAction.TakeOff>(car.Next(job, $"final@{Left}"));
        car.Declare(TestRegister.WheelUp);
        Assert.Contains(HoldReason.SecondPull, car.Pull(Tess, job, "nuts", last, 1, 50).Problems);
    }

    [Fact]
    public void Only_the_doer_or_the_lead_corrects_and_only_what_can_be_corrected()
    {
        var pull = NumberOf(last);
        Assert.Equal([HoldReason.OthersEntry], car.Refused(Theo, new VoidEntry(pull, null, CarAtWork.Reason)));
        Assert.Equal([HoldReason.NotCorrectable], car.Refused(Tess, new VoidEntry(1, null, CarAtWork.Reason)));
        var hand = car.Book.First(recorded => recorded.Entry is HandTightened).Number;
        Assert.Equal([HoldReason.NotRestatable], car.Refused(Tess, new Restate(hand, CarAtWork.NewtonMetres(1), CarAtWork.Reason, CarAtWork.Shown)));
        Correct(Lee, pull, null);
        Assert.Equal([HoldReason.AlreadyVoid], car.Refused(Tess, new VoidEntry(pull, null, CarAtWork.Reason)));
        Assert.Equal([HoldReason.OwnWork], car.Refused(Lee, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown)));
        Assert.Equal([HoldReason.NoSuchCorrection], car.Refused(Theo, new ConfirmCorrection(pull, CarAtWork.Reason, CarAtWork.Shown)));
    }

    [Fact]
    public void Voiding_an_older_result_leaves_the_newer_one()
    {
        car.Do(Tess, Result());
        var older = car.Last;
        car.Do(Tess, Result());
        Correct(Tess, older, null);
        Assert.Equal(0, car.State.Results["alignment"].VoidBy);
        Correct(Tess, older + 1, null);
        Assert.NotEqual(0, car.State.Results["alignment"].VoidBy);
    }

    [Fact]
    public void A_pull_made_after_a_settled_one_was_voided_owes_its_own_re_torque()
    {
        car.Do(Theo, Looks(job, "nuts", Left, 2));
        car.Do(Tess, Sign(job, $"final@{Left}"));
        car.Do(Lee, To(ReleaseKind.Road));
        car.Declare(TestRegister.WheelDown);
        car.Do(Tess, new RecordSettled(
            job, "nuts", car.Positions(TestRegister.Nut, Left), false, null, TorqueKind.SettingConfirmed, CarAtWork.NewtonMetres(110), TestTools.Click, 1060, CarAtWork.Shown));
        Assert.Equal(PositionState.Settled, car.Shows(last));
        car.Do(Tess, new VoidEntry(NumberOf(last), false, CarAtWork.Reason));
        car.Do(Lee, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));
        var again = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), Left);
        car.Do(Tess, Sign(again, $"faces@{Left}", "clean"));
        car.Do(Tess, Sign(again, $"seat@{Left}"));
        car.Pull(Tess, again, "nuts", last, 2, 110);
        Assert.Equal(PositionState.AtTorque, car.Shows(last));
        Assert.True(car.State.OwesReTorque(car.State.Of(last)));
    }

    [Fact]
    public void A_void_by_one_person_does_not_take_jam_nuts_off_the_car()
    {
        var studs = car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5), Left);
        car.ByHand(Tess, studs, "jam", new JointPosition(TestRegister.Jam, Left, 1));
        Correct(Tess, car.Last, null);
        Assert.Contains(HoldReason.TemporaryFitted, car.Refused(Lee, To(ReleaseKind.Move)));
    }

    private static RecordResult Result() =>
        new("alignment", [new MeasuredValue("toe", 1, "mm")], ResultBasis.Measured, "rig", [], null, null, CarAtWork.Shown);

    private long NumberOf(JointPosition position) =>
        car.Book.FindLast(recorded => recorded.Entry is TorqueRecorded { Stage: 2 } pull && pull.Position == position)!.Number;

    private void Correct(TestPerson person, long number, decimal? newtonMetres) => car.Do(person, newtonMetres is { } value
        ? new Restate(number, new EnteredTorque(value, TorqueUnit.NewtonMetre), CarAtWork.Reason, CarAtWork.Shown)
        : new VoidEntry(number, null, CarAtWork.Reason));
}
