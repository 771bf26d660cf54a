using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The fields of a summary; what is typed in them stays on the tablet until it is issued.</summary>
public sealed partial class SummaryFields(IJSRuntime script)
{
    private bool restored;

    [Parameter, EditorRequired]
    public SummaryForm Form { get; set; } = default!;

    [Parameter, EditorRequired]
    public IReadOnlyList<EndedJob> Ended { get; set; } = [];

    [Parameter]
    public IReadOnlyList<(string Field, string Words)> Problems { get; set; } = [];

    /// <summary>Name under which the tablet keeps what is typed.</summary>
    [Parameter, EditorRequired]
    public string Kept { get; set; } = "";

    /// <summary>The form is to begin again: what was typed is forgotten.</summary>
    [Parameter]
    public EventCallback Anew { get; set; }

    /// <summary>The page is to be drawn again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>It was issued, or is to begin again: the tablet keeps nothing of it any more.</summary>
    public async Task ForgetAsync()
    {
        await script.InvokeVoidAsync("shopTyped.forget", Kept);
        restored = false;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && await script.InvokeAsync<string?>("shopTyped.read", Kept) is { } typed)
        {
            Form.Restore(typed);
            restored = true;
            await Changed.InvokeAsync();
            StateHasChanged();
        }
    }

    private string? Wrong(string field) => Problems.FirstOrDefault(problem => problem.Field == field).Words;

    private async Task BeginAnewAsync()
    {
        await ForgetAsync();
        await Anew.InvokeAsync();
    }

    private Task TakeAsync(Action take)
    {
        take();
        return Changed.InvokeAsync();
    }

    private Task ToggleAsync(JobId job)
    {
        if (!Form.LeaveOut.Remove(job))
        {
            Form.LeaveOut.Add(job);
        }

        return Changed.InvokeAsync();
    }
}
