using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>Going to a page and signing on it, as a person does.</summary>
public static class Pressing
{
    /// <summary>Goes to a page and waits until it has its line to the server.</summary>
    public static async Task OpenAsync(this IPage page, string path)
    {
        await page.GotoAsync(path);
        await page.Locator("main.page:not(.is-asleep)").WaitForAsync();
    }

    /// <summary>Opens the signature dialog where it is not open, chooses the person, types the PIN and presses the button that begins with the meaning.</summary>
    public static async Task SignWithAsync(this ILocator button, IPage page, DemoPeople.DemoPerson person, string meaning)
    {
        var sign = page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex($"^{meaning}") });
        var dialog = page.Locator(".sign-dialog", new() { Has = sign });
        // After a witness it opens by itself, and lies over its button.
        await button.Or(dialog).First.WaitForAsync();
        if (!await OpenedByItselfAsync(button, dialog))
        {
            await button.ClickAsync();
        }

        await dialog.Locator(".person-tile", new() { HasText = person.Name }).ClickAsync();
        await dialog.Locator("#sign-pin").FillAsync(person.Pin);
        await dialog.Locator(sign).ClickAsync();
        await dialog.WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    private static async Task<bool> OpenedByItselfAsync(ILocator button, ILocator dialog)
    {
        try
        {
            await button.ClickAsync(new() { Trial = true, Timeout = 15_000 });
            return false;
        }
        catch (TimeoutException)
        {
            return await dialog.IsVisibleAsync();
        }
    }
}
