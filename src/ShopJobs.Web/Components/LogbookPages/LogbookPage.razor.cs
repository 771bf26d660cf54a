using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>The logbook of a car, a tool or the shop, newest entry first.</summary>
public sealed partial class LogbookPage(LogbookShelf shelf, LogbookCheck check, ShopSettings settings)
{
    private const int ShownAbove = 3;
    private LogbookScene? scene;
    private VerifyReport? report;
    private bool loading = true;
    private bool verifying;
    private long reached;

    [Parameter]
    public Guid? CarId { get; set; }

    [Parameter]
    public Guid? ToolId { get; set; }

    /// <summary>Number of the newest entry on the page.</summary>
    [SupplyParameterFromQuery]
    public long? From { get; set; }

    /// <summary>An entry to be shown and marked.</summary>
    [SupplyParameterFromQuery]
    public long? Entry { get; set; }

    private LogbookId Logbook =>
        CarId is { } car ? new LogbookId(LogbookKind.Car, car)
        : ToolId is { } tool ? new LogbookId(LogbookKind.Tool, tool)
        : LogbookId.Shop;

    private string Back => CarId is { } car ? $"/cars/{car}" : ToolId is { } tool ? $"/tools/{tool}" : "/clock";

    private string BackTo => Logbook.Kind == LogbookKind.Shop ? "the time" : scene!.Title;

    private string Here => Logbook.Kind == LogbookKind.Shop ? "/shop/logbook" : $"{Back}/logbook";

    private bool Demo => settings.Current.Demo;

    private long Newest => scene!.Lines[0].Number;

    protected override async Task OnParametersSetAsync()
    {
        await ReadAsync();
        loading = false;
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook == Logbook;

    protected override async Task ReadAsync() =>
        scene = await shelf.ReadAsync(Logbook, From ?? (Entry is { } entry ? entry + ShownAbove : null));

    private string Page(long newest) => newest >= scene!.Last ? Here : FormattableString.Invariant($"{Here}?from={newest}");

    private void Reached(long entries)
    {
        reached = entries;
        StateHasChanged();
    }

    private async Task VerifyAsync()
    {
        verifying = true;
        (report, reached) = (null, 0);
        StateHasChanged();
        try
        {
            report = await check.RunAsync(Logbook, new Progress<long>(Reached));
        }
        finally
        {
            verifying = false;
        }
    }
}
