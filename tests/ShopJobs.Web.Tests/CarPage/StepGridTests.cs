using AngleSharp.Dom;
using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.CarPage;

namespace ShopJobs.Web.Tests.CarPage;

public sealed class StepGridTests : ScreenBench
{
    private readonly CarAtWork car = new();
    private readonly JobId job;

    public StepGridTests() => job = car.StartJob(TestProcedures.Wheels(1, 3, 5, 2, 4), TestRegister.Left, TestRegister.Right);

    [Fact]
    public void A_row_is_a_step_and_a_column_a_corner()
    {
        var grid = Draw();

        Assert.Equal(["FL", "FR"], grid.FindAll("thead abbr").Select(head => head.TextContent));
        Assert.Equal(car.State.Jobs[job].Fact.Places, grid.FindAll("thead abbr").Select(head => head.GetAttribute("title")));
        Assert.All(grid.FindAll("tbody tr"), row => Assert.Equal(2, row.QuerySelectorAll("td a.step-cell").Length));
    }

    [Fact]
    public void A_step_at_its_place_is_named_with_its_joint_and_leads_to_it()
    {
        var cell = Cell(Draw(), "seat@front-left");

        Assert.Equal($"/cars/{Readings.Id.Value}/jobs/{job.Value}/steps/seat%40front-left", cell.GetAttribute("href"));
        Assert.Contains(", front-left: not signed, its fasteners as found, after: ", cell.QuerySelector(".visually-hidden")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_shows_its_nuts_as_they_are_and_how_many_of_them_it_has_done()
    {
        SignFaces(TestRegister.Left);
        car.Declare(TestRegister.WheelUp);
        var nuts = car.Positions(TestRegister.Nut, TestRegister.Left);
        car.Open(TestPerson.Tess, job, nuts);
        car.ByHand(TestPerson.Tess, job, "nuts", nuts);
        car.Pull(TestPerson.Tess, job, "nuts", nuts[0], 1, 50);

        var cell = Cell(Draw(), "seat@front-left");

        Assert.Equal("1/5", cell.QuerySelector(".step-short")!.TextContent);
        Assert.Contains("its fasteners 4 of 5 hand-tight", cell.QuerySelector(".visually-hidden")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_that_is_signed_at_one_place_keeps_its_row_with_a_tick_there()
    {
        SignFaces(TestRegister.Left);

        var grid = Draw();

        Assert.Equal((1, 0), (Cell(grid, "faces@front-left").QuerySelectorAll("svg.step-tick").Length, Cell(grid, "faces@front-right").QuerySelectorAll("svg.step-tick").Length));
        Assert.Contains(": signed, Tess", Cell(grid, "faces@front-left").QuerySelector(".visually-hidden")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("1 of 6 signed", grid.Find(".steps-signed-count").TextContent);
    }

    [Fact]
    public void Rows_that_are_signed_throughout_are_folded_into_one_line()
    {
        SignFaces(TestRegister.Left);
        SignFaces(TestRegister.Right);

        var grid = Draw();

        Assert.Equal("2 of 6 signed", grid.Find("details.steps-signed > summary").TextContent);
        Assert.NotNull(grid.Find("details.steps-signed a.step-cell"));
        Assert.Equal(2, grid.FindAll("table.step-grid").Single(table => table.Closest("details") is null).QuerySelectorAll("tbody tr").Length);
    }

    [Fact]
    public void The_one_step_that_comes_next_is_marked_and_no_step_of_the_grid_is_a_button()
    {
        var grid = Draw(next: "faces@front-right");

        Assert.Same(Cell(grid, "faces@front-right"), Assert.Single(grid.FindAll(".is-next")));
        Assert.EndsWith(", comes next", Cell(grid, "faces@front-right").QuerySelector(".visually-hidden")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(grid.FindAll("button, .button"));
    }

    [Fact]
    public void A_step_without_joints_is_a_box_to_be_ticked()
    {
        var cell = Cell(Draw(), "faces@front-left");

        Assert.NotNull(cell.QuerySelector("svg.step-box"));
        Assert.EndsWith(", front-left: not signed", cell.QuerySelector(".visually-hidden")!.TextContent, StringComparison.Ordinal);
    }

    private void SignFaces(string place) => car.Do(TestPerson.Tess, CarWork.Sign(job, $"faces@{place}", "clean"));

    private static IElement Cell(IRenderedComponent<StepGrid> grid, string step) =>
        grid.FindAll("a.step-cell").Single(cell => cell.GetAttribute("href")!.EndsWith($"/{Uri.EscapeDataString(step)}", StringComparison.Ordinal));

    private IRenderedComponent<StepGrid> Draw(string? next = null) => Render<StepGrid>(parameters => parameters
        .Add(grid => grid.Reading, Readings.Of(car, TestPerson.Tess))
        .Add(grid => grid.Job, car.State.Jobs[job])
        .Add(grid => grid.Names, Readings.Names)
        .Add(grid => grid.Next, next));
}
