using FluentValidation;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>What the form must hold before a page is issued.</summary>
public sealed class SummaryFormValidator : AbstractValidator<SummaryForm>
{
    private const decimal MostKm = 9_999_999;

    public SummaryFormValidator()
    {
        RuleFor(form => form.Contact).NotEmpty().WithMessage("Say how the customer reaches you about a noise: a telephone number is best.")
            .MaximumLength(SummaryForm.ContactLength).WithMessage($"At most {SummaryForm.ContactLength} letters.");
        RuleFor(form => form.Odometer).Must((form, typed) => string.IsNullOrWhiteSpace(typed) || form.OdometerKm is >= 0 and <= MostKm)
            .WithMessage("Type the kilometres as a number, such as 48210, or leave it empty.");
        RuleFor(form => form.Advice).MaximumLength(SummaryForm.AdviceLength).WithMessage($"At most {SummaryForm.AdviceLength} letters.");
    }
}
