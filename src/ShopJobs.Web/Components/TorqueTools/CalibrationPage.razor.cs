using FluentValidation.Results;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>Copies a certificate into the tool's logbook, and says beforehand what that will do.</summary>
public sealed partial class CalibrationPage(ToolShelf shelf, ToolSigning signing, ShopClock clock, NavigationManager navigation)
{
    private ToolLine? line;
    private CalibrationForm? form;
    private ValidationResult? result;
    private CalibrationPreview? preview;
    private DeskAnswer? answer;
    private bool asked;
    private bool busy;

    [Parameter]
    public Guid Id { get; set; }

    private DateOnly Today => clock.Today;

    private string SetWord => line!.Tool.Kind == ToolKind.Click ? "set" : "shown";

    protected override void OnInitialized()
    {
        line = shelf.Find(new ToolId(Id));
        form = line is null ? null : CalibrationForm.For(line.Tool, Today);
    }

    private void Check()
    {
        result = new CalibrationFormValidator(line!.Tool, Today).Validate(form!);
        preview = result.IsValid ? CalibrationPreview.Of(line.State, form!.ToCalibration(line.Tool), clock.Now) : null;
    }

    /// <summary>The place of a field's faults: the field is described by it.</summary>
    private static string WrongId(string field) => $"wrong-{field.Replace('[', '-').Replace("].", "-", StringComparison.Ordinal)}";

    /// <summary>Faults of a field, once the form was sent; a half-typed form is not scolded.</summary>
    private RenderFragment Wrong(string field) => builder =>
    {
        builder.OpenElement(0, "div");
        builder.AddAttribute(1, "id", WrongId(field));
        builder.AddAttribute(2, "class", "form-wrong");
        builder.AddAttribute(3, "role", "alert");
        foreach (var error in asked ? result?.Errors.Where(error => error.PropertyName == field) ?? [] : [])
        {
            builder.OpenElement(4, "p");
            builder.AddContent(5, error.ErrorMessage);
            builder.CloseElement();
        }

        builder.CloseElement();
    };

    private string Says(string set, string rig) =>
        Typing.Torque(set, line!.Tool.Unit, out _) is { } shown && Typing.Torque(rig, line.Tool.Unit, out _) is { } read
            ? new CalibrationPoint(shown, read) is var point ? $"{point.DeviationText()}: {point.Words()}" : ""
            : "";

    private async Task SaveAsync()
    {
        asked = true;
        Check();
        if (busy || !result!.IsValid)
        {
            return;
        }

        busy = true;
        var request = ToolDialogs.ToCalibrate(line!, form!.ToCalibration(line!.Tool), preview!, form.Command);
        answer = await signing.SignAsync(line.Id, request);
        busy = false;
        if (answer is null)
        {
            return;
        }

        if (answer.Recorded)
        {
            navigation.NavigateTo($"/tools/{Id}");
        }
        else
        {
            form.Command = answer.NotSaved is null ? new CommandId(Guid.NewGuid()) : form.Command;
            line = shelf.Find(line.Id) ?? line;
            Check();
        }
    }
}
