using FluentValidation;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Instruments;

/// <summary>A check of an instrument as it is typed in. Nothing is chosen beforehand.</summary>
public sealed class CheckForm
{
    public DateOnly? Date { get; set; }

    public DateOnly? Due { get; set; }

    public string Certificate { get; set; } = "";

    /// <summary>"good", "bad" or "not read"; empty until it is said.</summary>
    public string Found { get; set; } = "";

    /// <summary>"good" or "bad"; empty until it is said.</summary>
    public string Left { get; set; } = "";

    public InstrumentCheck ToCheck() => new(
        Date!.Value, Due!.Value, Typed.Clean(Certificate), Found switch { "good" => true, "bad" => false, _ => null }, Left == "good");
}

/// <summary>What a check needs before it is signed.</summary>
public sealed class CheckFormValidator : AbstractValidator<CheckForm>
{
    public const int CertificateLength = 100;

    /// <param name="today">The shop's day: no check is of tomorrow.</param>
    public CheckFormValidator(DateOnly today)
    {
        RuleFor(form => form.Date).NotNull().WithMessage("Give the day of the check.")
            .LessThanOrEqualTo(today).WithMessage("That day is still to come: read the certificate again.")
            .GreaterThanOrEqualTo(CalibrationDates.Earliest(today)).WithMessage($"That is more than {CalibrationDates.MostYearsBack} years ago: read the certificate again.");
        RuleFor(form => form.Due).NotNull().WithMessage("Give the last day on which it is good.")
            .Must((form, due) => due is null || form.Date is null || due >= form.Date).WithMessage("It is not good until a day before its check.")
            .Must((form, due) => due is null || form.Date is not { } date || due <= CalibrationDates.LatestDue(date))
            .WithMessage($"A check is good for at most {CalibrationDates.MostYearsGood} years here. Read both days again.");
        RuleFor(form => form.Certificate).Must(text => Typed.Clean(text).Length > 0).WithMessage("Say what it was checked against: a laboratory and number, or the shop's own master.")
            .MaximumLength(CertificateLength).WithMessage($"It takes at most {CertificateLength} letters. Shorten it.");
        RuleFor(form => form.Found).NotEmpty().WithMessage("Say how it read before anybody adjusted it.");
        RuleFor(form => form.Left).NotEmpty().WithMessage("Say how it reads as it goes back to work.");
    }
}
