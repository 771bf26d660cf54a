using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Components.Layout;

namespace ShopJobs.Web.Tests.Floor;

public sealed class CarEdgeTests
{
    private static readonly CarId Car = new(new Guid("00000000-0000-0000-0000-000000000007"));

    [Fact]
    public void Every_page_of_a_car_is_about_it()
    {
        var job = new JobId(Guid.NewGuid());
        string[] pages = [Links.Car(Car), $"{Links.Car(Car)}?joint=a&place=b", Links.Logbook(Car, 7), Links.Step(Car, job, "faces@front-left"), Links.Summary(Car), Links.HeldWork(Car, 3)];

        Assert.All(pages, page => Assert.Equal(Car, Links.CarOf(page)));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/cars")]
    [InlineData("/cars/new")]
    [InlineData("/tools/00000000-0000-0000-0000-000000000007")]
    public void No_other_page_is_about_a_car(string page) => Assert.Null(Links.CarOf(page));

    [Fact]
    public void A_colour_nobody_can_draw_has_no_fill()
    {
        Assert.Null(CarColours.Fill("primer"));
        Assert.Equal("background: #2459A8", CarColours.Fill("dark blue"));
    }
}
