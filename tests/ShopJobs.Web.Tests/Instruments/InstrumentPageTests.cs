using Bunit;
using Microsoft.AspNetCore.Components;
using MudBlazor.Services;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Instruments;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Instruments;

public sealed class InstrumentPageTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();
    private readonly InstrumentForm gauge = new() { Name = "G2", Serial = "S-2" };

    public InstrumentPageTests()
    {
        bench.Register(Services);
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", true));
    }

    async Task IAsyncLifetime.InitializeAsync()
    {
        await bench.OpenAsync(Services);
        Assert.True((await bench.Get<InstrumentShelf>().SaveAsync(gauge)).Recorded);
        var check = new InstrumentCheck(ToolBench.Today, ToolBench.Today.AddYears(1), "Lab 3", true, true);
        Assert.True((await bench.SignAsync(gauge.Id, bench.Lead, (shown, asOf) => new CheckInstrument(check, shown, asOf))).Recorded);
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task It_is_renamed_and_its_entries_keep_the_name_they_were_made_under()
    {
        var page = Page();
        await Press(page, "Edit details");
        await page.Find("#name").ChangeAsync(new() { Value = "Depth gauge" });
        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Equal("Depth gauge", page.Find("h1").TextContent));
        Assert.Equal(["G2", "Depth gauge"], bench.Get<LogbookSnapshots>().Read(reader => reader.Entries(Folders.LogbookOf(gauge.Id), 0, 9)
            .Select(Folders.Read).Select(entry => entry.Entry).OfType<InstrumentEntered>().Select(entry => entry.Name).ToList()));
    }

    [Fact]
    public async Task It_is_out_of_use_for_good_hidden_from_the_list_and_brought_back()
    {
        var page = Page();
        await GiveReasonAsync(page, "Out of use for good", "Fell apart");

        page.WaitForAssertion(() => Assert.Contains("Out of use for good", page.Find(".panel").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("#check-title"));
        var list = Render<InstrumentsPage>();
        Assert.Empty(list.FindAll("tbody tr"));
        await list.Find(".check input").ChangeAsync(new() { Value = true });
        Assert.Single(list.FindAll("tbody tr"));

        await GiveReasonAsync(page, "Bring it back", "Repaired");
        page.WaitForAssertion(() => Assert.Contains("Lay it aside", page.Find(".panel").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Its_checks_are_listed_and_one_withdrawn_is_said_to_be()
    {
        Assert.Contains("against Lab 3. As found within its limits", Page().Find("section[aria-labelledby=checks-title]").TextContent, StringComparison.Ordinal);
        var why = NewContent.Of("Of another gauge"u8.ToArray());

        Assert.True((await bench.SignAsync(gauge.Id, bench.Lead, (shown, asOf) => new WithdrawCalibration(2, why.Digest, shown, asOf), why)).Recorded);

        Assert.Contains("Withdrawn by entry 3: entered by mistake.", Page().Find("section[aria-labelledby=checks-title]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task In_doubt_it_lists_whose_cars_it_measured_and_who_was_told()
    {
        var car = await bench.CarAsync();
        bench.Time.Advance(TimeSpan.FromHours(1));
        await bench.SignInAsync(bench.Lead);
        await bench.WriteAsync(LogbookId.Of(car), new ResultRecorded(
            "run-out@front-left", [new MeasuredValue("run-out", 0.05m, "mm")], ResultBasis.Measured, null, [], null, null, [])
        { Tool = gauge.Id, On = ToolBench.Today, ToolEntry = 2 });
        var page = Page();
        Assert.Contains("Owner: Rasmo Field", page.Find(".recall-owner").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.Trim() == "Owner told");

        await GiveReasonAsync(page, "Suspect", "It fell");
        page.WaitForAssertion(() => Assert.Contains("Not told yet.", page.Find(".recall-owner").TextContent, StringComparison.Ordinal));
        await Press(page, "Owner told");
        await page.Find($"#told-{car.Value}").InputAsync(new() { Value = "By telephone: he waits" });
        await page.Find(".recall-owner form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Contains("Told by Edda", page.Find(".recall-owner").TextContent, StringComparison.Ordinal));
    }

    private IRenderedComponent<InstrumentPage> Page() => Render<InstrumentPage>(parameters => parameters.Add(page => page.Id, gauge.Id.Value));

    private static async Task GiveReasonAsync(IRenderedComponent<InstrumentPage> page, string button, string reason)
    {
        await Press(page, button);
        await page.Find("#reason").InputAsync(new() { Value = reason });
        await page.Find("form").SubmitAsync(new());
    }

    private static Task Press(IRenderedComponent<InstrumentPage> page, string button) =>
        page.FindAll("button").Single(found => found.TextContent.Trim() == button).ClickAsync(new());
}
