using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>Every tool, least days to calibration first.</summary>
public sealed partial class ToolsPage(ToolShelf shelf, WhoIsHere here, LogbookNotices notices, ShopSettings settings)
{
    private IReadOnlyList<ToolLine>? tools;
    private bool mayEnter;
    private bool showRetired;
    private IDisposable? subscription;

    private bool Demo => settings.Current.Demo;

    public void Dispose() => subscription?.Dispose();

    protected override async Task OnInitializedAsync()
    {
        subscription = notices.Subscribe(notice =>
        {
            if (notice.Logbook.Kind == LogbookKind.Tool)
            {
                _ = InvokeAsync(ReadAgain);
            }
        });
        mayEnter = (await here.LookingAsync())?.May(Right.Lead) ?? false;
        tools = shelf.All();
    }

    private void ReadAgain()
    {
        tools = shelf.All();
        StateHasChanged();
    }
}
