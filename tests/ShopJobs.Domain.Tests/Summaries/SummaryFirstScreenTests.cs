using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

/// <summary>What the customer reads first: may the car be driven, when must it come back, what was done.</summary>
public sealed class SummaryFirstScreenTests
{
    private static readonly CustomerText Said = new("Wheels fitted", ["Wheels and hubs were cleaned.", "The nuts were tightened in two steps."]);

    private readonly CarAtWork car = new();

    [Fact]
    public void Road_until_and_track_not_yet()
    {
        car.FitLeftWheel();
        Assert.Equal(["not yet", "not yet"], car.Page().Drive!.Select(answer => answer.Answer));

        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));

        Assert.Equal(
            [
                new(ReleaseKind.Road, "Drive on the road", true, "yes, until 1,100 km or 16 Mar 2026"),
                new DriveAnswer(ReleaseKind.Track, "Track", false, "not yet"),
            ],
            car.Page().Drive);
    }

    [Fact]
    public void No_answer_is_yes_once_the_release_is_over_suspended_or_ended()
    {
        var job = car.FitLeftWheel();
        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));
        Assert.Equal("no longer, its time is over", Road(car.Page(odometer: 1101)));

        car.Do(TestPerson.Tess, new HoldPositions([new(TestRegister.BarLink, TestRegister.Front, 1)], CarAtWork.Reason));
        Assert.Equal("no, speak to us first", Road(car.Page()));

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Equal("no longer", Road(car.Page()));
        Assert.All(car.Page().Drive!, answer => Assert.False(answer.Yes));
    }

    [Fact]
    public void Says_what_to_come_back_for_between_which_distances_and_by_which_day()
    {
        car.FitLeftWheel();
        Assert.Null(Assert.Single(car.Page().ComeBacks!).By);

        car.Do(TestPerson.Lee, CarWork.To(ReleaseKind.Road));

        Assert.Equal(
            new ComeBack(
                "5 wheel nuts, front left", "between 1,050 and 1,100 km on the odometer, or by 16 Mar 2026, whichever comes first", new DateOnly(2026, 3, 16)),
            Assert.Single(car.Page().ComeBacks!));
        Assert.Empty(car.Page(odometer: 1101).ComeBacks!);
    }

    [Fact]
    public void Work_is_told_in_the_procedures_own_sentences_once_every_step_is_signed()
    {
        var job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4) with { Customer = Said }, TestRegister.Left);
        car.UpToFinal(job);
        Assert.Equal(("Fit the wheels, front left: not finished", 0), Told());

        car.PullStage(TestPerson.Tess, job, "nuts", TestRegister.Left, 2);
        car.Do(TestPerson.Theo, CarWork.Looks(job, "nuts", TestRegister.Left, 2));
        car.Do(TestPerson.Tess, CarWork.Sign(job, $"final@{TestRegister.Left}"));
        Assert.Equal(("Wheels fitted, front left", 2), Told());
        Assert.Equal(Said.Says, car.Page().Told![0].Says);

        car.Open(TestPerson.Tess, job, car.Positions(TestRegister.Nut, TestRegister.Left));
        Assert.Equal(("Fit the wheels, front left: not finished", 0), Told());
    }

    [Fact]
    public void A_procedure_without_words_for_the_customer_is_called_by_its_name()
    {
        car.FitLeftWheel();

        Assert.Equal(("Fit the wheels, front left", 0), Told());
    }

    [Fact]
    public void How_it_is_known_and_what_was_not_looked_at_is_counted()
    {
        car.FitLeftWheel();

        var page = car.Page();

        Assert.Equal(
            [
                "5 wheel nuts were tightened with a click wrench in calibration, which gives no reading.",
                "A second person checked every one of them.",
                $"We did not check the rest of the car: {page.Counts.NotChecked} nuts and bolts are as the car came to us.",
            ],
            page.Known);
    }

    [Fact]
    public void Every_joint_of_the_car_is_kept_as_it_was_for_the_picture()
    {
        car.FitLeftWheel();

        var drawn = car.Page().Drawn!;

        Assert.Equal(Enumerable.Repeat(PositionState.Checked, 5), Assert.Single(drawn, joint => (joint.Key, joint.Place) == (TestRegister.Nut, TestRegister.Left)).States);
        Assert.All(drawn.Where(joint => joint.Key == TestRegister.BarLink).SelectMany(joint => joint.States), state => Assert.Equal(PositionState.AsFound, state));
        Assert.All(drawn, joint => Assert.Equal(car.Register.Kinds[joint.Key].System, joint.System));
        Assert.Equal(car.Register.Kinds.Values.Where(kind => !kind.Temporary).Sum(kind => kind.AllPositions().Count()), drawn.Sum(joint => joint.States.Count));
    }

    [Fact]
    public void An_older_page_has_none_of_it_and_is_read_all_the_same()
    {
        car.FitLeftWheel();
        var older = SummaryText.Read(SummaryText.Write(car.Page() with { Drive = null, ComeBacks = null, Told = null, Known = null, Mistakes = null, Declined = null, Drawn = null }));

        Assert.Null(older.Drive);
        Assert.DoesNotContain("drive\"", older.Text(), StringComparison.Ordinal);
        Assert.Equal(car.Page().Drive, SummaryText.Read(SummaryText.Write(car.Page())).Drive);
    }

    private (string, int) Told() => Assert.Single(car.Page().Told!) is var told ? (told.Title, told.Says.Count) : default;

    private static string Road(WorkSummary page) => page.Drive![0].Answer;
}
