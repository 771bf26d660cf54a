using Microsoft.Playwright;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Browser.Tests;

/// <summary>One tablet on one wheel's first stage, and what the logbook says of that wheel.</summary>
public sealed class LostConnectionTablet(
    LostConnectionShop shop, IBrowserContext context, IPage page, CarId car, IReadOnlyList<JointPosition> nuts, string path)
{
    public IPage Page => page;

    public IBrowserContext Context => context;

    public string Path => path;

    public CarId Car => car;

    /// <summary>The wheel's nuts by number.</summary>
    public IReadOnlyList<JointPosition> Nuts => nuts;

    public ILocator Status => page.Locator("[data-cell-status]");

    public ILocator Field => page.Locator("[data-keypad-field]");

    /// <summary>Types digits, and ENTER, as an electronic wrench does.</summary>
    public async Task PullAsync(string digits)
    {
        await TypeAsync(digits);
        await page.Keyboard.PressAsync("Enter");
    }

    /// <summary>Types digits and waits until the field has them.</summary>
    public async Task TypeAsync(string digits)
    {
        await page.Locator("[data-key='0']:not([disabled])").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.Keyboard.TypeAsync(digits);
        await Assertions.Expect(Field).ToHaveValueAsync(digits, new() { Timeout = Patience });
    }

    /// <summary>Waits until the screen stands at this nut as the one next position.</summary>
    public Task StandsAtAsync(int nut) => Assertions.Expect(page.Locator("[data-next]"))
        .ToHaveAttributeAsync("data-next", nut.ToString(System.Globalization.CultureInfo.InvariantCulture), new() { Timeout = Patience });

    /// <summary>Waits until the page has its own line to the server.</summary>
    public Task LiveAsync() => page.WaitForFunctionAsync("() => window.shopDevice?.listens()");

    /// <summary>Waits until these words stand under the keypad.</summary>
    public Task SaysAsync(string words) => Assertions.Expect(Status).ToContainTextAsync(words, new() { Timeout = Patience });

    /// <summary>Every pull of the wheel in the logbook's own file: nut and value, in order.</summary>
    public IReadOnlyList<(int Nut, decimal Value)> Pulls =>
    [
        .. nuts.SelectMany(nut => shop.Folder.Read(car).State.Of(nut).Pulls).OrderBy(pull => pull.Number)
            .Select(pull => (pull.Fact.Position.Number, pull.Value!.Value.Value)),
    ];

    /// <summary>What is recorded of each pull, in order.</summary>
    public IReadOnlyList<TorqueRecorded> Facts =>
        [.. nuts.SelectMany(nut => shop.Folder.Read(car).State.Of(nut).Pulls).OrderBy(pull => pull.Number).Select(pull => pull.Fact)];

    /// <summary>Another page of the same tablet, at the same step.</summary>
    public async Task<LostConnectionTablet> AnotherPageAsync()
    {
        var other = new LostConnectionTablet(shop, context, await context.NewPageAsync(), car, nuts, path);
        await other.Page.GotoAsync(new Uri(page.Url).PathAndQuery);
        await other.LiveAsync();
        return other;
    }

    /// <summary>Ids of reports that the tablet still keeps as unsent.</summary>
    public Task<string[]> UnsentAsync() => page.EvaluateAsync<string[]>("() => Object.keys(localStorage).filter(key => key.startsWith('shop.unsent.'))");

    /// <summary>Waits until the tablet keeps no report as unsent.</summary>
    public Task SettledAsync() => page.WaitForFunctionAsync("() => !Object.keys(localStorage).some(key => key.startsWith('shop.unsent.'))");

    private const float Patience = 90_000;
}
