using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.Floor;

public sealed class DueOutTests : BunitContext
{
    [Fact]
    public void A_car_whose_due_nuts_come_in_doubt_stays_with_the_reason()
    {
        var car = Readings.OnTheRoad();
        car.Wait(TimeSpan.FromDays(1));
        Assert.Equal("5 due", Render<DueOut>(Given(car)).Find("strong:not(.car-name)").TextContent);

        car.TellTool(TestTools.Click, new Doubted(CarAtWork.Reason));

        Assert.Equal("5 held or in doubt: decided first", Render<DueOut>(Given(car)).Find("strong:not(.car-name)").TextContent);
    }

    [Fact]
    public void A_car_that_owes_nothing_is_not_there() => Assert.Empty(Render<DueOut>(Given(Readings.WithHeldNut())).FindAll("section"));

    private static Action<ComponentParameterCollectionBuilder<DueOut>> Given(CarAtWork car) => parameters => parameters
        .Add(panel => panel.Cars, [Readings.OnFloor(car)])
        .Add(panel => panel.Today, car.Today);
}
