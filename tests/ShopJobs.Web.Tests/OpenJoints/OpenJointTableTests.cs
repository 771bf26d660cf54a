using Bunit;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.OpenJoints;
using ShopJobs.Web.Tests.CarPage;

namespace ShopJobs.Web.Tests.OpenJoints;

public sealed class OpenJointTableTests : ScreenBench
{
    [Fact]
    public void Nothing_open_is_said()
    {
        Assert.Contains("Everything is finished", Show(Readings.OnTheRoad()).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Fasteners_of_a_joint_in_one_state_are_one_line_oldest_first()
    {
        var car = Readings.WithHeldNut();
        car.Wait(TimeSpan.FromHours(2));
        car.Open(TestPerson.Tess, null, car.Positions(TestRegister.Nut, TestRegister.Right));

        var rows = Show(car).FindAll("tbody tr").Select(row => string.Join('|', row.QuerySelectorAll("td").Skip(2).Select(cell => cell.TextContent.Trim())));

        Assert.Equal(
            ["wheel nut front-left 2 to 5|hand-tight", "wheel nut front-left 1|held", "wheel nut front-right 1 to 5|open"],
            rows);
    }

    [Fact]
    public void Only_what_is_hand_tight_for_too_long_says_so()
    {
        var table = Render<OpenJointTable>(parameters => parameters
            .Add(table => table.Lines, OpenJointLine.Of([Readings.OnFloor(Readings.WithHeldNut())])).Add(table => table.At, CarAtWork.Start).Add(table => table.IsTooLong, _ => true));

        Assert.Equal("Too long: finish it, or back it off.", Assert.Single(table.FindAll(".late-word")).TextContent);
        Assert.Contains("hand-tight", table.Find("tr.is-late").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<OpenJointTable> Show(CarAtWork car) => Render<OpenJointTable>(parameters => parameters
        .Add(table => table.Lines, OpenJointLine.Of([Readings.OnFloor(car)])).Add(table => table.At, car.Now));
}
