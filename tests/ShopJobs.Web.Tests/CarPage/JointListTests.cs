using AngleSharp.Dom;
using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.CarPage;
using JointList = ShopJobs.Web.Components.CarPage.JointList;

namespace ShopJobs.Web.Tests.CarPage;

public sealed class JointListTests : ScreenBench
{
    [Fact]
    public void What_is_as_found_is_folded_into_one_line_with_its_count()
    {
        var list = Draw(Readings.WithHeldNut());

        Assert.Equal("As found: 23", list.Find("details.as-found > summary").TextContent);
        Assert.False(list.Find("details.as-found").HasAttribute("open"));
        Assert.Single(list.FindAll("a.joint-tile"), tile => tile.Closest("details") is null);
    }

    [Fact]
    public void Every_tile_says_its_joint_its_place_and_its_state()
    {
        var names = Draw(Readings.WithHeldNut()).FindAll("a.joint-tile").Select(tile => tile.GetAttribute("aria-label")).ToList();

        Assert.Equal("wheel nut front-left: 1 of 5 held", names[0]);
        Assert.Equal(names.Count, names.Distinct().Count());
        Assert.Contains("wheel nut front-right: as found", names);
    }

    [Fact]
    public void The_fold_is_open_where_the_joint_that_is_looked_at_is_in_it()
    {
        Assert.True(Draw(Readings.WithHeldNut(), new Joint(TestRegister.Nut, TestRegister.Right)).Find("details.as-found").HasAttribute("open"));
    }

    private IRenderedComponent<JointList> Draw(CarAtWork car, Joint? chosen = null)
    {
        var reading = Readings.Of(car, TestPerson.Tess);
        return Render<JointList>(parameters => parameters
            .Add(list => list.Reading, reading).Add(list => list.Joints, JointsSeen.Of(reading.State, reading.Now)).Add(list => list.Chosen, chosen));
    }
}
