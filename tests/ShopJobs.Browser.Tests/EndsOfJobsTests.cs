using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>By hand in a real Chromium: a job rests, goes on and is given up; a job on the wrong car is taken back.</summary>
[Trait("Takes", "long")]
public sealed class EndsOfJobsTests : OneTabletTests
{
    private static readonly (string Name, int Width, int Height, ColorScheme Look)[] Sizes =
    [
        ("desktop-dark", 1440, 900, ColorScheme.Dark), ("phone-dark", 390, 844, ColorScheme.Dark), ("tablet", 1024, 768, ColorScheme.Light),
    ];

    private IPage page = default!;
    private CarId car;

    protected override async Task BeginAsync()
    {
        Tablet.SetDefaultTimeout(240_000);
        car = await Shop.CarAsync("White");
        page = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
    }

    [Fact]
    public async Task A_job_rests_goes_on_after_the_leads_signature_and_is_given_up()
    {
        var job = await StartWheelAsync();
        var step = new StepScreen(page, car, job);
        await step.OpenAsync("faces@rear-left");
        await step.ReportedAsync();
        await step.AnswerAsync();
        await step.SignAsync(DemoPeople.Lead);
        await step.OpenAsync("by-hand@rear-left");
        await step.ReportedAsync();

        // On hold: an empty reason is refused in words beside the field; then it rests, and says so wherever it is seen.
        await ChooseAsync("Put it on hold");
        await PressAsync("PUT IT ON HOLD");
        await Sheet.Locator(".form-wrong").WaitForAsync();
        await page.IsAccessibleAsync("job-hold-empty");
        await Sheet.Locator(".job-end textarea").FillAsync("The new wheel has not come");
        await PressAsync("PUT IT ON HOLD");
        await Sheet.GetByText("because “The new wheel has not come”").First.WaitForAsync();
        await LookAsync("job-on-hold", $"/cars/{car.Value}");
        await page.OpenAsync("/");
        await page.GetByText("because “The new wheel has not come”").First.WaitForAsync();
        await page.IsAccessibleAsync("floor-on-hold");
        await step.OpenAsync("by-hand@rear-left");
        await page.GetByText("This job is on hold").First.WaitForAsync();
        Assert.Equal(0, await page.Locator("button.report-main").CountAsync());
        await page.IsAccessibleAsync("step-on-hold");

        await page.OpenAsync($"/cars/{car.Value}");
        await ChooseAsync("Resume it");
        await Sheet.GetByText("run down again").First.WaitForAsync();
        await page.IsAccessibleAsync("job-resume");
        await Button("RESUME THE JOB").SignWithAsync(page, DemoPeople.Lead, "SIGN");
        await Sheet.Locator(".job-rests").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.All(Nuts, nut => Assert.Equal(PositionState.Open, Shop.Read(car).StateOf(nut)));

        // It can't be ended with steps unsigned; it is given up, and what it opened stays open.
        await ChooseAsync("End it");
        await Sheet.GetByText("It can't be ended yet").WaitForAsync();
        await page.IsAccessibleAsync("job-not-ended");
        await ChooseAsync("Cancel it");
        await Sheet.Locator(".job-end textarea").FillAsync("The customer takes the car home on a trailer");
        await LookAsync("job-cancel", null);
        await Button("CANCEL THE JOB").SignWithAsync(page, DemoPeople.Lead, "SIGN");
        await page.GetByText("because “The customer takes the car home on a trailer”").First.WaitForAsync();
        await page.IsAccessibleAsync("job-cancelled");
        await page.OpenAsync($"/cars/{car.Value}/release");
        await page.GetByText("is open and no job closes it").First.WaitForAsync();
        Assert.Equal(JobEnd.Cancelled, Shop.Read(car).State.Jobs[job].End);
        Assert.Equal([], Shop.VerifyAll());
    }

    [Fact]
    public async Task A_job_on_the_wrong_car_is_taken_back_and_its_steps_fall_when_two_have_said_that_nothing_was_opened()
    {
        var job = await StartWheelAsync();
        await SignedInAsync(DemoPeople.Chassis);
        var step = new StepScreen(page, car, job);
        await step.OpenAsync("faces@rear-left");
        await step.ReportedAsync();
        var opened = Shop.Read(car).State.Of(Nuts[0]).OpenedBy;

        await SignedInAsync(DemoPeople.Lead);
        await ChooseAsync("It is on the wrong car");
        await Sheet.GetByText("nobody has closed").WaitForAsync();
        await Sheet.Locator(".job-end textarea").FillAsync("Meant for Orange");
        await page.IsAccessibleAsync("job-wrong-car");
        await Button("TAKE THE JOB BACK").SignWithAsync(page, DemoPeople.Lead, "SIGN");
        await Sheet.GetByText("Its steps ask until").WaitForAsync();
        await LookAsync("job-taken-back", $"/cars/{car.Value}");
        Assert.True(Shop.Read(car).State.Jobs[job].IsRunning);

        // Whoever pressed OPEN says that it never was; the lead looks at the wheel and confirms.
        await SignedInAsync(DemoPeople.Chassis);
        await page.OpenAsync($"/cars/{car.Value}/logbook?entry={opened}");
        var entry = page.Locator(".entry.is-marked");
        await entry.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Correct") }).ClickAsync();
        await entry.Locator("textarea").FillAsync("The wheel was never off");
        await entry.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^TAKE BACK") }).ClickAsync();
        await page.Locator(".entry-waits").First.WaitForAsync();
        await SignedInAsync(DemoPeople.Lead);
        await page.OpenAsync($"/cars/{car.Value}/logbook");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Confirm it") }).ClickAsync();
        await page.Locator("textarea").FillAsync("All five have their mark");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign as second person" }).SignWithAsync(page, DemoPeople.Lead, "CONFIRM");
        await page.GetByText("Taken back as never done").First.WaitForAsync();

        await page.OpenAsync($"/cars/{car.Value}");
        await page.GetByText("started on the wrong car, taken back").First.WaitForAsync();
        await page.IsAccessibleAsync("wrong-car-gone");
        Assert.False(Shop.Read(car).State.Jobs[job].IsRunning);
        Assert.Equal([], Shop.VerifyAll());
    }

    private static readonly IReadOnlyList<JointPosition> Nuts = [.. Enumerable.Range(1, 5).Select(number => new JointPosition("wheel.nut", "rear-left", number))];

    private ILocator Sheet => page.Locator("article.job-sheet", new() { HasText = "Wheel fit-up" }).Filter(new() { HasText = "rear-left" }).First;

    private ILocator Button(string words) => Sheet.GetByRole(AriaRole.Button, new() { Name = words, Exact = true });

    private Task PressAsync(string words) => Button(words).ClickAsync();

    private async Task<JobId> StartWheelAsync()
    {
        await page.OpenAsync($"/cars/{car.Value}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a job" }).ClickAsync();
        await page.Locator(".start-job .choice", new() { HasText = "P5" }).ClickAsync();
        await page.Locator(".start-job .choice", new() { HasTextRegex = new Regex("^\\s*rear-left") }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Start P5" }).ClickAsync();
        await Sheet.Locator(".job-end").WaitForAsync();
        return Shop.Read(car).State.Jobs.Values.MaxBy(job => job.Number)!.Id;
    }

    private async Task ChooseAsync(string act)
    {
        if (!page.Url.EndsWith($"/cars/{car.Value}", StringComparison.Ordinal))
        {
            await page.OpenAsync($"/cars/{car.Value}");
        }

        var panel = Sheet.Locator(".job-end");
        if (await panel.GetAttributeAsync("open") is null)
        {
            await panel.Locator("summary").ClickAsync();
        }

        await panel.GetByRole(AriaRole.Button, new() { Name = act, Exact = true }).ClickAsync();
    }

    // The same page at each size and look.
    private async Task LookAsync(string name, string? path)
    {
        foreach (var (size, width, height, look) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.EmulateMediaAsync(new() { ColorScheme = look });
            if (path is not null)
            {
                await page.OpenAsync(path);
            }

            await page.IsAccessibleAsync($"{name}-{size}");
        }
    }

    private async Task SignedInAsync(DemoPeople.DemoPerson person)
    {
        await page.CloseAsync();
        page = await ShopBrowser.SignInAsync(Tablet, person, "/");
    }
}
