using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>Enters a tool, or describes a known one again.</summary>
public sealed partial class ToolFormPage(ToolShelf shelf, NavigationManager navigation)
{
    private static readonly ToolFormValidator Validator = new();
    private ToolForm? form;
    private DeskAnswer? answer;
    private bool loading = true;
    private bool busy;

    [Parameter]
    public Guid? Id { get; set; }

    private string Title => Id is null ? "Add a tool" : "Edit the tool's details";

    private string Back => Id is { } id ? $"/tools/{id}" : "/tools";

    protected override void OnInitialized()
    {
        form = Id is not { } id ? new ToolForm() : shelf.Find(new ToolId(id)) is { } line ? ToolForm.Of(line.Id, line.Tool) : null;
        loading = false;
    }

    private async Task SaveAsync()
    {
        if (busy)
        {
            return;
        }

        busy = true;
        answer = await shelf.SaveAsync(form!);
        busy = false;
        if (answer.Recorded)
        {
            navigation.NavigateTo($"/tools/{form!.Id.Value}");
        }
        else
        {
            form!.Command = answer.NotSaved is null ? new CommandId(Guid.NewGuid()) : form.Command;
        }
    }
}
