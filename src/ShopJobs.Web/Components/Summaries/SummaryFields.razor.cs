using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The fields of a summary; what is typed in them stays on the tablet until it is issued.</summary>
public sealed partial class SummaryFields(IJSRuntime script)
{
    [Parameter, EditorRequired]
    public SummaryForm Form { get; set; } = default!;

    [Parameter, EditorRequired]
    public IReadOnlyList<EndedJob> Ended { get; set; } = [];

    [Parameter]
    public IReadOnlyList<(string Field, string Words)> Problems { get; set; } = [];

    /// <summary>The form is to begin again: what was typed is forgotten.</summary>
    [Parameter]
    public EventCallback Anew { get; set; }

    /// <summary>The page is to be drawn again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>It was issued, or is to begin again: the tablet keeps nothing of it any more.</summary>
    public ValueTask ForgetAsync() => script.InvokeVoidAsync("shopTyped.forget");

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
