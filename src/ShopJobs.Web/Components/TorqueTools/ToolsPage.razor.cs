using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>Every tool, least days to calibration first.</summary>
public sealed partial class ToolsPage(ToolShelf shelf, WhoIsHere here, ShopSettings settings)
{
    private IReadOnlyList<ToolLine>? tools;
    private bool mayEnter;
    private bool showRetired;

    private bool Demo => settings.Current.Demo;

    protected override async Task OnInitializedAsync()
    {
        mayEnter = (await here.LookingAsync())?.May(Right.Lead) ?? false;
        await ReadAsync();
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook.Kind == LogbookKind.Tool;

    protected override Task ReadAsync()
    {
        tools = shelf.All();
        return Task.CompletedTask;
    }
}
