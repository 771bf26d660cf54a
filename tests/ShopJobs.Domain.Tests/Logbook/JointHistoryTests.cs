using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using static ShopJobs.Domain.Tests.Logbook.Workshop.CarWork;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

public class JointHistoryTests
{
    private const string Left = TestRegister.Left;
    private static readonly Joint Nuts = new(TestRegister.Nut, Left);
    private readonly CarAtWork car = new();

    [Fact]
    public void Joint_nobody_touched_has_no_history()
    {
        car.FitLeftWheel();

        Assert.Empty(JointHistory.Of(car.Book, new Joint(TestRegister.Nut, TestRegister.Right)));
    }

    [Fact]
    public void Every_entry_about_the_joint_is_there_in_order_and_no_other()
    {
        car.FitLeftWheel();

        var lines = JointHistory.Of(car.Book, Nuts);

        Assert.Equal(
            [nameof(Opened), nameof(HandTightened), .. Enumerable.Repeat(nameof(TorqueRecorded), 10), nameof(Witnessed)],
            lines.Select(line => line.Recorded.Entry.GetType().Name));
        Assert.Equal([1, 2, 3, 4, 5], lines[^1].Numbers);
        Assert.All(lines, line => Assert.False(line.IsVoid));
    }

    [Fact]
    public void Opening_again_strikes_what_rested_on_it_and_keeps_it_readable()
    {
        car.FitLeftWheel();
        car.Open(Theo, null, car.Positions(TestRegister.Nut, Left));

        var lines = JointHistory.Of(car.Book, Nuts);

        Assert.Equal(14, lines.Count);
        Assert.All(
            lines.Where(line => line.Recorded.Entry is HandTightened or TorqueRecorded or Witnessed),
            line => Assert.All(line.Void.Values, by => Assert.Equal(car.Last, by.Number)));
        Assert.Equal(12, lines.Count(line => line.IsVoid));
        Assert.False(lines[0].IsVoid);
        Assert.False(lines[^1].IsVoid);
    }

    [Fact]
    public void An_opening_taken_back_strikes_nothing_once_a_second_person_has_confirmed_it()
    {
        car.FitLeftWheel();
        car.Open(Tess, null, car.Positions(TestRegister.Nut, Left));
        var opening = car.Last;
        car.Do(Tess, new VoidEntry(opening, null, CarAtWork.Reason));
        Assert.Equal(12, JointHistory.Of(car.Book, Nuts).Count(line => line.IsVoid));

        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));

        Assert.Equal([opening], JointHistory.Of(car.Book, Nuts).Where(line => line.IsVoid).Select(line => line.Recorded.Number));
    }

    [Fact]
    public void Opening_one_of_two_strikes_only_its_own()
    {
        var job = car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5), Left);
        car.Open(Tess, job, new JointPosition(TestRegister.Stud, Left, 1), new JointPosition(TestRegister.Stud, Left, 2));
        car.FitNew(Tess, job, "studs", new JointPosition(TestRegister.Stud, Left, 1), new JointPosition(TestRegister.Stud, Left, 2));
        car.ByHand(Tess, job, "studs", new JointPosition(TestRegister.Stud, Left, 1), new JointPosition(TestRegister.Stud, Left, 2));
        car.Open(Tess, job, new JointPosition(TestRegister.Stud, Left, 2));

        var byHand = JointHistory.Of(car.Book, new Joint(TestRegister.Stud, Left)).Single(line => line.Recorded.Entry is HandTightened);

        Assert.Equal([2], byHand.Void.Keys);
        Assert.False(byHand.IsVoid);
    }

    [Fact]
    public void Correction_strikes_its_target_and_its_confirmation_is_told()
    {
        car.FitLeftWheel();
        var pull = car.Book.Last(recorded => recorded.Entry is TorqueRecorded { Position.Number: 4 });
        car.Do(Tess, new VoidEntry(pull.Number, null, CarAtWork.Reason));
        car.Do(Theo, new ConfirmCorrection(car.Last, CarAtWork.Reason, CarAtWork.Shown));

        var lines = JointHistory.Of(car.Book, Nuts);

        Assert.Equal([nameof(Corrected), nameof(CorrectionConfirmed)], lines.TakeLast(2).Select(line => line.Recorded.Entry.GetType().Name));
        Assert.All(lines.TakeLast(2), line => Assert.Equal([4], line.Numbers));
        Assert.True(lines.Single(line => line.Recorded.Number == pull.Number).IsVoid);
    }
}
