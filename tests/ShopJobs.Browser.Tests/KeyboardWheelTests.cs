using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopJobs.Browser.Tests.Harness;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests;

/// <summary>A whole wheel by the keyboard alone: from the sign-in over the floor to the signature of its final torque, seen by a second person.</summary>
[Trait("Takes", "long")]
public sealed class KeyboardWheelTests : OneTabletTests
{
    private const string Place = "front-left";

    // After the last nut nothing is next: then there is nothing to wait for.
    private const string NextIsSaidAndHasTheFocus = """
        () => {
          const pulling = document.querySelector('.work-keys');
          const next = pulling ? document.querySelector('.work-which').textContent.trim().replace(/\s+/g, ' ') : '';
          return !pulling ? document.activeElement.matches('.step-next *') : document.querySelector('#said-aloud').textContent.includes(next) && document.activeElement.matches('[data-keypad-click]');
        }
        """;

    [Fact]
    public async Task A_wheel_is_fitted_and_signed_without_a_pointer_and_each_next_nut_is_said()
    {
        var car = await Shop.CarAsync("Grey");
        var lead = await ShopBrowser.SignInAsync(Tablet, DemoPeople.Lead, "/");
        await lead.PutOnAsync(car, "P5", "Wheel, please", Place);
        await lead.CloseAsync();

        var page = await Tablet.NewPageAsync();
        var hands = new KeyboardHands(page);
        await page.GotoAsync("/sign-in?returnUrl=%2F");
        await hands.IdentifyAsync(DemoPeople.Chassis, await page.Locator(".person-tile input").First.GetAttributeAsync("name") ?? "", "#pin");
        await page.Locator("main.page:not(.is-asleep) article.car-sheet").First.WaitForAsync();

        await hands.PressAsync(page.Locator("article", new() { HasText = "Grey" }).Locator(".car-next"));
        await StandsAtAsync(page, "faces");
        await hands.RecordAllAsync(Reports(page));
        await DoneAsync(page, hands, "by-hand");
        await hands.RecordAllAsync(Reports(page));
        await hands.TypeAsync(page.Locator("#m-turns"), "9");
        await DoneAsync(page, hands, "snug");
        await DoneAsync(page, hands, "stage-50");
        await PullAllAsync(page, hands, "W5");
        await hands.SignAsync(page.Locator(".sign-button:not([disabled])"), DemoPeople.Chassis);
        await StandsAtAsync(page, "lower");
        await hands.TickAllAsync();
        await hands.SignAsync(page.Locator(".sign-button:not([disabled])"), DemoPeople.Chassis);
        await StandsAtAsync(page, "final");
        await PullAllAsync(page, hands, "W7");
        await hands.TickAllAsync();
        await hands.SignAsync(page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^WITNESS|I checked") }), DemoPeople.Engines);
        await hands.SignAsync(page.Locator(".sign-button:not([disabled])"), DemoPeople.Chassis);
        await page.Locator(".signed").WaitForAsync();

        Assert.Equal([], Shop.VerifyAll());
    }

    /// <summary>The car's condition, the tool, its setting, and one Enter for each nut: the focus stands on the next one's button already.</summary>
    private static async Task PullAllAsync(IPage page, KeyboardHands hands, string tool)
    {
        await hands.RecordAllAsync(page.Locator(".condition-asked button.report-main"));
        if (await page.Locator(".tool-chip .tool-name", new() { HasText = tool }).CountAsync() == 0)
        {
            var offer = page.Locator(".tool-offer", new() { HasText = tool });
            if (await offer.CountAsync() == 0)
            {
                await hands.PressAsync(page.Locator(".tool-chip"));
            }

            await hands.PressAsync(offer);
        }

        await hands.PressAsync(page.Locator("[data-keypad-set]"));
        var click = page.Locator("[data-keypad-click]:not([disabled])");
        await click.WaitForAsync();
        for (var nut = 0; await page.Locator(".work-keys").CountAsync() > 0; nut++)
        {
            var which = await page.Locator(".work-which").InnerTextAsync();
            var tabs = await hands.RecordAsync(click);
            Assert.True(nut == 0 || tabs == 0, $"{tabs} times Tab before the button for {which} was reached.");
            await page.WaitForFunctionAsync(NextIsSaidAndHasTheFocus);
        }
    }

    private static ILocator Reports(IPage page) => page.Locator(".step-next :not(.condition-asked) > button.report-main:not([disabled])");

    private static async Task DoneAsync(IPage page, KeyboardHands hands, string next)
    {
        await hands.TickAllAsync();
        await hands.PressAsync(page.Locator(".finish-button"));
        await StandsAtAsync(page, next);
    }

    private static Task StandsAtAsync(IPage page, string step) =>
        page.Locator($"main.page:not(.is-asleep) [data-step*='/{step}']").WaitForAsync();
}
