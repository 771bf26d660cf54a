using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

/// <summary>The shop's own mistakes: told with what was done about them, without a figure before it is put right, and without a name.</summary>
public sealed class SummaryMistakesTests
{
    private static readonly IReadOnlyList<int> Star = [1, 3, 5, 2, 4];
    private static readonly JointPosition Last = new(TestRegister.Nut, TestRegister.Left, 4);

    private readonly CarAtWork car = new();
    private JobId job;

    [Fact]
    public void Is_told_with_its_figures_once_it_is_put_right()
    {
        TightenWithLastAt(70, stage: 1);
        Assert.Equal([new("We tightened the front left wheel nut no. 4 over the permitted maximum. That is not decided yet.", false)], car.Page().Mistakes);
        Assert.DoesNotContain("70 N·m", car.Page().Text(), StringComparison.Ordinal);

        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.Rework));
        Assert.Equal([new("We tightened the front left wheel nut no. 4 over the permitted maximum. That is not put right yet.", false)], car.Page().Mistakes);
        Redo();

        var page = car.Page();
        Assert.Equal(
            [
                new(
                    "We tightened the front left wheel nut no. 4 to 70 N·m at a step that allowed 60 N·m at most. "
                    + "All 5 wheel nuts there were loosened and tightened again. The final torque is 110 N·m.",
                    true),
            ],
            page.Mistakes);
        Assert.True(Assert.Single(page.Found).Ours);
        Assert.All(TestPerson.All, person => Assert.DoesNotContain(person.Name, page.Text(), StringComparison.Ordinal));
    }

    [Fact]
    public void Several_of_a_joint_are_told_together()
    {
        Begin();
        foreach (var nut in Star)
        {
            car.Pull(TestPerson.Tess, job, "nuts", Last with { Number = nut }, 1, nut is 2 or 4 ? 70 : 50, nut is 2 or 4 ? TestTools.Dial : TestTools.Click);
        }

        Assert.Equal(
            "We tightened the front left wheel nuts no. 2 and 4 over the permitted maximum. That is not decided yet.",
            Assert.Single(car.Page().Mistakes!).Words);
    }

    [Fact]
    public void What_stays_as_it_is_says_so_with_its_figure_and_so_does_what_it_stretched()
    {
        TightenWithLastAt(131, stage: 2);
        car.Do(TestPerson.Lee, CarWork.Decision(Last, Disposition.UseAsIs, accepted: true));
        car.Do(TestPerson.Lee, CarWork.Decision(Last with { Key = TestRegister.Stud }, Disposition.UseAsIs, accepted: true));

        Assert.Equal(
            [
                "We tightened the front left wheel nut no. 4 to 131 N·m at a step that allowed 115 N·m at most. "
                + "It stays as it is, with a written acceptance by the maker or a named engineer.",
                "By the same pull we overloaded the front left wheel stud no. 4. It stays as it is, with a written acceptance by the maker or a named engineer.",
            ],
            car.Page().Mistakes!.Select(mistake => mistake.Words));
    }

    [Fact]
    public void What_was_found_damaged_is_no_mistake_of_the_shop()
    {
        Begin();
        car.Do(TestPerson.Tess, new HoldPositions([new(TestRegister.BarLink, TestRegister.Front, 1)], CarAtWork.Reason));

        var page = car.Page();

        Assert.Empty(page.Mistakes!);
        Assert.False(Assert.Single(page.Found).Ours);
    }

    /// <summary>The shop brief, section 5: no figure that invites the owner to pull a joint again that holds by locker.</summary>
    [Fact]
    public void A_joint_with_locker_is_told_without_a_figure()
    {
        job = car.StartJob(TestProcedures.Studs(1, 2, 3, 4, 5), TestRegister.Left);
        var stud = new JointPosition(TestRegister.Stud, TestRegister.Left, 1);
        var jam = stud with { Key = TestRegister.Jam };
        car.FitNew(TestPerson.Tess, job, "studs", stud);
        car.ByHand(TestPerson.Tess, job, "studs", stud);
        car.ByHand(TestPerson.Tess, job, "jam", jam);
        car.Pull(TestPerson.Tess, job, "jam", jam, 1, 90);
        car.Pull(TestPerson.Tess, job, "studs", stud, 1, 99, TestTools.Dial);
        car.Do(TestPerson.Lee, CarWork.Decision(stud, Disposition.UseAsIs, accepted: true));

        var told = Assert.Single(car.Page().Mistakes!);

        Assert.StartsWith("We tightened the front left wheel stud no. 1 over the permitted maximum.", told.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("N·m", told.Words, StringComparison.Ordinal);
    }

    private void Begin()
    {
        job = car.StartJob(TestProcedures.Wheels([.. Star]), TestRegister.Left);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.Declare(TestRegister.WheelUp);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
    }

    private void TightenWithLastAt(decimal torque, int stage)
    {
        Begin();
        if (stage == 2)
        {
            car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 1);
            car.Do(TestPerson.Tess, CarWork.Sign(job, $"seat@{TestRegister.Left}"));
            car.Declare(TestRegister.WheelDown);
        }

        foreach (var nut in Star)
        {
            car.Pull(TestPerson.Tess, job, "nuts", Last with { Number = nut }, stage, nut == 4 ? torque : stage == 1 ? 50 : 110, nut == 4 ? TestTools.Dial : TestTools.Click);
        }
    }

    private void Redo()
    {
        car.Declare(TestRegister.WheelUp);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Open(TestPerson.Tess, job, nuts);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{TestRegister.Left}", "clean"));
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 1);
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"seat@{TestRegister.Left}"));
        car.Declare(TestRegister.WheelDown);
        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 2);
    }
}
