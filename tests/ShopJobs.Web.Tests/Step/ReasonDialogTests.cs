using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Tests.Step;

public sealed class ReasonDialogTests : BunitContext, IAsyncLifetime
{
    private static readonly ReasonAsked Undo = StepDialogs.Undo(new LastEntry(7, "wheel nut front-left 3, stage 1, 500 N·m", TorqueUnit.NewtonMetre));
    private IRenderedComponent<MudDialogProvider> screen = default!;
    private Task<ReasonGiven?> asked = default!;

    public async Task InitializeAsync()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
        screen = Render<MudDialogProvider>();
        await screen.InvokeAsync(() => { asked = Undo.AskAsync(Services.GetRequiredService<IDialogService>()); });
        screen.WaitForElement(".reason-picks");
    }

    Task IAsyncLifetime.DisposeAsync() => base.DisposeAsync().AsTask();

    [Fact]
    public void The_right_number_is_asked_first_and_nothing_is_filled_in()
    {
        Assert.Contains("wheel nut front-left 3, stage 1, 500 N·m", screen.Markup, StringComparison.Ordinal);
        Assert.Equal("true", Button("Only the number was typed wrong").GetAttribute("aria-pressed"));
        Assert.Equal("", screen.Find("#right-value").GetAttribute("value") ?? "");
    }

    [Fact]
    public async Task A_slip_asks_for_the_right_number_and_nothing_else()
    {
        await Button("Only the number was typed wrong").ClickAsync(new());
        await screen.Find("#right-value").InputAsync(new() { Value = "50,0" });
        await Button("PUT THE NUMBER RIGHT").ClickAsync(new());

        var given = (await asked)!;

        Assert.Equal((ReasonAsked.Slip, 50m), (given.Text, given.Value!.Value.Value));
    }

    [Fact]
    public async Task A_slip_without_a_number_is_not_sent()
    {
        await Button("Only the number was typed wrong").ClickAsync(new());
        await Button("PUT THE NUMBER RIGHT").ClickAsync(new());

        Assert.NotEmpty(screen.Find("[role=alert]").TextContent);
        Assert.False(asked.IsCompleted);
    }

    [Fact]
    public async Task What_did_not_happen_is_voided_with_one_of_the_usual_reasons()
    {
        await Button("It did not happen like this").ClickAsync(new());
        await Button("wrong position").ClickAsync(new());
        await Button("VOID IT").ClickAsync(new());

        Assert.Equal(new ReasonGiven("wrong position", null), await asked);
    }

    [Fact]
    public async Task A_pull_that_is_voided_asks_whether_it_was_made_and_assumes_nothing()
    {
        var pull = StepDialogs.Undo(new LastEntry(7, "wheel nut front-left 3, stage 1, 50 N·m", TorqueUnit.NewtonMetre) { IsPull = true });
        await Button("Cancel").ClickAsync(new());
        await screen.InvokeAsync(() => { asked = pull.AskAsync(Services.GetRequiredService<IDialogService>()); });
        screen.WaitForElement(".reason-picks");
        await Button("It did not happen like this").ClickAsync(new());
        await Button("wrong position").ClickAsync(new());

        await Button("VOID IT").ClickAsync(new());
        Assert.Contains("nothing is assumed", screen.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        await Button("No, never: a second person confirms it").ClickAsync(new());
        await Button("VOID IT").ClickAsync(new());

        Assert.Equal(("wrong position", (bool?)false), ((await asked)!.Text, (await asked)!.WasPulled));
    }

    [Fact]
    public void A_signed_step_leads_on_to_the_next_that_may_begin()
    {
        var bench = StepBench.Wheel().HandTight();

        Assert.Equal($"seat@{TestRegister.Left}", bench.Scene("faces").Onward!.Id);
        Assert.Null(bench.Scene("seat").Onward);
    }

    private IElement Button(string text) => screen.FindAll("button").Single(button => button.TextContent.Trim() == text);
}
