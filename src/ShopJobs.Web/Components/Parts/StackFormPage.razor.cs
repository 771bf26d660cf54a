using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Enters a wheel stack of a car, or changes one.</summary>
public sealed partial class StackFormPage(PartShelf shelf, StackDesk desk, CarDesk cars, NavigationManager navigation)
{
    private static readonly StackFormValidator Validator = new();
    private StackForm? form;
    private string? refusal;
    private bool asked;
    private bool busy;

    [Parameter]
    public Guid Id { get; set; }

    [Parameter]
    public Guid Job { get; set; }

    [Parameter]
    public string Group { get; set; } = "";

    [Parameter]
    public Guid? Stack { get; set; }

    private string Title => Stack is null ? "Add a wheel stack" : "Edit the wheel stack";

    private string Back => Links.Options(new CarId(Id), new JobId(Job), Group);

    protected override async Task OnInitializedAsync()
    {
        var parts = await shelf.ReadAsync(cars.Read(new CarId(Id), null), new JobId(Job), Group);
        form = parts is not { Joint.OnWheel: true } ? null
            : Stack is not { } id ? new StackForm()
            : parts.Stacks.FirstOrDefault(row => row.Id == id) is { } row ? StackForm.Of(row)
            : null;
        asked = true;
    }

    private async Task SaveAsync()
    {
        if (busy)
        {
            return;
        }

        busy = true;
        refusal = await desk.SaveAsync(new CarId(Id), form!);
        busy = false;
        if (refusal is null)
        {
            navigation.NavigateTo(Back);
        }
    }
}
