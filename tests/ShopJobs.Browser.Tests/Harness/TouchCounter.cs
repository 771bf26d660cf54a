using System.Globalization;
using Microsoft.Playwright;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>Counts the touches of a task: every pointer that goes down, PIN digits included, and every letter typed on the tablet's own keys.</summary>
internal sealed class TouchCounter(IPage page)
{
    private const string Counting = """
        addEventListener('pointerdown', event => {
          const signs = event.target.closest?.('.sign-dialog')?.querySelector('[data-pin-pad]') || /\b(SIGN|WITNESS)\b/.test(event.target.closest?.('button')?.textContent ?? '');
          for (const name of signs ? ['touches', 'signing'] : ['touches']) localStorage[name] = Number(localStorage[name] ?? 0) + 1;
        }, true);
        """;

    private int typed;

    /// <summary>From here on the pages of a tablet count.</summary>
    public static Task CountAsync(IBrowserContext tablet) => tablet.AddInitScriptAsync(Counting);

    /// <summary>Begins a task.</summary>
    public async Task BeginAsync()
    {
        typed = 0;
        await page.EvaluateAsync("() => { delete localStorage.touches; delete localStorage.signing; }");
    }

    /// <summary>Touches since the task began, and those of them for signing.</summary>
    public async Task<(int All, int Signing)> SoFarAsync() => (
        typed + await page.EvaluateAsync<int>("() => Number(localStorage.touches ?? 0)"), await page.EvaluateAsync<int>("() => Number(localStorage.signing ?? 0)"));

    /// <summary>Touches a field and types into it.</summary>
    public async Task TypeAsync(string field, decimal value)
    {
        var text = value.ToString(CultureInfo.InvariantCulture);
        typed += text.Length;
        await page.Locator(field).ClickAsync();
        await page.Locator(field).FillAsync(text);
        await page.Locator(field).BlurAsync();
    }

    /// <summary>Types into a field that has the focus already.</summary>
    public async Task KeyAsync(string field, string text)
    {
        typed += text.Length;
        await Assertions.Expect(page.Locator(field)).ToBeFocusedAsync();
        await page.Locator(field).PressSequentiallyAsync(text);
    }

    /// <summary>Signs as a person does with a glove: the button, the name where it is not chosen yet, and six digits, the last of which signs.</summary>
    public async Task SignAsync(ILocator button, DemoPeople.DemoPerson person)
    {
        await OpenAsync(button, person);
        await PinAsync(person);
    }

    /// <summary>Opens the dialog, and chooses the name where it is not chosen yet.</summary>
    public async Task OpenAsync(ILocator button, DemoPeople.DemoPerson person)
    {
        var dialog = page.Locator(".sign-dialog");
        await button.ClickAsync();
        var tile = dialog.Locator(".person-tile", new() { HasText = person.Name });
        await tile.WaitForAsync();
        if (!await tile.Locator("input").IsCheckedAsync())
        {
            await tile.ClickAsync();
        }
    }

    /// <summary>Types the PIN on the keys of the dialog that is open, for whoever is chosen in it; the sixth digit signs.</summary>
    public async Task PinAsync(DemoPeople.DemoPerson person)
    {
        var dialog = page.Locator(".sign-dialog:has([data-pin-pad])");
        var shown = await dialog.ElementHandleAsync();
        foreach (var digit in person.Pin)
        {
            await dialog.Locator($"[data-pin-key='{digit}']").ClickAsync();
        }

        // Another one may open after it.
        await shown.WaitForElementStateAsync(ElementState.Hidden);
    }
}
