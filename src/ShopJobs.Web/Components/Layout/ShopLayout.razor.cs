using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace ShopJobs.Web.Components.Layout;

/// <summary>The frame of every staff page.</summary>
public sealed partial class ShopLayout(IJSRuntime script, NavigationManager navigation)
{
    private ErrorBoundary? boundary;
    private bool dark;

    [CascadingParameter(Name = "StartsDark")]
    public bool StartsDark { get; set; }

    private string Here => "/" + navigation.ToBaseRelativePath(navigation.Uri).Split('#')[0];

    // Drawn by the server before the page has its line; pages that never have one are awake at once.
    private bool IsAsleep => AssignedRenderMode is not null && !RendererInfo.IsInteractive;

    protected override void OnInitialized() => dark = StartsDark;

    protected override void OnParametersSet() => boundary?.Recover();

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await TakeLookAsync();
        }
    }

    // The system may change it in the evening, with a dialog open; what was chosen on this tablet stays.
    private async Task TakeLookAsync()
    {
        var shown = await script.InvokeAsync<string>("shopLook.shown");
        if (dark != (shown == "dark"))
        {
            dark = !dark;
            StateHasChanged();
        }
    }

    private void LoadAgain() => navigation.NavigateTo(navigation.Uri, forceLoad: true);

    private async Task ChangeLookAsync()
    {
        dark = !dark;
        await script.InvokeVoidAsync("shopLook.choose", dark ? "dark" : "light");
    }
}
