using System.Text;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A technician says that a step is wrong, the author writes a newer revision, the lead takes it over for a running job: on the screens alone.</summary>
[Trait("Takes", "long")]
public sealed class RevisionTests : OneTabletTests
{
    [Fact]
    public async Task A_wrong_number_is_said_written_anew_and_taken_over_and_what_is_outside_it_waits()
    {
        // A seat goes in by revision 1.
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P10", "Seat, please", "driver");
        await lead.CloseAsync();
        var job = await Shop.JobAsync(car, "Seat");
        var page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        var hands = new ProcedureHands(page, Shop, car, job, DemoPeople.Chassis, DemoPeople.Engines);
        var steps = Shop.Read(car).Placed(Shop.Read(car).State.Jobs[job]).Steps.Where(step => step.Work.Any(work => work.Instance.Group.Key == "seat.base")).ToList();
        foreach (var step in Shop.Read(car).Placed(Shop.Read(car).State.Jobs[job]).Steps.TakeWhile(step => step != steps[^1]).Append(steps[^1]))
        {
            await hands.FinishStepAsync(step.Id);
        }

        // Two touches: this step is wrong, a number is.
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{steps[^1].Id}");
        await page.GetByText("This step is wrong").ClickAsync();
        await page.IsAccessibleEverywhereAsync("step-is-wrong");
        await page.GetByRole(AriaRole.Button, new() { Name = "A number is wrong" }).ClickAsync();
        await page.GetByText("It waits for its author.").WaitForAsync();
        await page.CloseAsync();

        // The author sees it, answers, and imports the newer revision: what it touches is shown first.
        var author = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Engines, "/my-work");
        await author.GetByText("a number is wrong").WaitForAsync();
        await author.IsAccessibleAsync("my-work-step-wrong");
        await author.GetByRole(AriaRole.Link, new() { Name = "Answer" }).First.ClickAsync();
        var answer = author.GetByRole(AriaRole.Button, new() { Name = "ANSWER" });
        await answer.ClickAsync();
        await author.GetByText("Write what you answer").WaitForAsync();
        await author.Locator("textarea[id^=answer-]").FillAsync("Revision 9 says it right");
        await answer.ClickAsync();
        await author.GetByText("Answered: Revision 9 says it right").WaitForAsync();
        await author.IsAccessibleAsync("procedure-answered");
        await author.GotoAsync("/procedures/upload");
        await author.Locator("#documents").SetInputFilesAsync(new FilePayload { Name = "P10.yaml", MimeType = "application/yaml", Buffer = Newer() });
        await author.GetByRole(AriaRole.Button, new() { Name = "Import" }).ClickAsync();
        await author.GetByText("Jobs and released cars with records under an older revision").WaitForAsync();
        await author.GetByText("now outside what it asks").WaitForAsync();
        await author.IsAccessibleEverywhereAsync("import-revision-effect");
        await author.GetByRole(AriaRole.Button, new() { Name = "Take it in" }).ClickAsync();
        await author.GetByText("is in the shop and current").WaitForAsync();
        Assert.Equal("1", Shop.Read(car).State.Jobs[job].Fact.Revision);
        await author.CloseAsync();

        // The lead takes it over: what is outside it is held, the signed step falls.
        lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.OpenAsync($"/cars/{car.Value}");
        await lead.GetByRole(AriaRole.Link, new() { Name = "What revision 9 means here" }).ClickAsync();
        await lead.GetByText("Held until it is decided or redone").First.WaitForAsync();
        await lead.IsAccessibleEverywhereAsync("revision-effect");
        await lead.GetByRole(AriaRole.Button, new() { Name = "SIGN: GO ON BY REVISION 9" }).SignWithAsync(lead, DemoPeople.Lead, "GO ON");
        await lead.GetByText("The job goes on by revision 9.").WaitForAsync();
        var now = Shop.Read(car);
        Assert.Equal("9", now.State.Jobs[job].Fact.Revision);
        Assert.Contains(now.HoldsOn(Domain.Procedures.ReleaseKind.Road), point => point.Because?.Reason == HoldReason.OlderRevision);

        // It waits for a decision on the lead's list.
        await lead.OpenAsync("/my-work");
        await lead.GetByRole(AriaRole.Link, new() { Name = "older revision" }).First.ClickAsync();
        await lead.IsAccessibleAsync("held-by-revision");
        Assert.Equal([], Shop.VerifyAll());
    }

    // The seat's base bolts at a fifth more.
    private static byte[] Newer()
    {
        var text = Encoding.UTF8.GetString(SeedDocuments.All.Single(file => file.Name.StartsWith("P10", StringComparison.Ordinal)).Bytes);
        return Encoding.UTF8.GetBytes(text.Replace("revision: \"1\"\ndemo-data", "revision: \"9\"\ndemo-data", StringComparison.Ordinal)
            .Replace("value: 30 N·m\n        permitted: 28..32 N·m", "value: 36 N·m\n        permitted: 34..38 N·m", StringComparison.Ordinal));
    }
}
