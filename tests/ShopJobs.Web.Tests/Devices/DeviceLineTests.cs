using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Tests.Step;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Devices;

/// <summary>The step's page stands for its tool only while a reading tool is picked and its keypad is on the screen.</summary>
public sealed class DeviceLineTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench door = new();
    private readonly StepBench bench = StepBench.Wheel().HandTight();
    private readonly List<ToolId> taken = [];

    public DeviceLineTests()
    {
        door.Register(Services);
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    async Task IAsyncLifetime.InitializeAsync() => await door.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        door.Dispose();
    }

    [Fact]
    public void A_page_with_a_reading_tool_picked_stands_for_it_until_it_is_left()
    {
        var line = Draw(TestTools.Dial);
        Assert.Single(Picked.With(TestTools.Dial));

        line.Render(parameters => parameters.Add(one => one.Pad, null));
        Assert.Empty(Picked.With(TestTools.Dial));

        Draw(TestTools.Dial);
        Assert.Single(Picked.With(TestTools.Dial));
    }

    [Fact]
    public async Task It_is_let_go_of_with_the_page()
    {
        Draw(TestTools.Dial);

        await DisposeComponentsAsync();

        Assert.Empty(Picked.With(TestTools.Dial));
    }

    [Fact]
    public void A_click_wrench_is_offered_nothing()
    {
        Draw(TestTools.Click);

        Assert.Empty(Picked.With(TestTools.Click));
    }

    [Fact]
    public async Task A_label_picks_its_tool_and_one_that_cannot_do_it_picks_none()
    {
        var line = Draw(null).Instance;

        var refused = await line.TakeLabelAsync(ToolLabel.CodeOf(TestTools.Overdue));
        Assert.Empty(taken);
        Assert.Contains("past its calibration", refused.Words, StringComparison.Ordinal);

        Assert.True((await line.TakeLabelAsync(ToolLabel.CodeOf(TestTools.Dial))).Taken);
        Assert.Equal([TestTools.Dial], taken);
    }

    [Fact]
    public async Task With_nobody_signed_in_a_reading_is_refused()
    {
        Draw(TestTools.Dial);
        door.SignOut();

        var answer = await Picked.With(TestTools.Dial).Single().OfferAsync(
            new OfferedReading(new CommandId(Guid.NewGuid()), new EnteredTorque(50, TorqueUnit.NewtonMetre), null), CancellationToken.None);

        Assert.Equal(TabletOutcome.Refused, answer.Outcome);
        Assert.Contains("locked", Assert.Single(answer.Words), StringComparison.Ordinal);
    }

    private PickedTools Picked => Services.GetRequiredService<PickedTools>();

    private IRenderedComponent<DeviceLine> Draw(ToolId? tool)
    {
        var scene = bench.Scene("seat");
        var cell = ((NextAction.PullNow)scene.Next).Cell;
        return Render<DeviceLine>(line => line
            .Add(one => one.Scene, scene)
            .Add(one => one.Offers, StepBench.Offers(scene))
            .Add(one => one.Pad, tool is { } id ? new KeypadCell(scene, cell, StepBench.Offer(scene, id)) : null)
            .Add(one => one.OnTool, (ToolId picked) => taken.Add(picked)));
    }
}
