using FluentValidation;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>What the form must hold before a page is issued.</summary>
public sealed class SummaryFormValidator : AbstractValidator<SummaryForm>
{
    public SummaryFormValidator()
    {
        RuleFor(form => form.Contact).NotEmpty().WithMessage("Say how the customer reaches you about a noise: a telephone number is best.")
            .MaximumLength(SummaryForm.ContactLength).WithMessage($"At most {SummaryForm.ContactLength} letters.");
        RuleFor(form => form.Odometer).Must((form, _) => form.OdometerProblem is null)
            .WithMessage(form => $"{form.OdometerProblem} Or leave it empty.");
        RuleFor(form => form.Declined).MaximumLength(SummaryForm.AdviceLength).WithMessage($"At most {SummaryForm.AdviceLength} letters.");
        RuleFor(form => form.Advice).MaximumLength(SummaryForm.AdviceLength).WithMessage($"At most {SummaryForm.AdviceLength} letters.");
    }
}
