using System.Text;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.LogbookPages;

public sealed class LogbookPageTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();

    public LogbookPageTests()
    {
        bench.Register(Services);
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", true));
    }

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task An_empty_logbook_says_so()
    {
        var page = Open(await bench.CarAsync());

        Assert.Contains("Nothing is written here yet", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Entries_stand_newest_first_with_number_person_and_words()
    {
        var car = await bench.CarAsync();
        var wrench = await bench.WrenchAsync();
        await bench.WriteAsync(LogbookId.Of(car), Pull(wrench, 1), Open(2));

        var page = Open(car);

        Assert.Equal(["2", "1"], page.FindAll(".entry-number").Select(number => number.TextContent));
        Assert.Contains("Clicked at 110 N·m on wheel.nut front-left 1, stage 1 of 1, with W7.", page.FindAll(".entry-what")[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Jorn", page.FindAll(".entry-when")[1].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Long_logbooks_are_paged()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), [.. Enumerable.Range(0, 95).Select(_ => Open(1))]);

        var first = Open(car);
        Assert.Equal(("95", "56"), Ends(first));
        Assert.Equal($"/cars/{car.Value}/logbook?from=55", Assert.Single(first.FindAll(".pages a")).GetAttribute("href"));

        Services.GetRequiredService<NavigationManager>().NavigateTo($"/cars/{car.Value}/logbook?from=15");
        var last = Open(car);
        Assert.Equal(("15", "1"), Ends(last));
        Assert.Equal("Newer entries", Assert.Single(last.FindAll(".pages a")).TextContent);
    }

    [Fact]
    public async Task An_opened_over_record_is_struck_and_still_readable()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Pull(await bench.WrenchAsync(), 1), Open(1));

        var struck = Open(car).FindAll(".entry")[1];

        Assert.Contains("Clicked at 110 N·m", struck.QuerySelector("del")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Void from entry 2 on", struck.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Problems_and_texts_are_told_and_markup_in_them_is_text()
    {
        var car = await bench.CarAsync();
        var logbook = LogbookId.Of(car);
        var reason = NewContent.Of(Encoding.UTF8.GetBytes("<img src=x onerror=alert(1)> thread torn"));
        await bench.WriteAsync(logbook, [reason],
        [
            ToolBench.New(logbook, Pull(await bench.WrenchAsync(), 1) with { Problems = [HoldReason.OverRange] }),
            ToolBench.New(logbook, new PositionHeld([Nut(1)], reason.Digest)),
        ]);

        var page = Open(car);

        Assert.Contains("Does not count: over the permitted maximum", page.FindAll(".entry")[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Reason: “<img src=x onerror=alert(1)> thread torn”", page.FindAll(".entry")[0].TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("img"));
    }

    [Fact]
    public async Task A_signed_entry_keeps_the_name_at_signing()
    {
        var car = await bench.CarAsync();
        var logbook = LogbookId.Of(car);
        var name = NewContent.Of(Encoding.UTF8.GetBytes("Jorn Old"));
        await bench.WriteAsync(logbook, [name], [ToolBench.New(logbook, Open(1) with { SignedAs = name.Digest })]);
        await bench.RowsAsync(shop => shop.People.Where(person => person.Id == bench.Technician).ExecuteUpdateAsync(set => set.SetProperty(person => person.Name, "Jorn New")));

        Assert.Contains("Jorn Old, signed", Open(car).Find(".entry-when").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bad_value_is_told_and_a_good_one_is_shown_to_be_signed()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Pull(await bench.WrenchAsync(), 1));
        await bench.SignInAsync(bench.Technician);
        var page = Open(car);
        await page.Find(".entry button").ClickAsync(new());
        await page.FindAll("input[type=radio]")[1].ChangeAsync(new ChangeEventArgs { Value = "on" });
        await page.Find("textarea").InputAsync(new ChangeEventArgs { Value = "Typed 110, was 111" });
        await page.Find("input.field").InputAsync(new ChangeEventArgs { Value = "81 lbf·ft" });
        await page.Find("form").SubmitAsync(new());
        Assert.Contains("the record is in N·m", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);

        var dialogs = Render<MudDialogProvider>();
        await page.Find("input.field").InputAsync(new ChangeEventArgs { Value = "111" });
        var signing = page.Find("form").SubmitAsync(new());

        dialogs.WaitForAssertion(() => Assert.Contains("It should read 111 N·m", dialogs.Markup, StringComparison.Ordinal));
        Assert.Contains("Why: Typed 110, was 111", dialogs.Markup, StringComparison.Ordinal);
        Assert.False(signing.IsCompleted);
    }

    [Fact]
    public async Task Another_technician_is_not_offered_a_correction()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Pull(await bench.WrenchAsync(), 1));
        await bench.SignInAsync(bench.Newcomer);
        Assert.Empty(Open(car).FindAll(".entry button"));

        await bench.SignInAsync(bench.Technician);
        Assert.Single(Open(car).FindAll(".entry button"));
    }

    [Fact]
    public async Task A_waiting_correction_is_offered_for_confirmation_but_not_to_doer_and_corrector()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Pull(await bench.WrenchAsync(), 1));
        Assert.True((await bench.Get<CorrectionDesk>().VoidAsync(car, new CommandId(Guid.NewGuid()), 1, false, "Wrong car")).Recorded);

        var sheet = await bench.Get<LogbookShelf>().ReadAsync(LogbookId.Of(car), null);

        Assert.Equal(EntryUse.Confirm, sheet!.Lines[0].Use);
        Assert.Superset(new HashSet<PersonId> { bench.Technician, bench.Lead }, sheet.Lines[0].NotBy.ToHashSet());
        Assert.Equal(EntryUse.Read, sheet.Lines[1].Use);
    }

    [Fact]
    public async Task An_unknown_entry_says_from_where_on_and_the_rest_stays_readable()
    {
        var car = await bench.CarAsync();
        var logbook = LogbookId.Of(car);
        await bench.WriteAsync(logbook, [],
            [ToolBench.New(logbook, Open(1)), new NewEntry(logbook, "made-later", 1, "{}"u8.ToArray(), EntryKeys.None)]);

        var page = Open(car);

        Assert.Contains("read-only from entry 2 on", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Opened wheel.nut front-left 1.", page.FindAll(".entry")[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("can't be used by this program", page.FindAll(".entry")[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_says_that_it_fits_and_what_it_cannot_find()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Open(1));
        var page = Open(car);

        await page.FindAll("button").Single(button => button.TextContent == "Verify").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("It fits together", page.Find(".notice").TextContent, StringComparison.Ordinal));
        Assert.Contains("kept outside this machine", page.Find(".notice").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_tells_how_far_it_has_come()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), [.. Enumerable.Range(0, (2 * LogbookWalk.ReportEvery) + 1).Select(_ => Open(1))]);
        var told = new Told();

        var report = await bench.Get<LogbookCheck>().RunAsync(LogbookId.Of(car), told);

        Assert.Empty(report.Problems);
        Assert.Equal([LogbookWalk.ReportEvery, 2 * LogbookWalk.ReportEvery], told.Entries);
    }

    [Fact]
    public void While_it_verifies_the_page_says_how_many_are_checked()
    {
        var result = Render<VerifyResult>(parameters => parameters
            .Add(verify => verify.Running, true).Add(verify => verify.Entries, 91_000).Add(verify => verify.Reached, 2_560));

        Assert.Contains("2560 of 91000 checked", result.Markup, StringComparison.Ordinal);
        Assert.Equal(("91000", "2560"), (result.Find("progress").GetAttribute("max"), result.Find("progress").GetAttribute("value")));
    }

    [Fact]
    public async Task Verify_finds_a_changed_copy()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Open(1));
        bench.Sql("DROP TRIGGER entries_are_not_changed; UPDATE entries SET place = 'rear-left'");
        var page = Open(car);

        await page.FindAll("button").Single(button => button.TextContent == "Verify").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("do not fit", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Contains("Entry 1:", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Number_and_hash_of_the_head_are_shown_to_copy()
    {
        var car = await bench.CarAsync();
        await bench.WriteAsync(LogbookId.Of(car), Open(1));
        var page = Open(car);

        Assert.Equal($"1:{bench.Get<ShopJobs.Web.Desk.CarDesk>().Read(car, null).HeadHash}", page.Find(".book-head code").TextContent);
    }

    [Fact]
    public async Task A_tools_logbook_reads_the_same_way()
    {
        var wrench = await bench.WrenchAsync();

        var page = Render<LogbookPage>(parameters => parameters.Add(logbook => logbook.ToolId, wrench.Value));

        Assert.Contains("Entered W7, click, serial S-W7, 40 to 200 N·m, graduation 1.", page.FindAll(".entry")[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("as left 40 read 40, 110 read 110, 200 read 200", page.FindAll(".entry")[0].TextContent, StringComparison.Ordinal);
    }

    private sealed class Told : IProgress<long>
    {
        public List<long> Entries { get; } = [];

        public void Report(long value) => Entries.Add(value);
    }

    private IRenderedComponent<LogbookPage> Open(CarId car) => Render<LogbookPage>(parameters => parameters.Add(logbook => logbook.CarId, car.Value));

    private static (string First, string Last) Ends(IRenderedComponent<LogbookPage> page)
    {
        var numbers = page.FindAll(".entry-number");
        return (numbers[0].TextContent, numbers[^1].TextContent);
    }

    private static JointPosition Nut(int number) => new("wheel.nut", "front-left", number);

    private static Opened Open(int number) => new([Nut(number)], [], [], null, null);

    private static TorqueRecorded Pull(ToolId tool, int number) => new(
        new JobId(Guid.Empty), "G1", Nut(number), 0, 1, 0, TorqueKind.SettingConfirmed, new EnteredTorque(110, TorqueUnit.NewtonMetre),
        tool, ToolBench.Today, new SpecificationInForce(1, 1, 105, 115, 110, 0.5m, null, false, RiskClass.A, IfShort.BackOff, null), [], [], []);
}
