using FluentValidation;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Judges an option as it is typed. A fault of a value has the value's name, a fault of its source "name.Source".</summary>
public sealed class OptionFormValidator : AbstractValidator<OptionForm>
{
    /// <summary>For a joint that is driven by two jammed nuts, or not.</summary>
    public OptionFormValidator(bool jam)
    {
        Text(form => form.Name, OptionRow.NameLength, "Write what the kit is called, for example Q4.");
        Text(form => form.Maker, OptionRow.NameLength, "Write who makes it.");
        RuleFor(form => form.Evidence).IsInEnum().WithMessage("Pick the evidence for the strength.");
        RuleFor(form => form.Source).Must(text => Typed.Clean(text).Length <= OptionValue.SourceLength)
            .WithMessage($"It takes at most {OptionValue.SourceLength} letters. Shorten it.");
        foreach (var field in OptionField.All)
        {
            RuleFor(form => form).Custom((form, context) =>
            {
                if (Asked(field, form, jam) && !form.Values[field.Property].NotStated)
                {
                    Check(field, form, context);
                }
            });
        }
    }

    internal static bool Asked(OptionField field, OptionForm form, bool jam) =>
        (!field.IsOfNut || form.OwnNut) && (field.Property != OptionProperty.Jam || jam);

    private static void Check(OptionField field, OptionForm form, ValidationContext<OptionForm> context)
    {
        var text = Typed.Clean(form.Values[field.Property].Text);
        var problem = text.Length == 0 ? "Write it, or tick not stated."
            : text.Length > OptionValue.TextLength ? $"It takes at most {OptionValue.TextLength} letters. Shorten it."
            : field.ProblemOf(text);
        if (problem is not null)
        {
            context.AddFailure(field.Property.ToString(), problem);
        }

        var source = Typed.Clean(form.SourceOf(field.Property));
        if (source.Length == 0)
        {
            context.AddFailure(nameof(OptionForm.Source), "Write the source: document, revision, page. A value without a source is not taken.");
        }
        else if (source.Length > OptionValue.SourceLength)
        {
            context.AddFailure($"{field.Property}.Source", $"It takes at most {OptionValue.SourceLength} letters. Shorten it.");
        }
    }

    private void Text(System.Linq.Expressions.Expression<Func<OptionForm, string>> field, int length, string missing) =>
        RuleFor(field).Cascade(CascadeMode.Stop).Must(text => Typed.Clean(text).Length > 0).WithMessage(missing)
            .MaximumLength(length).WithMessage($"It takes at most {length} letters. Shorten it.");
}
