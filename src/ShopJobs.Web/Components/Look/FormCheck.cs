using FluentValidation;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace ShopJobs.Web.Components.Look;

/// <summary>Puts a FluentValidation validator behind a form; one message a broken rule, shown by its field.</summary>
public sealed class FormCheck<TForm> : ComponentBase, IDisposable
{
    private ValidationMessageStore? messages;
    private EditContext? context;

    [CascadingParameter]
    private EditContext? Form { get; set; }

    [Parameter, EditorRequired]
    public IValidator<TForm> Validator { get; set; } = default!;

    protected override void OnParametersSet()
    {
        if (ReferenceEquals(context, Form))
        {
            return;
        }

        Dispose();
        context = Form ?? throw new InvalidOperationException($"{nameof(FormCheck<TForm>)} belongs inside an EditForm.");
        messages = new ValidationMessageStore(context);
        context.OnValidationRequested += CheckAll;
        context.OnFieldChanged += CheckOne;
    }

    public void Dispose()
    {
        if (context is not null)
        {
            context.OnValidationRequested -= CheckAll;
            context.OnFieldChanged -= CheckOne;
        }
    }

    private void CheckAll(object? sender, ValidationRequestedEventArgs args) => Check(only: null);

    private void CheckOne(object? sender, FieldChangedEventArgs args) => Check(args.FieldIdentifier.FieldName);

    private void Check(string? only)
    {
        if (only is null)
        {
            messages!.Clear();
        }
        else
        {
            messages!.Clear(context!.Field(only));
        }

        var result = Validator.Validate((TForm)context!.Model);
        foreach (var error in result.Errors.Where(error => only is null || error.PropertyName == only))
        {
            messages.Add(context.Field(error.PropertyName), error.ErrorMessage);
        }

        context.NotifyValidationStateChanged();
    }
}
