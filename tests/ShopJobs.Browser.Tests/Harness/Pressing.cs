using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>Pressing as a person does: a press that did nothing, because the page was not awake yet, is made again.</summary>
public static class Pressing
{
    private const int Tries = 40;

    /// <summary>Presses until what should come of it is there.</summary>
    public static async Task PressUntilAsync(this ILocator button, ILocator there)
    {
        for (var i = 0; i < Tries; i++)
        {
            if (await button.IsVisibleAsync())
            {
                await button.ClickAsync();
            }

            try
            {
                await there.First.WaitForAsync(new() { Timeout = 3_000 });
                return;
            }
            catch (TimeoutException) when (i < Tries - 1)
            {
                // The page was still asleep: press again.
                continue;
            }
        }
    }

    /// <summary>Opens the signature dialog, chooses the person, types the PIN and presses the button that begins with the meaning.</summary>
    public static async Task SignWithAsync(this ILocator button, IPage page, DemoPeople.DemoPerson person, string meaning)
    {
        var dialog = page.Locator(".sign-dialog");
        await button.PressUntilAsync(dialog.Locator("#sign-pin"));
        await dialog.Locator(".person-tile", new() { HasText = person.Name }).ClickAsync();
        await dialog.Locator("#sign-pin").FillAsync(person.Pin);
        await dialog.GetByRole(AriaRole.Button, new() { NameRegex = new Regex($"^{meaning}") }).ClickAsync();
        await dialog.WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }
}
