using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>What a pull tells whoever made it: a word, a sign that can be heard, and what is next.</summary>
public sealed class PullAnswerTests
{
    private readonly CarAtWork car = new();
    private readonly JobId job;
    private readonly IReadOnlyList<JointPosition> nuts;

    public PullAnswerTests()
    {
        job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left);
        nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
    }

    [Fact]
    public void A_reading_in_range_names_the_next_nut_of_the_star()
    {
        Read(1, 50.4m);

        Assert.Equal((PullSign.InRange, "IN RANGE", "NEXT: 3"), Said());
    }

    [Fact]
    public void A_click_is_never_called_in_range()
    {
        car.Pull(TestPerson.Tess, job, "nuts", nuts[0], 1, 50, tool: TestTools.Click);

        Assert.Equal((PullSign.InRange, "CLICKED", "NEXT: 3"), Said());
    }

    [Fact]
    public void The_last_of_a_round_says_to_go_on_and_with_what()
    {
        foreach (var nut in (int[])[1, 3, 5, 2, 4])
        {
            Read(nut, 50);
        }

        var (sign, word, after) = Said();

        Assert.Equal((PullSign.GoOn, "IN RANGE"), (sign, word));
        Assert.StartsWith("GO ON: ", after, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pull_over_its_range_is_held_and_says_to_stop()
    {
        Read(1, 61);

        var (sign, word, after) = Said();

        Assert.Equal((PullSign.Held, "HELD"), (sign, word));
        Assert.Equal("STOP: wheel nut front-left 1 is held: the lead decides", after);
    }

    [Fact]
    public void A_short_pull_is_told_apart_from_one_in_range_and_from_a_held_one()
    {
        Read(1, 39);

        var (sign, word, _) = Said();

        Assert.Equal((PullSign.Look, "SHORT"), (sign, word));
    }

    [Fact]
    public void Pulls_of_somebody_else_are_not_answered_to_this_person()
    {
        Read(1, 50);

        Assert.Null(PullAnswer.Newest(car.State, Step, TestPerson.Lee.Id, car.Next(job, Step.Id)));
    }

    [Fact]
    public void A_voided_pull_is_not_answered()
    {
        Read(1, 50);
        car.Do(TestPerson.Tess, new VoidEntry(car.Last, false, CarAtWork.Reason));

        Assert.Null(Answer());
    }

    [Theory]
    [InlineData(new HoldReason[0], PullOutcome.Counts)]
    [InlineData(new[] { HoldReason.UnderRange }, PullOutcome.Short)]
    [InlineData(new[] { HoldReason.NoRightToRecord }, PullOutcome.AwaitsCountersign)]
    [InlineData(new[] { HoldReason.OverRange }, PullOutcome.Held)]
    [InlineData(new[] { HoldReason.UnderRange, HoldReason.OutOfOrder }, PullOutcome.Held)]
    public void What_is_wrong_decides_the_outcome(HoldReason[] problems, PullOutcome outcome)
    {
        Assert.Equal(outcome, PullOutcomes.Of(problems));
    }

    private StepInstance Step => car.Placed(job).Step($"seat@{TestRegister.Left}")!;

    private void Read(int nut, decimal value) => car.Pull(TestPerson.Tess, job, "nuts", nuts[nut - 1], 1, value, tool: TestTools.Dial);

    private PullAnswer? Answer() => PullAnswer.Newest(car.State, Step, TestPerson.Tess.Id, car.Next(job, Step.Id));

    private (PullSign Sign, string Word, string After) Said()
    {
        var answer = Answer()!;
        return (answer.Sign, PullWords.Of(answer.Pull), PullWords.After(answer, car.As(TestPerson.Tess)));
    }
}
