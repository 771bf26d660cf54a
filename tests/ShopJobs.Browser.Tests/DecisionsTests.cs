using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>What waits for a decision, by hand on the screens alone: a wrench's recall decided in one go, a step held and decided, a race lost.</summary>
[Trait("Takes", "long")]
public sealed class DecisionsTests : OneTabletTests
{
    [Fact]
    public async Task A_wrenchs_recall_is_told_to_its_owner_and_decided_in_one_go_each_nut_by_its_own_entry()
    {
        var car = await Shop.CarAsync("White");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/tools");
        await lead.GetByRole(AriaRole.Link, new() { Name = "W7" }).First.ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "Suspect" }).ClickAsync();
        await lead.Locator("#reason").FillAsync("Fell from the bench");
        await lead.GetByRole(AriaRole.Button, new() { Name = "SUSPECT" }).ClickAsync();
        var recall = lead.Locator(".recall", new() { Has = lead.GetByRole(AriaRole.Heading, new() { NameRegex = new Regex("^White") }) });
        await recall.GetByText("Not told yet").WaitForAsync();
        await recall.GetByRole(AriaRole.Button, new() { Name = "Owner told", Exact = true }).ClickAsync();
        await recall.GetByRole(AriaRole.Button, new() { Name = "OWNER TOLD", Exact = true }).ClickAsync();
        await recall.GetByText("Write the reason in a few words").WaitForAsync();
        await recall.Locator("textarea").FillAsync("By telephone: leaves the car in the garage until we have looked");
        await recall.GetByRole(AriaRole.Button, new() { Name = "OWNER TOLD", Exact = true }).ClickAsync();
        await recall.GetByText("Told by Edda").WaitForAsync();
        await lead.IsAccessibleAsync("recall-told");

        await lead.OpenAsync("/my-work");
        await lead.Locator(".decisions").GetByText("is in doubt").First.WaitForAsync();
        await lead.IsAccessibleAsync("my-work-decisions");

        var before = Shop.Read(car).State.Number;
        var doubted = Shop.Read(car).State.Positions.Keys.Where(position => Deciding.IsAsked(Shop.Read(car).State, Shop.Read(car).Now, position)).ToList();
        Assert.True(doubted.Count > 1);
        await lead.GoBackAsync();
        await lead.Locator(".recall", new() { HasText = "White" }).GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^Decide") }).ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).ClickAsync();
        await lead.GetByText("Choose what is to be done first").WaitForAsync();
        var all = lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^All ") });
        while (await all.CountAsync() is > 0 and var left)
        {
            await all.First.ClickAsync();
            await all.Nth(left - 1).WaitForAsync(new() { State = WaitForSelectorState.Detached });
        }

        await lead.Locator(".decide-option", new() { HasText = "REWORK" }).ClickAsync();
        await lead.Locator("#decide-why").FillAsync("Back off and torque again with W8");
        await lead.IsAccessibleAsync("decide-row");
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).SignWithAsync(lead, DemoPeople.Lead, "DECIDE REWORK");
        await lead.GetByText("No fastener waits for a decision here").WaitForAsync();
        await lead.IsAccessibleAsync("decided-row");

        var state = Shop.Read(car).State;
        Assert.Equal(doubted.Count, state.Number - before);
        Assert.All(doubted, position => Assert.Equal(Disposition.Rework, state.Of(position).LastDecision?.Disposition));
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task A_step_without_torque_is_held_decided_and_the_second_lead_is_told_who_was_first()
    {
        var car = await Shop.CarAsync("Orange");
        var job = await Shop.JobAsync(car, "Wheel");
        var step = Shop.Read(car) is var reading && reading.Placed(reading.State.Jobs[job]).Steps.First(one => one.Step.Work.Count == 0).Id is var id ? id : "";
        var jorn = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Chassis, "/");
        await jorn.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{Uri.EscapeDataString(step)}");
        await jorn.GetByRole(AriaRole.Button, new() { Name = "HOLD, CALL LEAD" }).ClickAsync();
        await jorn.GetByRole(AriaRole.Button, new() { Name = "I am not sure" }).ClickAsync();
        await jorn.IsAccessibleAsync("hold-step-dialog");
        await jorn.Locator(".sign-dialog").GetByRole(AriaRole.Button, new() { Name = "HOLD", Exact = true }).ClickAsync();
        await jorn.GetByText("This step is held").WaitForAsync();
        await jorn.IsAccessibleAsync("step-held");
        await jorn.CloseAsync();

        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/my-work");
        await lead.Locator(".decisions-item", new() { HasText = "Step" }).First.ClickAsync();
        var other = await Tablet.NewPageAsync();
        await other.OpenAsync(new Uri(lead.Url).PathAndQuery);
        foreach (var page in new[] { lead, other })
        {
            await page.Locator(".decide-option", new() { HasText = "USE AS IS" }).ClickAsync();
            await page.Locator("#decide-why").FillAsync("Looked at it together");
        }

        await lead.IsAccessibleAsync("decide-step");
        await other.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).ClickAsync();
        await other.Locator(".sign-dialog").WaitForAsync();
        await lead.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).SignWithAsync(lead, DemoPeople.Lead, "DECIDE USE AS IS");
        await lead.GetByText("Decided by Edda").WaitForAsync();

        var dialog = other.Locator(".sign-dialog");
        await dialog.Locator(".person-tile", new() { HasText = DemoPeople.Lead.Name }).ClickAsync();
        await dialog.Locator("#sign-pin").FillAsync(DemoPeople.Lead.Pin);
        await dialog.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^DECIDE") }).ClickAsync();
        await other.GetByText(new Regex("Edda decided it before you")).WaitForAsync();
        await other.Locator(".decide-lost").GetByText("Looked at it together").WaitForAsync();
        await other.IsAccessibleAsync("decide-lost");
        Assert.Equal(Disposition.UseAsIs, Shop.Read(car).State.WorkHolds.Values.Single().Decision?.Disposition);
        Assert.Equal([], Shop.VerifyAll());
    }
}
