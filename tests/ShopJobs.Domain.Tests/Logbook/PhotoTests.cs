using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Summaries;
using static ShopJobs.Domain.Tests.Logbook.Workshop.TestPerson;

namespace ShopJobs.Domain.Tests.Logbook;

/// <summary>Photographs of a car: facts, of one visit, that nothing else rests on.</summary>
public class PhotoTests
{
    private readonly CarAtWork car = new();

    [Fact]
    public void A_photograph_is_a_fact_and_is_recorded_whoever_took_it()
    {
        var taken = (PhotoTaken)car.Do(Nobody, new TakePhoto(Picture(1), CarView.Rear) { Caption = CarAtWork.Reason });

        Assert.Equal((Picture(1), CarView.Rear, CarAtWork.Reason), (taken.Photo, taken.View!.Value, taken.Caption!.Value));
        var kept = Assert.Single(car.State.Photos);
        Assert.Equal((car.Last, Nobody.Id, car.Book[^1].At), (kept.Number, kept.Person, kept.At));
    }

    [Fact]
    public void Of_each_view_the_newest_is_shown_and_the_others_are_listed_apart()
    {
        Take(1, CarView.Front);
        Take(2, null);
        Take(3, CarView.Front);
        Take(4, CarView.Left);
        Take(5, null);

        Assert.Equal([(CarView.Front, Picture(3)), (CarView.Left, Picture(4))], car.State.PhotosByView.OrderBy(one => one.Key).Select(one => (one.Key, one.Value.Fact.Photo)));
        Assert.Equal([Picture(2), Picture(5)], car.State.OtherPhotos.Select(photo => photo.Fact.Photo));
        Assert.Equal("2 of 8", PhotoWords.Count(car.State));
        Assert.Equal(5, car.Book.Count(recorded => recorded.Entry is PhotoTaken));
    }

    [Fact]
    public void One_taken_by_mistake_is_gone_and_the_one_before_it_is_shown_again()
    {
        Take(1, CarView.Front);
        var wrong = Take(2, CarView.Front);
        var other = Take(3, null);

        car.Do(Tess, new VoidEntry(wrong, null, CarAtWork.Reason));
        Assert.Equal(Picture(1), car.State.PhotosByView[CarView.Front].Fact.Photo);
        car.Do(Tess, new VoidEntry(other, null, CarAtWork.Reason));
        Assert.Empty(car.State.OtherPhotos);

        Assert.Equal([HoldReason.AlreadyVoid], car.Refused(Tess, new VoidEntry(wrong, null, CarAtWork.Reason)));
        var standing = car.State.StandingOf(car.Book.Single(recorded => recorded.Number == wrong));
        Assert.Equal((true, "void by entry 4"), (standing.Struck, standing.Words));
    }

    [Fact]
    public void Only_whoever_took_it_or_the_lead_says_that_it_was_a_mistake()
    {
        var photo = Take(1, CarView.Front);

        Assert.Equal([HoldReason.OthersEntry], car.Refused(Theo, new VoidEntry(photo, null, CarAtWork.Reason)));
        car.Do(Lee, new VoidEntry(photo, null, CarAtWork.Reason));

        Assert.Empty(car.State.Photos);
        Assert.False(car.State.GainsByASecond(car.State.Corrections[car.Last]));
    }

    [Fact]
    public void A_new_visit_begins_without_the_pictures_of_the_last()
    {
        car.Do(Tess, new ComeIn(new OdometerReading(990, DistanceUnit.Kilometre), "LiftA", CarAtWork.Reason));
        Take(1, CarView.Front);
        car.Do(Tess, new LetGo(WayOut.OnTrailer, CarAtWork.Reason, null));
        Assert.Single(car.State.Photos);

        car.Do(Tess, new ComeIn(new OdometerReading(990, DistanceUnit.Kilometre), "LiftA", CarAtWork.Reason));
        Assert.Empty(car.State.Photos);
        Take(2, CarView.Rear);

        Assert.Equal([CarView.Rear], car.State.PhotosByView.Keys);
    }

    [Fact]
    public void Neither_a_picture_nor_a_mistaken_one_moves_a_release_a_summary_or_an_opening()
    {
        car.FitLeftWheel();
        car.Do(Lee, CarWork.To(ReleaseKind.Road));
        car.Issue();
        var photo = Take(1, CarView.Front);
        car.Do(Tess, new VoidEntry(photo, null, CarAtWork.Reason));
        Assert.Equal(ReleaseStandingKind.Stands, car.State.StandingOf(car.As(Lee), ReleaseKind.Road).Kind);
        Assert.IsType<SummaryStanding.Current>(car.Standing());

        car.Open(Tess, null, new JointPosition(TestRegister.StrutTop, TestRegister.Right, 1));
        var opening = car.Last;
        car.Do(Tess, new VoidEntry(Take(2, CarView.Front), null, CarAtWork.Reason));
        Assert.True(car.State.CanBeTakenBack(opening));
    }

    [Theory]
    [InlineData(CarView.Front, "Photographed the car: front.")]
    [InlineData(CarView.RearLeft, "Photographed the car: rear left.")]
    [InlineData(null, "Took a photograph.")]
    public void It_is_said_in_one_sentence(CarView? view, string sentence) => Assert.Equal(
        sentence, EntryWords.Of(new PhotoTaken(Picture(1), view), new EntryNames(_ => "", _ => "", _ => "", (_, _) => "", _ => "")));

    [Fact]
    public void The_eight_views_go_round_the_car_once()
    {
        Assert.Equal(8, PhotoWords.Views.Count);
        Assert.Equal(8, PhotoWords.Views.Select(PhotoWords.Of).Distinct().Count());
        Assert.Equal((CarView.Front, CarView.Rear), (PhotoWords.Views[0], PhotoWords.Views[4]));
    }

    private static ContentDigest Picture(byte number) => ContentDigest.Of([number], [number]);

    private long Take(byte number, CarView? view)
    {
        car.Do(Tess, new TakePhoto(Picture(number), view));
        return car.Last;
    }
}
