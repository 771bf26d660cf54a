using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>A private word at a pattern in one's own records: at that moment, to that person, and it changes nothing.</summary>
public sealed class SecondThoughtTests
{
    private readonly CarAtWork car = new(nuts: 12);
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> nuts;

    public SecondThoughtTests()
    {
        job = car.StartJob(TestProcedures.Wheels([.. Enumerable.Range(1, 12)]), TestRegister.Left);
        nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
    }

    [Fact]
    public void Ten_equal_readings_in_ten_seconds_are_said_at_the_tenth_and_not_again()
    {
        Assert.Equal(
            [null, null, null, null, null, null, null, null, null, SecondThought.EqualReadings, null, null],
            Enumerable.Range(0, 12).Select(nut => AfterReading(nut, 50, TimeSpan.FromSeconds(0.5))));
    }

    [Fact]
    public void It_holds_nothing()
    {
        for (var nut = 0; nut < 10; nut++)
        {
            AfterReading(nut, 50, TimeSpan.Zero);
        }

        Assert.Equal(SecondThought.EqualReadings, SecondThoughts.OnPull(car.State, TestPerson.Tess.Id));
        Assert.All(nuts.Take(10), nut => Assert.Equal(PullOutcome.Counts, car.State.Of(nut).Last!.Outcome));
        Assert.All(nuts, nut => Assert.Empty(car.State.Of(nut).Holds));
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(30)]
    public void At_the_pace_of_a_hand_nothing_is_said(double seconds)
    {
        Assert.All(Enumerable.Range(0, 12), nut => Assert.Null(AfterReading(nut, 50, TimeSpan.FromSeconds(seconds))));
    }

    [Fact]
    public void Where_one_digit_differs_nothing_is_said()
    {
        Assert.All(Enumerable.Range(0, 12), nut => Assert.Null(AfterReading(nut, nut == 5 ? 50.1m : 50, TimeSpan.Zero)));
    }

    [Fact]
    public void Clicks_are_alike_by_their_nature_and_nothing_is_said_of_them()
    {
        Assert.All(Enumerable.Range(0, 12), nut =>
        {
            car.Wait(-TimeSpan.FromMinutes(1));
            car.Pull(TestPerson.Tess, job, "nuts", nuts[nut], 1, 50, TestTools.Click);
            Assert.Null(SecondThoughts.OnPull(car.State, TestPerson.Tess.Id));
        });
    }

    [Fact]
    public void Nobody_else_is_told_of_it()
    {
        for (var nut = 0; nut < 10; nut++)
        {
            AfterReading(nut, 50, TimeSpan.Zero);
        }

        Assert.Null(SecondThoughts.OnPull(car.State, TestPerson.Lee.Id));
    }

    [Fact]
    public void A_look_signed_within_five_seconds_is_a_quick_one()
    {
        Assert.Equal(SecondThought.QuickLook, SecondThoughts.OnLook(TimeSpan.FromSeconds(4.9)));
        Assert.Null(SecondThoughts.OnLook(TimeSpan.FromSeconds(5)));
    }

    [Fact]
    public void Every_thought_has_words_that_say_it_is_private()
    {
        Assert.All(Enum.GetValues<SecondThought>(), thought => Assert.EndsWith("Only you see this, and it is kept nowhere.", SecondThoughtWords.Of(thought), StringComparison.Ordinal));
    }

    // A command takes a minute at the test's car; a reading here takes as long as it is told.
    private SecondThought? AfterReading(int nut, decimal value, TimeSpan wait)
    {
        car.Wait(wait - TimeSpan.FromMinutes(1));
        car.Pull(TestPerson.Tess, job, "nuts", nuts[nut], 1, value, TestTools.Dial);
        return SecondThoughts.OnPull(car.State, TestPerson.Tess.Id);
    }
}
