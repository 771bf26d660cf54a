using FluentValidation.Results;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Enters an option, or changes one.</summary>
public sealed partial class OptionFormPage(PartShelf shelf, PartDesk desk, CarDesk cars, NavigationManager navigation)
{
    private PartsOnJob? parts;
    private OptionForm? form;
    private ValidationResult? result;
    private string? refusal;
    private bool asked;
    private bool sent;
    private bool busy;

    [Parameter]
    public Guid Id { get; set; }

    [Parameter]
    public Guid Job { get; set; }

    [Parameter]
    public string Group { get; set; } = "";

    [Parameter]
    public Guid? Option { get; set; }

    private GroupOfJob On => new(new CarId(Id), new JobId(Job), Group);

    private string Title => Option is null ? "Add an option" : "Edit the option";

    private string Back => Links.Options(On.Car, On.Job, Group);

    private bool Jam => parts!.Joint.Asked.Jam is not null;

    private string Left => result!.Errors.Select(error => error.PropertyName).Distinct().Count() is 1
        ? "One field is not in order yet: look above."
        : $"{result.Errors.Select(error => error.PropertyName).Distinct().Count()} fields are not in order yet: look above.";

    protected override async Task OnInitializedAsync()
    {
        parts = await shelf.ReadAsync(cars.Read(On.Car, null), On.Job, Group);
        form = parts is null ? null
            : Option is not { } id ? new OptionForm()
            : parts.Options.FirstOrDefault(row => row.Id == new PartOptionId(id)) is { } row ? OptionForm.Of(row)
            : null;
        asked = true;
    }

    private void Check() => result = new OptionFormValidator(Jam).Validate(form!);

    /// <summary>The first fault of a field, once the form was sent; a half-typed form is not scolded.</summary>
    private string? ProblemOf(string field) => sent ? result?.Errors.Find(error => error.PropertyName == field)?.ErrorMessage : null;

    private string Faulty(string field) => ProblemOf(field) is null ? "" : "invalid";

    private RenderFragment Wrong(string field, string id) => builder =>
    {
        builder.OpenElement(0, "div");
        builder.AddAttribute(1, "id", id);
        builder.AddAttribute(2, "class", "form-wrong");
        builder.AddAttribute(3, "aria-live", "polite");
        if (ProblemOf(field) is { } problem)
        {
            builder.OpenElement(4, "span");
            builder.AddContent(5, problem);
            builder.CloseElement();
        }

        builder.CloseElement();
    };

    private async Task SaveAsync()
    {
        sent = true;
        Check();
        if (busy || !result!.IsValid)
        {
            return;
        }

        busy = true;
        refusal = await desk.SaveAsync(On, form!);
        busy = false;
        if (refusal is null)
        {
            navigation.NavigateTo(Back);
        }
    }
}
