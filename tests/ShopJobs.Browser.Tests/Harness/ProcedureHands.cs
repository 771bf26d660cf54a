using System.Globalization;
using Microsoft.Playwright;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Demo;

namespace ShopJobs.Browser.Tests.Harness;

/// <summary>
/// Somebody who does a whole procedure as the screens lead: does what is next, ticks, measures inside the limits, has the second
/// person look, records results and signs. The book is only read, to know which values are asked.
/// </summary>
internal sealed class ProcedureHands(IPage page, ClockedShop shop, CarId car, JobId job, DemoPeople.DemoPerson worker, DemoPeople.DemoPerson witness)
{
    private const int MostActions = 200;
    private const string RunDown = "4";
    private readonly StepScreen screen = new(page, car, job);

    private PlacedProcedure Placed => shop.Read(car).Placed(shop.Read(car).State.Jobs[job]);

    /// <summary>Every step that is not signed yet in its order, or those before one.</summary>
    public async Task FinishAsync(string? upTo = null)
    {
        foreach (var step in Placed.Steps.TakeWhile(step => step.Step.Id != upTo).Where(step => !IsSigned(step)).ToList())
        {
            await FinishStepAsync(step.Id);
        }
    }

    /// <summary>The first step that waits for a cure; null where none does.</summary>
    public string? FirstCure => Placed.Steps.FirstOrDefault(step => step.Step.WaitsFor.OfType<WaitsFor.ForCure>().Any())?.Step.Id;

    /// <summary>One step, from what it opens to its signature.</summary>
    public async Task FinishStepAsync(string id)
    {
        await screen.OpenAsync(id);
        await WorkAsync(id);
        var step = Placed.Step(id)!;
        await AnswerAsync(step);
        await LookAsync();
        await WorkAsync(id);
        foreach (var name in Placed.RecordsAt(step))
        {
            await RecordAsync(name);
        }

        await screen.SignAsync(worker);
    }

    /// <summary>Records a result on the page that is open: every value inside its limits.</summary>
    public async Task RecordAsync(string name, string? outside = null)
    {
        var kind = shop.Read(car).Now.Register.ResultOf(name);
        var id = $"result-{name.Replace('@', '-').Replace(':', '-')}";
        foreach (var measure in kind.Measures)
        {
            await FillAsync($"#{id}-{measure.Id}", outside ?? Plain(measure.Minimum ?? measure.Maximum ?? 350));
        }

        foreach (var note in kind.Notes)
        {
            if (note.OneOf.Count > 0)
            {
                await page.Locator($"#{id}-{note.Id}").SelectOptionAsync(note.OneOf[0]);
            }
            else
            {
                await FillAsync($"#{id}-{note.Id}", note.IsDay ? "2026-11-02" : "4471");
            }
        }

        if (kind.NeedsInstrument)
        {
            await page.Locator($"#{id}-instrument").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        }

        var number = shop.Read(car).State.Number;
        await page.Locator($"form:has(#{id}-instrument) button[type=submit]").SignWithAsync(page, worker, "SIGN");
        await page.WaitForFunctionAsync("() => !document.querySelector('.sign-dialog')");
        Assert.True(shop.Read(car).State.Number > number, $"{name} was not recorded.");
    }

    private bool IsSigned(StepInstance step) =>
        shop.Read(car).State is var state && state.StandingOf(state.Jobs[job], Placed, step) == StepStanding.Signed;

    private async Task WorkAsync(string id)
    {
        for (var action = 0; action < MostActions; action++)
        {
            if (await page.Locator(".condition-asked button.report-main").CountAsync() > 0)
            {
                await screen.StandsAsAskedAsync();
            }
            else if (await page.Locator(".step-next :not(.condition-asked) > button.report-main").CountAsync() > 0)
            {
                await screen.ReportAllAsync();
            }
            else if (await page.Locator(".tool-none").CountAsync() > 0)
            {
                await page.Locator(".tool-offer:not([disabled])").First.ClickAsync();
                await page.Locator(".tool-chip").WaitForAsync();
            }
            else if (await page.Locator("#run-down").CountAsync() > 0)
            {
                await MistypeRunDownAsync();
                await page.Locator("#run-down").FillAsync(RunDown);
                await page.GetByRole(AriaRole.Button, new() { Name = "RUN-DOWN READ" }).ClickAsync();
                await page.Locator("[data-keypad]").WaitForAsync();
            }
            else if (await page.Locator("[data-keypad]").CountAsync() > 0)
            {
                await PullAsync();
            }
            else if (shop.Read(car) is var reading && reading.State.NextOn(reading.Now, Placed.Step(id)!) is NextAction.Look)
            {
                await AnswerAsync(Placed.Step(id)!);
                await LookAsync();
            }
            else
            {
                return;
            }
        }

        Assert.Fail($"“{id}” has no end.");
    }

    // Far above what the nut's maker permits: refused, in words that can be seen.
    private async Task MistypeRunDownAsync()
    {
        await page.Locator("#run-down").FillAsync("99");
        await page.GetByRole(AriaRole.Button, new() { Name = "RUN-DOWN READ" }).ClickAsync();
        await Assertions.Expect(page.Locator("#run-down-wrong")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#run-down-wrong")).ToContainTextAsync("above the permitted");
        await page.RefusalsAreSeenAsync("a run-down torque above the permitted");
    }

    private async Task PullAsync()
    {
        var asked = (await page.Locator(".number-digits").InnerTextAsync()).TrimEnd('°');
        if (await page.Locator("[data-keypad]").GetAttributeAsync("data-mode") == "setting")
        {
            await screen.SetToAsync(asked);
            await screen.ClickedAsync();
        }
        else
        {
            await screen.ReadAsync(asked);
        }
    }

    private async Task AnswerAsync(StepInstance step)
    {
        await screen.AnswerAsync([.. step.Step.Measures.Select(measure => (measure.Id, measure.Minimum ?? measure.Maximum ?? 350))]);
    }

    private async Task LookAsync()
    {
        var look = page.GetByRole(AriaRole.Button, new() { Name = "WITNESS: I checked" });
        while (await look.CountAsync() > 0)
        {
            var before = shop.Read(car).State.Number;
            await page.NextIsInSightAsync();
            await look.First.SignWithAsync(page, witness, "WITNESS");
            await page.Locator($"[data-step]:not([data-number='{Plain(before)}'])").WaitForAsync();
        }
    }

    private async Task FillAsync(string field, string text)
    {
        await page.Locator(field).FillAsync(text);
        await page.Locator(field).BlurAsync();
    }

    private static string Plain(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
