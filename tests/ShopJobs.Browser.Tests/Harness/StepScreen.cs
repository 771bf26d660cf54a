using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>What a technician does on the step's screen, as they would.</summary>
public sealed class StepScreen(IPage page, CarId car, JobId job)
{
    /// <summary>Opens a step and waits until it is drawn.</summary>
    public async Task OpenAsync(string step)
    {
        await page.OpenAsync($"/cars/{car.Value}/jobs/{job.Value}/steps/{step}");
        await page.Locator("main.page:not(.is-asleep) [data-step]").WaitForAsync();
        await page.NextIsInSightAsync();
        await page.HasFewSizesOfTypeAsync();
    }

    /// <summary>Presses every button that says what is done to a whole group or joint until none is left: OPEN, FITTED NEW, HAND-TIGHT.</summary>
    public async Task ReportAllAsync()
    {
        while (await Report.CountAsync() > 0)
        {
            if (await Report.First.GetAttributeAsync("data-twice") is not null)
            {
                // What takes records away is touched a second time, and not by a double tap.
                await Report.First.ClickAsync();
                await page.WaitForFunctionAsync("() => Date.now() - Number(document.querySelector('[data-asked]')?.dataset.asked ?? Date.now()) > 700");
            }

            await PressAsync(Report.First);
        }
    }

    /// <summary>Waits for such a button, and presses every one.</summary>
    public async Task ReportedAsync()
    {
        await Report.First.WaitForAsync();
        await ReportAllAsync();
    }

    /// <summary>Says that the car stands as the stage asks.</summary>
    public async Task StandsAsAskedAsync()
    {
        var asked = page.Locator(".condition-asked button.report-main");
        while (await asked.CountAsync() > 0)
        {
            await PressAsync(asked.First);
        }
    }

    /// <summary>Takes a tool in hand.</summary>
    public async Task TakeAsync(string tool)
    {
        var taken = page.Locator(".tool-chip .tool-name", new() { HasText = tool });
        if (await taken.CountAsync() > 0)
        {
            return;
        }

        var offer = page.Locator(".tool-offer", new() { HasText = tool });
        if (await offer.CountAsync() == 0)
        {
            await page.Locator(".tool-chip").ClickAsync();
        }

        await offer.ClickAsync();
        await taken.WaitForAsync();
        await page.Locator("[data-keypad]").WaitForAsync();
    }

    /// <summary>Types what a click tool is set to, once.</summary>
    public async Task SetToAsync(string setting)
    {
        var click = page.Locator("[data-keypad-click]", new() { HasText = setting });
        if (await click.IsVisibleAsync())
        {
            return;
        }

        var otherwise = page.Locator("[data-keypad-otherwise]");
        if (await otherwise.IsVisibleAsync())
        {
            await otherwise.ClickAsync();
        }

        // A number far from the instructed one is asked for twice.
        for (var i = 0; i < 2 && !await click.IsVisibleAsync(); i++)
        {
            foreach (var digit in setting)
            {
                await page.Locator($"[data-key='{digit}']").ClickAsync();
            }

            await page.Locator("[data-key=enter]").ClickAsync();
        }

        await click.WaitForAsync();
    }

    /// <summary>One touch: the tool is set as the step says.</summary>
    public async Task SetAsInstructedAsync()
    {
        await page.Locator("[data-keypad-set]").ClickAsync();
        await page.Locator("[data-keypad-click]").WaitForAsync();
    }

    /// <summary>One touch: the tool clicked. Waits until the screen stands at another cell.</summary>
    public Task ClickedAsync() => page.StandsStillAsync("[data-keypad-click]", () => MovedOnAsync(() => page.Locator("[data-keypad-click]").ClickAsync()));

    /// <summary>Types what an indicating tool shows, or an angle, and enters it.</summary>
    public Task ReadAsync(string reading) => MovedOnAsync(async () =>
    {
        foreach (var digit in reading)
        {
            await page.Locator($"[data-key='{digit}']").ClickAsync();
        }

        await page.Locator("[data-key=enter]").ClickAsync();
    });

    /// <summary>Sets the tool otherwise than before.</summary>
    public async Task SetAnewAsync(string setting)
    {
        await page.Locator("[data-keypad-change]").ClickAsync();
        await SetToAsync(setting);
    }

    /// <summary>Pulls the nut that is next; tool and setting are chosen where they are not yet.</summary>
    public async Task PullAsync(string tool, string setting)
    {
        await TakeAsync(tool);
        await SetToAsync(setting);
        await ClickedAsync();
    }

    /// <summary>Pulls every nut that is next with one tool.</summary>
    public async Task PullAllAsync(string tool, string setting)
    {
        await StandsAsAskedAsync();
        while (await page.Locator(".work-keys").CountAsync() > 0)
        {
            await PullAsync(tool, setting);
        }
    }

    /// <summary>Waits until a position whose words begin so is the one to be pulled; its words.</summary>
    public async Task<string> StandsAtAsync(string words)
    {
        var which = page.Locator(".work-which", new() { HasTextRegex = new Regex($"^\\s*{Regex.Escape(words)}") });
        await which.WaitForAsync();
        return await which.InnerTextAsync();
    }

    /// <summary>Ticks everything and types the values given.</summary>
    public async Task AnswerAsync(params (string Measure, decimal Value)[] values)
    {
        foreach (var tick in await page.Locator(".tick input").AllAsync())
        {
            await tick.CheckAsync();
        }

        foreach (var (measure, value) in values)
        {
            await page.Locator($"#m-{measure}").FillAsync(value.ToString(CultureInfo.InvariantCulture));
            await page.Locator($"#m-{measure}").BlurAsync();
        }
    }

    /// <summary>Signs the step; the page is that of the next one then, where there is one.</summary>
    public async Task SignAsync(DemoPeople.DemoPerson person)
    {
        await page.Locator(".sign-button:not([disabled])").WaitForAsync();
        await page.NextIsInSightAsync();
        await MovedOnAsync(() => page.Locator(".sign-button:not([disabled])").SignWithAsync(page, person, "SIGN"));
    }

    /// <summary>A second person looks and signs at this tablet; what came of it is on the page after.</summary>
    public Task WitnessAsync(DemoPeople.DemoPerson person) =>
        page.GetByRole(AriaRole.Button, new() { Name = "WITNESS: I checked" }).SignWithAsync(page, person, "WITNESS");

    private ILocator Report => page.Locator(".step-next :not(.condition-asked) > button.report-main");

    private Task PressAsync(ILocator button) => MovedOnAsync(() => button.ClickAsync());

    private async Task MovedOnAsync(Func<Task> act)
    {
        var before = await page.Locator("[data-step]").GetAttributeAsync("data-number");
        await act();
        await page.Locator($"[data-step]:not([data-number='{before}'])").WaitForAsync();
        await page.NextIsInSightAsync();
    }
}
