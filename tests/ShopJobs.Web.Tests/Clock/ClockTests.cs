using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Components.Clock;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Clock;

/// <summary>Somebody sets the clock of the machine while the program runs, or while it is off.</summary>
public sealed class ClockTests : BunitContext, IAsyncLifetime
{
    private readonly ToolBench bench = new();
    private readonly ClockSetByHand clock;

    public ClockTests()
    {
        bench.Register(Services);
        Services.AddSingleton<TimeProvider>(clock = new ClockSetByHand(bench.Time));
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
    public async Task A_clock_set_back_writes_no_entry_before_the_newest_one_and_the_shops_book_says_so()
    {
        var wrench = await bench.WrenchAsync();
        var newest = Newest();
        await SetAsync(-TimeSpan.FromDays(2));
        Assert.True(bench.Get<ClockDesk>().Read().ClockInDoubt);
        Assert.Empty(ShopBook());

        await TakeOutAsync(wrench);

        Assert.Equal(newest, Newest());
        var step = Assert.IsType<ClockStepped>(Assert.Single(ShopBook()).Entry);
        Assert.Equal(TimeSpan.FromDays(2), step.Was - step.Showed);
    }

    [Fact]
    public async Task A_clock_that_jumps_ahead_is_said_once_with_the_next_record()
    {
        var wrench = await bench.WrenchAsync();
        await SetAsync(TimeSpan.FromDays(2));
        await TakeOutAsync(wrench);
        bench.Time.Advance(TimeSpan.FromHours(1));
        await bench.SignInAsync(bench.Lead);
        await TakeOutAsync(wrench);

        Assert.IsType<ClockStepped>(Assert.Single(ShopBook()).Entry);
    }

    [Fact]
    public async Task Time_that_passes_is_no_jump()
    {
        var wrench = await bench.WrenchAsync();
        bench.Time.Advance(TimeSpan.FromDays(40));
        await bench.SignInAsync(bench.Lead);
        await TakeOutAsync(wrench);
        Assert.False(bench.Get<ClockDesk>().Read().ClockInDoubt);
        Assert.Empty(ShopBook());
    }

    [Fact]
    public async Task A_program_that_starts_behind_its_newest_entry_says_so()
    {
        var wrench = await bench.WrenchAsync();
        await SetAsync(-TimeSpan.FromDays(2));
        var started = new ClockWatch(clock);
        Assert.True(bench.Get<LogbookSnapshots>().Read(reader => started.Look(reader).Shop.ClockInDoubt));
        Assert.NotEqual(default, wrench);
    }

    [Fact]
    public async Task The_leads_signature_ends_the_doubt_and_sets_the_time_back()
    {
        var wrench = await bench.WrenchAsync();
        await TakeOutAsync(wrench);
        await SetAsync(TimeSpan.FromDays(3650));
        await TakeOutAsync(wrench);
        await SetAsync(-TimeSpan.FromDays(3650));
        await TakeOutAsync(wrench);
        Assert.Equal(2, ShopBook().Count);
        Assert.True(Newest() > ToolBench.Noon.AddDays(3000));

        var page = OpenPage();
        var dialogs = Render<MudDialogProvider>();
        Assert.Contains("The clock is in doubt", page.Markup, StringComparison.Ordinal);
        _ = page.FindAll("button").Single(button => button.TextContent.Contains("sign", StringComparison.Ordinal)).ClickAsync(new());
        dialogs.WaitForElement("#sign-pin", TimeSpan.FromSeconds(30));
        await dialogs.Find("#sign-pin").InputAsync(new ChangeEventArgs { Value = ToolBench.Pin });
        await dialogs.Find("#sign-form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Contains("There is nothing against it", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.Equal([1L, 2L], Assert.IsType<ClockSet>(ShopBook()[^1].Entry).Steps);
        await TakeOutAsync(wrench);
        Assert.True(Newest() < ToolBench.Noon.AddDays(1));
        Assert.Equal(3, ShopBook().Count);
    }

    [Fact]
    public async Task Every_staff_page_says_that_the_clock_is_in_doubt_and_a_technician_is_told_who_signs()
    {
        var wrench = await bench.WrenchAsync();
        Assert.DoesNotContain("clock", Render<ClockNotice>().Markup, StringComparison.Ordinal);
        await SetAsync(-TimeSpan.FromDays(2), bench.Technician);
        Assert.Contains("wait until the lead has signed the time", Render<ClockNotice>().Markup, StringComparison.Ordinal);
        Assert.NotEqual(default, wrench);

        var page = OpenPage();
        Assert.Contains("The lead signs here", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".button-main"));
    }

    [Fact]
    public async Task The_shops_logbook_reads_in_words()
    {
        var wrench = await bench.WrenchAsync();
        await SetAsync(-TimeSpan.FromDays(2));
        await TakeOutAsync(wrench);

        var page = Render<LogbookPage>();

        Assert.Contains("The clock went back by 2 d 0 h", page.Find(".entry-what").TextContent, StringComparison.Ordinal);
        Assert.Contains("Waits for the lead", page.Markup, StringComparison.Ordinal);
    }

    // Whoever was signed in is signed in again: sessions end with the clock.
    private async Task SetAsync(TimeSpan by, PersonId? person = null)
    {
        clock.Off += by;
        await bench.SignInAsync(person ?? bench.Lead);
    }

    private IRenderedComponent<ClockPage> OpenPage()
    {
        Render<MudPopoverProvider>();
        var page = Render<ClockPage>();
        page.WaitForElement("#clock-wall", TimeSpan.FromSeconds(30));
        return page;
    }

    private async Task TakeOutAsync(ToolId wrench) =>
        Assert.True((await bench.Get<ToolShelf>().TakeOutAsync(wrench, new CommandId(Guid.NewGuid()), "Dropped")).Recorded);

    private DateTime? Newest() => bench.Get<LogbookSnapshots>().Read(reader => reader.Newest);

    private List<Recorded> ShopBook() =>
        bench.Get<LogbookSnapshots>().Read(reader => reader.Entries(LogbookId.Shop, 0, 100).Select(Folders.Read).ToList());
}
